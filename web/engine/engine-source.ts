// Where the engine comes from: carried inside a script (carried-engine.ts), or served as files of its own.
import type { PackedEngine } from "./compile-engine";

export interface EngineSource {
  /** As a thread takes it: packed, or compiled already. */
  travelling: () => Promise<PackedEngine | { module: WebAssembly.Module }>;
  /** Compiled on this page, where no thread serves. */
  compiled: () => Promise<WebAssembly.Module>;
  /** A worker with engine-thread.ts in it. @throws where workers are not to be had */
  startWorker: () => Worker;
}
