// A thread with engines in it: the script of a worker, which build.mjs puts into the page's script as a text.
import { openEngine } from "../../wasm-bindings/engine-client.js";
import { threadItself } from "./worker-messages";
import type { Asked, FromThread, ToThread } from "./worker-messages";

/** Milliseconds: often enough for a bar that moves, seldom enough for the page to stay free. */
const progressEvery = 100;

let made: WebAssembly.Module | null = null;
const engines = new Map<number, ReturnType<typeof openEngine>>();

function say(message: FromThread): void {
  postMessage(message);
}

async function answered(engine: number, request: Asked, file: Uint8Array | undefined): Promise<object> {
  if (made === null) throw new Error("asked before it was opened");
  const opening = engines.get(engine) ?? openEngine(made);
  engines.set(engine, opening);
  const asked = await opening;
  let last = performance.now();
  return asked.ask(request, file, (done, total) => {
    const now = performance.now();
    if (now - last < progressEvery) return;
    last = now;
    say({ engine, progress: { done, total } });
  }) as object;
}

async function hear(message: ToThread): Promise<void> {
  const { engine } = message;
  if ("ended" in message) engines.delete(engine);
  else if ("request" in message)
    say({ engine, answer: await answered(engine, message.request, message.file) });
  else {
    made = message.module;
    say({ engine, made: true });
  }
}

onmessage = ({ data }: MessageEvent<ToThread>) => {
  const { engine } = data;
  hear(data).catch((failure: unknown) => {
    engines.delete(engine);
    say({ engine, failure: failure instanceof Error ? failure.message : String(failure) });
  });
};

onmessageerror = () => {
  say({ engine: threadItself, failure: "the engine did not reach its thread" });
};

say({ engine: threadItself, started: true });
