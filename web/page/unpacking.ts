// Unpacks what travels packed, by the small wasm of wasm-bindings/unpacking, which travels with it. That holds the engine in
// three tenths fewer bytes than gzip does, the best that browsers unpack by themselves.

/** The wasm that unpacks, as wasm-bindings/unpacking/unpacker.cpp exports it. */
interface UnpackerExports {
  memory: WebAssembly.Memory;
  saddlerule_packed: () => number;
  saddlerule_unpack: (packedLength: number, length: number, order: number) => number;
}

/** Before each piece: the order of its contexts, how long it was and how long it is packed, of which the first takes a byte. */
const headerBytes = 9;

/**
 * @param packed pieces one after another, as building/packing.mjs packed them
 * @returns the pieces, in the order in which they were packed
 * @throws where `packed` is plainly damaged; not every damage shows
 */
export function unpack(
  unpacker: WebAssembly.Instance,
  packed: Uint8Array<ArrayBuffer>,
): Uint8Array<ArrayBuffer>[] {
  const { memory, ...exports } = unpacker.exports as unknown as UnpackerExports;
  const room = memory.buffer;
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  for (let at = 0; at < packed.length;) {
    const header = new DataView(packed.buffer, packed.byteOffset + at, headerBytes);
    const length = header.getUint32(1, true);
    const packedLength = header.getUint32(5, true);
    at += headerBytes;
    const piece = packed.subarray(at, (at += packedLength));
    new Uint8Array(room, exports.saddlerule_packed()).set(piece);
    const place = exports.saddlerule_unpack(piece.length, length, header.getUint8(0));
    if (place === 0) throw new Error("what was packed is damaged");
    pieces.push(new Uint8Array(room.slice(place, place + length)));
  }
  return pieces;
}

/** @param packed a text as one piece */
export async function unpackText(unpacker: BufferSource, packed: Uint8Array<ArrayBuffer>): Promise<string> {
  const { instance } = await WebAssembly.instantiate(unpacker);
  return new TextDecoder().decode(unpack(instance, packed)[0]);
}
