// Packing of what is large, for web/page/unpack.ts to unpack. It is packed before it becomes base64 text: text made of plain
// bytes would be packed by no server nearly as well.
import { execFileSync } from "node:child_process";

/** Bytes as LZMA. xz leaves their length open in the header, so it is put in. */
export function packed(bytes) {
  const options = ["--format=lzma", "--lzma1=preset=9e,pb=0,nice=273", "--stdout"];
  const result = execFileSync("xz", options, { input: bytes, maxBuffer: 64 * 1024 * 1024 });
  result.writeBigUInt64LE(BigInt(bytes.length), 5);
  return result;
}
