// Packing of what is large, for web/engine/inflating.ts to unpack. It is packed before it becomes base64 text: text made of plain
// bytes would be packed by no server nearly as well.
import { deflateRawSync } from "node:zlib";

/** @param {string | Buffer} content @returns {Buffer} raw deflate data (RFC 1951) */
export function deflated(content) {
  return deflateRawSync(content, { level: 9 });
}
