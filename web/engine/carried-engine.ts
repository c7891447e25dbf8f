// An engine that the script carries in itself: its wasm packed, the script of its thread as a text.
import threadScript from "engine-thread";
import { scriptAddress } from "../page/trusted-scripts";
import { compileEngine } from "./compile-engine";
import type { PackedEngine } from "./compile-engine";
import type { EngineSource } from "./engine-source";

/** The text as a script that workers are started from. It stays as long as the page: a worker may come up late. */
let threadAddress: string | null = null;

export function carriedEngine(packedEngine: () => Promise<PackedEngine>): EngineSource {
  return {
    travelling: packedEngine,
    compiled: async () => compileEngine(await packedEngine()),
    startWorker() {
      threadAddress ??= URL.createObjectURL(new Blob([threadScript], { type: "text/javascript" }));
      return new Worker(scriptAddress(threadAddress));
    },
  };
}
