// The engine's own thread: the script of a worker, which the build puts into the page's script as a text.
import { openEngine } from "../../wasm-bindings/engine-client.js";
import { compileEngine } from "./compile-engine";
import type { Asked, FromThread, ToThread } from "./worker-messages";

/** Milliseconds: often enough for a bar that moves, seldom enough for the page to stay free. */
const progressEvery = 100;

let engine: Awaited<ReturnType<typeof openEngine>> | null = null;

function say(message: FromThread): void {
  postMessage(message);
}

function answered(request: Asked, file: Uint8Array | undefined): object {
  if (engine === null) throw new Error("asked before it was opened");
  let last = performance.now();
  return engine.ask(request, file, (done, total) => {
    const now = performance.now();
    if (now - last < progressEvery) return;
    last = now;
    say({ progress: { done, total } });
  }) as object;
}

async function reply(message: ToThread): Promise<FromThread> {
  if ("request" in message) return { answer: answered(message.request, message.file) };
  const module = "packed" in message ? await compileEngine(message.packed) : message.module;
  engine = await openEngine(module);
  return { module };
}

onmessage = ({ data }: MessageEvent<ToThread>) => {
  reply(data)
    .then(say)
    .catch((failure: unknown) => {
      say({ failure: failure instanceof Error ? failure.message : String(failure) });
    });
};

onmessageerror = () => {
  say({ failure: "the engine did not reach its thread" });
};
