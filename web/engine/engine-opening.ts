// Opening engines: in threads of their own, so that the page stays free, or on the page where no worker is to be had.
import { openEngine } from "../../wasm-bindings/engine-client.js";
import type { EngineSource } from "./engine-source";
import { engineThreads } from "./engine-threads";
import type { OwnEngine } from "./thread";

export interface EngineOpener {
  /** `apart`: from the engines in use, if that can be, so that they are not held up by what this one is for. */
  inThread: (apart: boolean) => Promise<OwnEngine>;
  /** For small questions that are answered sooner than a thread is reached. */
  onPage: () => Promise<OwnEngine>;
}

/** The engine is fetched and compiled when the first one is opened, once for all of them; what failed is tried again. */
export function engineOpener(source: EngineSource): EngineOpener {
  let compiling: Promise<WebAssembly.Module> | null = null;
  let threadsServe = true;

  function compileOnce(): Promise<WebAssembly.Module> {
    compiling ??= source.compiled().catch((failure: unknown) => {
      compiling = null;
      throw failure;
    });
    return compiling;
  }

  async function onPage(): Promise<OwnEngine> {
    const engine = await openEngine(await compileOnce());
    return {
      ask: (request, file, onProgress) =>
        new Promise((resolve) => {
          resolve(engine.ask(request, file, onProgress) as object);
        }),
      end: () => undefined,
    };
  }

  const threads = engineThreads(source.startWorker, async (thread) => thread.make(await compileOnce()));

  return {
    onPage,
    async inThread(apart) {
      if (!threadsServe) return onPage();
      try {
        return await threads.open(apart);
      } catch {
        // A host's policy may forbid workers, or a browser keep compiled code from them.
        threadsServe = false;
        return onPage();
      }
    },
  };
}
