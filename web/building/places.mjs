// Where the build finds what it reads.
import path from "node:path";
import { fileURLToPath } from "node:url";

/** The page's sources. */
export const web = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
export const root = path.dirname(web);

const wasm = path.join(root, "build/wasm/wasm-bindings");
export const builtEngine = path.join(wasm, "saddlerule.wasm");
export const builtUnpacker = path.join(wasm, "unpacking/unpacker.wasm");
