// Opening engines: in a worker of their own, so that the page stays free, or beside the page where no worker is to be had.
import threadScript from "engine-thread";
import { openEngine } from "../../wasm-bindings/engine-client.js";
import type { EngineRequest } from "./wire-requests";
import type { FromThread, ToThread } from "./worker-messages";

export type OnProgress = (done: number, total: number) => void;

/** An engine as its owner sees it: asked one thing at a time, and ended once. What it was asked when it ended fails. */
export interface OwnEngine {
  ask: (request: EngineRequest, file?: Uint8Array, onProgress?: OnProgress) => Promise<object>;
  end: () => void;
}

export interface EngineOpener {
  inThread: () => Promise<OwnEngine>;
  /** For small questions that are answered sooner than a thread is reached. */
  onPage: () => Promise<OwnEngine>;
}

/** All engines run the module that is compiled from `engineBytes`, which is called once, when the first one is opened. */
export function engineOpener(engineBytes: () => Promise<ArrayBuffer>): EngineOpener {
  let compiling: Promise<WebAssembly.Module> | null = null;
  let threadsServe = true;

  const compiled = (): Promise<WebAssembly.Module> =>
    (compiling ??= engineBytes().then((bytes) => WebAssembly.compile(bytes)));

  async function onPage(): Promise<OwnEngine> {
    const engine = await openEngine(await compiled());
    return {
      ask: async (request, file, onProgress) => engine.ask(request, file, onProgress),
      end: () => undefined,
    };
  }

  async function inThread(): Promise<OwnEngine> {
    if (!threadsServe) return onPage();
    try {
      return await startThread(compiled());
    } catch {
      // A host's policy may forbid workers, or a browser keep compiled code from them.
      threadsServe = false;
      return onPage();
    }
  }

  return { inThread, onPage };
}

/** The worker is started while the engine is still being compiled. */
async function startThread(compiling: Promise<WebAssembly.Module>): Promise<OwnEngine> {
  const address = URL.createObjectURL(new Blob([threadScript], { type: "text/javascript" }));
  try {
    const thread = threadAt(address);
    try {
      await thread.tell({ module: await compiling });
      return {
        ask: (request, file, onProgress) => thread.tell({ request, file }, onProgress),
        end: thread.end,
      };
    } catch (failure) {
      thread.end();
      throw failure;
    }
  } finally {
    URL.revokeObjectURL(address);
  }
}

interface Thread {
  tell: (message: ToThread, onProgress?: OnProgress) => Promise<object>;
  end: () => void;
}

interface Waiting {
  resolve: (answer: object) => void;
  reject: (failure: Error) => void;
  onProgress: OnProgress | undefined;
}

function threadAt(address: string): Thread {
  const worker = new Worker(address);
  let waiting: Waiting | null = null;
  let over: Error | null = null;

  function finish(by: (waiting: Waiting) => void): void {
    const done = waiting;
    waiting = null;
    if (done !== null) by(done);
  }
  function endWith(failure: Error): void {
    over ??= failure;
    worker.terminate();
    finish(({ reject }) => {
      reject(failure);
    });
  }

  worker.onmessage = ({ data }: MessageEvent<FromThread>) => {
    if ("progress" in data) waiting?.onProgress?.(data.progress.done, data.progress.total);
    else if ("failure" in data) endWith(new Error(data.failure));
    else
      finish(({ resolve }) => {
        resolve(data.answer);
      });
  };
  worker.onerror = (event) => {
    event.preventDefault();
    endWith(new Error(event.message || "the engine's thread did not start"));
  };

  return {
    tell: (message, onProgress) =>
      new Promise((resolve, reject) => {
        if (over !== null) {
          reject(over);
          return;
        }
        waiting = { resolve, reject, onProgress };
        worker.postMessage(message);
      }),
    end: () => {
      endWith(new Error("the engine was ended"));
    },
  };
}
