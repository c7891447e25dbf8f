// What the page and the engine's own thread say to each other. The thread answers one message before the next is sent.
import type { EngineRequest } from "./wire-requests";

/** Several questions at once are answered by an array. */
export type Asked = EngineRequest | EngineRequest[];

/** First the engine, packed or compiled already, then questions. */
export type ToThread =
  { packed: Uint8Array } | { module: WebAssembly.Module } | { request: Asked; file: Uint8Array | undefined };

/** `progress` may come any number of times before the answer. A packed engine is answered by the compiled one. */
export type FromThread =
  | { answer: object }
  | { module: WebAssembly.Module }
  | { failure: string }
  | { progress: { done: number; total: number } };
