// What the page and a thread with engines in it say to each other.
import type { EngineRequest } from "./wire";

/** Several questions at once are answered by an array. */
export type Asked = EngineRequest | EngineRequest[];

/** Stands for the thread itself where a message is not about one of its engines, which count from 1. */
export const threadItself = 0;

/**
 * First what engines are made of. An engine is there once it is asked something, is asked one
 * thing at a time, and is gone when it is ended.
 */
export type ToThread = { engine: number } & (
  { module: WebAssembly.Module } | { request: Asked; file: Uint8Array | undefined } | { ended: true }
);

/**
 * `started` comes by itself, once. `progress` may come any number of times before the answer. What engines are made of is
 * acknowledged by `made`. An engine that failed is gone.
 */
export type FromThread = { engine: number } & (
  | { started: true }
  | { made: true }
  | { answer: object }
  | { failure: string }
  | { progress: { done: number; total: number } }
);
