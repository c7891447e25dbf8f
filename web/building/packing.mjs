// Packing of what is large, for web/engine/inflating.ts to unpack. It is packed before it becomes text: text made of plain
// bytes would be packed by no server nearly as well. Zopfli takes seconds where zlib takes none, and saves a twentieth.
import zopfli from "@gfx/zopfli";

/** @param {string | Buffer} content @returns {Promise<Buffer>} raw deflate data (RFC 1951) */
export async function deflated(content) {
  return Buffer.from(
    await zopfli.deflateAsync(Buffer.from(content), { numiterations: 40, blocksplittingmax: 0 }),
  );
}

/**
 * The bytes as text for web/page/carried-blocks.ts: 58 of its characters carry seven bits each and 35 carry six, which is what they cost
 * in a server's Huffman code. Base64 costs 1.6 kB more: of fewer characters more runs are alike by chance, and gzip takes them for
 * repetitions.
 * @param {Uint8Array} bytes
 */
export function textOf(bytes) {
  let text = "";
  for (let at = 0; at < bytes.length * 8;) {
    const [high, low = 0] = bytes.subarray(at >> 3, (at >> 3) + 2);
    const seven = (((high << 8) | low) >> (9 - (at & 7))) & 127;
    const isSeven = seven < 58;
    const code = 33 + (isSeven ? seven : 29 + (seven >> 1));
    text += code === 60 ? "~" : String.fromCharCode(code); // none of them is a <
    at += isSeven ? 7 : 6;
  }
  return text;
}
