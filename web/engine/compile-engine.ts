// From the engine as it travels to one that can be opened.
import { unpack } from "../page/unpack";

export function compileEngine(packed: Uint8Array): Promise<WebAssembly.Module> {
  return WebAssembly.compile(unpack(packed));
}
