// Where the engine comes from: carried in the page file (carried-engine.ts), or served as files of its own.

export interface EngineSource {
  /** Compiled by the page, for itself and for its threads; what failed is tried again when it is asked for again. */
  compiled: () => Promise<WebAssembly.Module>;
  /** A worker with engine-thread.ts in it. @throws where workers are not to be had */
  startWorker: () => Worker;
}
