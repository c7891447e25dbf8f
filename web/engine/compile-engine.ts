// From the engine as it travels to one that can be opened.
import { unpack } from "../page/unpacking";
import { fromStreams } from "./wasm-streams";

/** The streams of wasm-streams.ts, packed, and the wasm that unpacks them. */
export interface PackedEngine {
  packed: Uint8Array<ArrayBuffer>;
  unpacker: ArrayBuffer;
}

export async function compileEngine({ packed, unpacker }: PackedEngine): Promise<WebAssembly.Module> {
  const { instance } = await WebAssembly.instantiate(unpacker);
  return WebAssembly.compile(fromStreams(unpack(instance, packed)));
}

/** The same in a worker, at once: in WebKit a worker with nothing else to do often never hears that it was compiled. */
export function compileInWorker({ packed, unpacker }: PackedEngine): WebAssembly.Module {
  const instance = new WebAssembly.Instance(new WebAssembly.Module(unpacker));
  return new WebAssembly.Module(fromStreams(unpack(instance, packed)));
}
