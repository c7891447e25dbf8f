// The threads that engines live in. There are two at most: one with the engines in use, and while a file is read beside them
// one more for that.
import { startThread } from "./thread";
import type { OwnEngine, Thread } from "./thread";

export interface EngineThreads {
  /** `apart`: from the engines in use, if that can be. */
  open: (apart: boolean) => Promise<OwnEngine>;
}

interface Place {
  thread: Thread;
  ready: Promise<unknown>;
  engines: number;
}

const mostThreads = 2;

/** `make` tells a new thread what engines are made of; `startWorker` may throw where workers are not to be had. */
export function engineThreads(
  startWorker: () => Worker,
  make: (thread: Thread) => Promise<unknown>,
): EngineThreads {
  const places = new Set<Place>();

  function start(): Place {
    const thread = startThread(startWorker());
    const place = { thread, ready: make(thread), engines: 0 };
    places.add(place);
    return place;
  }

  function placeFor(apart: boolean): Place {
    for (const place of places) if (place.thread.isOver()) places.delete(place);
    const [emptiest] = [...places].sort((a, b) => a.engines - b.engines);
    if (emptiest === undefined) return start();
    return apart && emptiest.engines > 0 && places.size < mostThreads ? start() : emptiest;
  }

  return {
    async open(apart) {
      const place = placeFor(apart);
      ++place.engines;
      let here = true;
      const leave = (): void => {
        if (!here) return;
        here = false;
        if (--place.engines > 0) return;
        // A thread ends with its last engine: that is what gives its memory back at once.
        places.delete(place);
        place.thread.end();
      };
      try {
        await place.ready;
      } catch (failure) {
        leave();
        throw failure;
      }
      const engine = place.thread.engine();
      return {
        ask: async (...asked) => {
          try {
            return await engine.ask(...asked);
          } catch (failure) {
            leave();
            throw failure;
          }
        },
        end() {
          engine.end();
          leave();
        },
      };
    },
  };
}
