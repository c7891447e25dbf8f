// Where the build finds what it reads.
import path from "node:path";
import { fileURLToPath } from "node:url";

/** The page's sources. */
export const web = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
export const root = path.dirname(web);

export const builtEngine = path.join(root, "build/wasm/wasm-bindings/saddlerule-page.wasm");
