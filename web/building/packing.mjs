// Packing of what is large, for web/page/unpack.ts to unpack. It is packed before it becomes base64 text: text made of plain
// bytes would be packed by no server nearly as well.
import { execFileSync } from "node:child_process";
import { ownModule } from "./scripts.mjs";

/** The engine's wasm, packed for web/engine/compile-engine.ts. */
export async function packedEngine(wasm) {
  const { inStreams, fromStreams } = await ownModule("engine/wasm-streams.ts");
  const streams = inStreams(wasm);
  if (!wasm.equals(fromStreams(streams)))
    throw new Error("the engine does not come back from its streams as it was");
  // What stands before a byte tells less of it here than in texts.
  return packed(streams, ",lc=1");
}

/** Bytes as LZMA. xz leaves their length open in the header, so it is put in. */
export function packed(bytes, further = "") {
  const options = ["--format=lzma", `--lzma1=preset=9e,pb=0,nice=273${further}`, "--stdout"];
  const result = execFileSync("xz", options, { input: bytes, maxBuffer: 64 * 1024 * 1024 });
  result.writeBigUInt64LE(BigInt(bytes.length), 5);
  return result;
}
