// Packing of what is large, for web/page/unpacking.ts to unpack. It is packed before it becomes base64 text: text made of plain
// bytes would be packed by no server nearly as well.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { deflateRawSync } from "node:zlib";
import { builtUnpacker } from "./places.mjs";
import { ownModule } from "./scripts.mjs";

const { unpack } = await ownModule("page/unpacking.ts");
const { inStreams, fromStreams } = await ownModule("engine/wasm-streams.ts");
const unpackerWasm = readFileSync(builtUnpacker);
const { instance: unpacker } = await WebAssembly.instantiate(unpackerWasm);

/** How many bytes before one tell of it at most: words do not tell of what stands far behind them, code repeats itself longer. */
const orders = { text: 8, code: 12 };

/** The wasm that unpacks, as web/page/packed-block.ts inflates it. */
export const deflatedUnpacker = deflateRawSync(unpackerWasm, { level: 9 });

/** A text as one piece. */
export function packedText(text) {
  return packedPiece(Buffer.from(text), orders.text);
}

/** The engine's wasm as the pieces that web/engine/compile-engine.ts puts together. */
export function packedEngine(wasm) {
  const streams = inStreams(wasm);
  if (!wasm.equals(fromStreams(streams)))
    throw new Error("the engine does not come back from its streams as it was");
  return Buffer.concat(streams.map((stream) => packedPiece(stream, orders.code)));
}

/**
 * What 7-Zip packs with PPMd, behind a header of our own. It allows itself memory after the length of what it is given, and
 * forgets all that it learnt when that is full, which web/page/unpacking.ts does not: then it is given a lower order.
 */
export function packedPiece(bytes, highestOrder) {
  for (let order = highestOrder; order > 1; --order) {
    const body = packedBy7Zip(bytes, order);
    const header = Buffer.alloc(9);
    header.writeUInt8(order);
    header.writeUInt32LE(bytes.length, 1);
    header.writeUInt32LE(body.length, 5);
    const piece = Buffer.concat([header, body]);
    if (comesBack(piece, bytes)) return piece;
  }
  throw new Error("what is packed does not come back as it was");
}

function comesBack(piece, bytes) {
  try {
    const [unpacked] = unpack(unpacker, Uint8Array.from(piece));
    return Buffer.from(unpacked).equals(bytes);
  } catch {
    return false;
  }
}

/** Its archives are files. Of one with a single file packed, that begins behind the 32 bytes that say how long it is. */
function packedBy7Zip(bytes, order) {
  const folder = mkdtempSync(path.join(tmpdir(), "saddlerule-packing-"));
  try {
    const [given, archive] = ["given", "archive.7z"].map((name) => path.join(folder, name));
    writeFileSync(given, bytes);
    const method = [`-m0=PPMd:o=${order}:mem=64m`, "-mhc=off", "-mtm=off"];
    execFileSync("7z", ["a", "-t7z", ...method, archive, given], { stdio: ["ignore", "ignore", "inherit"] });
    const packed = readFileSync(archive);
    return packed.subarray(32, 32 + Number(packed.readBigUInt64LE(12)));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
