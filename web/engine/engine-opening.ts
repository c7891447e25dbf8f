// Opening engines: in a worker of their own, so that the page stays free, or on the page where no worker is to be had.
import { openEngine } from "../../wasm-bindings/engine-client.js";
import { compileEngine } from "./compile-engine";
import { startThread } from "./thread";
import type { OnProgress } from "./thread";
import type { Asked } from "./worker-messages";

/** An engine as its owner sees it: asked one thing at a time, and ended once. What it was asked when it ended fails. */
export interface OwnEngine {
  ask: (request: Asked, file?: Uint8Array, onProgress?: OnProgress) => Promise<object>;
  end: () => void;
}

export interface EngineOpener {
  inThread: () => Promise<OwnEngine>;
  /** For small questions that are answered sooner than a thread is reached. */
  onPage: () => Promise<OwnEngine>;
}

/** `packedEngine` is called when the first engine is opened; it is unpacked and compiled once, for all of them. */
export function engineOpener(packedEngine: () => Promise<Uint8Array>): EngineOpener {
  let compiling: Promise<WebAssembly.Module> | null = null;
  let threadsServe = true;

  async function onPage(): Promise<OwnEngine> {
    const engine = await openEngine(await (compiling ??= packedEngine().then(compileEngine)));
    return {
      ask: (request, file, onProgress) =>
        new Promise((resolve) => {
          resolve(engine.ask(request, file, onProgress) as object);
        }),
      end: () => undefined,
    };
  }

  async function inThread(): Promise<OwnEngine> {
    const thread = startThread();
    try {
      if (compiling === null) await (compiling = packedEngine().then(thread.compile));
      else await thread.open(await compiling);
      return thread;
    } catch (failure) {
      thread.end();
      throw failure;
    }
  }

  return {
    onPage,
    async inThread() {
      if (!threadsServe) return onPage();
      try {
        return await inThread();
      } catch {
        // A host's policy may forbid workers, or a browser keep compiled code from them.
        threadsServe = false;
        compiling = null;
        return onPage();
      }
    },
  };
}
