// Packing of what is large, for web/engine/inflating.ts to unpack. It is packed before it becomes base64 text: text made of plain
// bytes would be packed by no server nearly as well. Zopfli takes a second where zlib takes none, and saves a twentieth.
import zopfli from "@gfx/zopfli";

/** @param {string | Buffer} content @returns {Promise<Buffer>} raw deflate data (RFC 1951) */
export async function deflated(content) {
  return Buffer.from(
    await zopfli.deflateAsync(Buffer.from(content), { numiterations: 15, blocksplittingmax: 0 }),
  );
}
