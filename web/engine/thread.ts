// A thread with engines in it, from the page's side.
import { threadItself } from "./worker-messages";
import type { Asked, FromThread, ToThread } from "./worker-messages";

/** In bytes of the file. */
export type OnProgress = (done: number, total: number) => void;

/** An engine as its owner sees it: asked one thing at a time, and ended once. What it was asked when it ended fails. */
export interface OwnEngine {
  ask: (request: Asked, file?: Uint8Array, onProgress?: OnProgress) => Promise<object>;
  end: () => void;
}

export interface Thread {
  /** What its engines are made of; to be told once, and before there is an engine. */
  make: (module: WebAssembly.Module) => Promise<unknown>;
  engine: () => OwnEngine;
  /** It broke down or was ended, and answers nothing any more. */
  isOver: () => boolean;
  end: () => void;
}

interface Waiting {
  resolve: (said: object) => void;
  reject: (failure: Error) => void;
  onProgress: OnProgress | undefined;
}

/** The thread said nothing for so long that it must be taken for dead. Whoever asked may ask another one. */
export class SilentThread extends Error {}

/**
 * Seconds in which a thread that was asked something has to say something. Four times what the longest list asks of a slow
 * device. They are counted one by one: a page that sleeps, and its thread with it, does not count them.
 */
const mostSilence = 20;

/** Milliseconds for a thread to start, which takes a hundredth of it. Some browsers never say that a worker was not let in. */
const patience = 5000;

/** @param worker has engine-thread.ts in it; a policy that forbids it may show only in what is told first. */
export function startThread(worker: Worker): Thread {
  const waiting = new Map<number, Waiting>();
  let engines = threadItself;
  let over: Error | null = null;
  let silent = 0;
  let listening: ReturnType<typeof setInterval> | undefined;

  function endWith(failure: Error): void {
    over ??= failure;
    clearTimeout(starting);
    clearInterval(listening);
    worker.terminate();
    for (const { reject } of waiting.values()) reject(failure);
    waiting.clear();
  }

  const starting = setTimeout(() => {
    endWith(new Error("the engine's thread did not start"));
  }, patience);

  function listen(): void {
    clearInterval(listening);
    silent = 0;
    if (waiting.size === 0) return;
    listening = setInterval(() => {
      if (++silent >= mostSilence) endWith(new SilentThread("the engine's thread went silent"));
    }, 1000);
  }

  worker.onmessage = ({ data }: MessageEvent<FromThread>) => {
    const asker = waiting.get(data.engine);
    if ("started" in data) clearTimeout(starting);
    else if ("progress" in data) asker?.onProgress?.(data.progress.done, data.progress.total);
    else {
      waiting.delete(data.engine);
      if ("failure" in data) asker?.reject(new Error(data.failure));
      else asker?.resolve("answer" in data ? data.answer : data);
    }
    listen();
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
      waiting.set(message.engine, { resolve, reject, onProgress });
      listen();
      worker.postMessage(message);
    });
  }

  return {
    make: (module) => tell({ engine: threadItself, module }),
    engine() {
      const engine = ++engines;
      return {
        ask: (request, file, onProgress) => tell({ engine, request, file }, onProgress),
        end() {
          waiting.get(engine)?.reject(new Error("the engine was ended"));
          waiting.delete(engine);
          listen();
          if (over === null) worker.postMessage({ engine, ended: true } satisfies ToThread);
        },
      };
    },
    isOver: () => over !== null,
    end: () => {
      endWith(new Error("the engine was ended"));
    },
  };
}
