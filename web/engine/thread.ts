// A thread with an engine in it, from the page's side.
import threadScript from "engine-thread";
import type { Asked, FromThread, ToThread } from "./worker-messages";

/** In bytes of the file. */
export type OnProgress = (done: number, total: number) => void;

/** Told one thing at a time. */
export interface Thread {
  compile: (packed: Uint8Array) => Promise<WebAssembly.Module>;
  open: (module: WebAssembly.Module) => Promise<WebAssembly.Module>;
  ask: (request: Asked, file?: Uint8Array, onProgress?: OnProgress) => Promise<object>;
  end: () => void;
}

interface Waiting {
  resolve: (said: object) => void;
  reject: (failure: Error) => void;
  onProgress: OnProgress | undefined;
}

/** @throws where workers are not to be had; a policy that forbids them may show only in what is told first. */
export function startThread(): Thread {
  const address = URL.createObjectURL(new Blob([threadScript], { type: "text/javascript" }));
  const worker = new Worker(address);
  let waiting: Waiting | null = null;
  let over: Error | null = null;

  function release(): Waiting | null {
    const released = waiting;
    waiting = null;
    return released;
  }

  function endWith(failure: Error): void {
    over ??= failure;
    worker.terminate();
    URL.revokeObjectURL(address);
    release()?.reject(failure);
  }

  worker.onmessage = ({ data }: MessageEvent<FromThread>) => {
    if ("progress" in data) waiting?.onProgress?.(data.progress.done, data.progress.total);
    else if ("failure" in data) endWith(new Error(data.failure));
    else release()?.resolve("module" in data ? data.module : data.answer);
  };
  worker.onerror = (event) => {
    event.preventDefault();
    endWith(new Error(event.message || "the engine's thread did not start"));
  };

  function tell(message: ToThread, onProgress?: OnProgress): Promise<object> {
    return new Promise((resolve, reject) => {
      if (over !== null) {
        reject(over);
        return;
      }
      waiting = { resolve, reject, onProgress };
      worker.postMessage(message);
    });
  }

  return {
    compile: (packed) => tell({ packed }),
    open: (module) => tell({ module }),
    ask: (request, file, onProgress) => tell({ request, file }, onProgress),
    end: () => {
      endWith(new Error("the engine was ended"));
    },
  };
}
