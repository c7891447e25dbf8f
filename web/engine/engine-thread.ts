// The engine's own thread: the script of a worker, which build.mjs puts into the page's script as a text.
import { openEngine } from "../../wasm-bindings/engine-client.js";
import type { FromThread, ToThread } from "./worker-messages";

/** Often enough for a bar that moves, seldom enough for the page to stay free. */
const progressEvery = 100;

let engine: Awaited<ReturnType<typeof openEngine>> | null = null;

function say(message: FromThread): void {
  postMessage(message);
}

async function answerTo(message: ToThread): Promise<object> {
  if ("module" in message) {
    engine = await openEngine(message.module);
    return {};
  }
  if (engine === null) throw new Error("asked before it was opened");
  let last = performance.now();
  return engine.ask(message.request, message.file, (done, total) => {
    const now = performance.now();
    if (now - last < progressEvery) return;
    last = now;
    say({ progress: { done, total } });
  });
}

onmessage = ({ data }: MessageEvent<ToThread>) => {
  answerTo(data).then(
    (answer) => {
      say({ answer });
    },
    (failure: unknown) => {
      say({ failure: failure instanceof Error ? failure.message : String(failure) });
    },
  );
};

onmessageerror = () => {
  say({ failure: "the engine did not reach its thread" });
};
