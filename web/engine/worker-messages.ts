// What the page and the engine's own thread say to each other. The thread answers one message before the next is sent.
import type { EngineRequest } from "./wire-requests";

/** First the compiled engine, then questions. */
export type ToThread =
  { module: WebAssembly.Module } | { request: EngineRequest; file: Uint8Array | undefined };

/** `progress` may come any number of times before the answer. */
export type FromThread =
  { answer: object } | { failure: string } | { progress: { done: number; total: number } };
