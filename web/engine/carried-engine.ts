// An engine that the page file carries in itself; the script of its thread is a text in the page's own.
import threadScript from "engine-thread";
import { scriptAddress } from "../page/trusted-scripts";
import type { EngineSource } from "./engine-source";

/** The text as a script that workers are started from. It stays as long as the page: a worker may come up late. */
let threadAddress: string | null = null;

export function carriedEngine(compiling: Promise<WebAssembly.Module>): EngineSource {
  return {
    compiled: () => compiling,
    startWorker() {
      threadAddress ??= URL.createObjectURL(new Blob([threadScript], { type: "text/javascript" }));
      return new Worker(scriptAddress(threadAddress));
    },
  };
}
