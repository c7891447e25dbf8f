// From the engine as it travels to one that can be opened.
import { unpack } from "../page/unpack";
import { fromStreams } from "./wasm-streams";

/** @param packed the streams of wasm-streams.ts, packed for unpack.ts */
export function compileEngine(packed: Uint8Array): Promise<WebAssembly.Module> {
  return WebAssembly.compile(fromStreams(unpack(packed)));
}

/** The same in a worker, at once: in WebKit a worker with nothing else to do often never hears that it was compiled. */
export function compileInWorker(packed: Uint8Array): WebAssembly.Module {
  return new WebAssembly.Module(fromStreams(unpack(packed)));
}
