// The threads that engines live in. There are two at most: one with the engines in use, and one in reserve, so that a file
// can be read beside them at once.
import { startThread } from "./thread";
import type { OwnEngine, Thread } from "./thread";
import { warmUp } from "./warm-up";

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

/** Milliseconds after which the reserve is looked to: whatever was just asked is more urgent. */
const rest = 200;

/** `make` tells a new thread what engines are made of; `startWorker` may throw where workers are not to be had. */
export function engineThreads(
  startWorker: () => Worker,
  make: (thread: Thread) => Promise<unknown>,
): EngineThreads {
  const places = new Set<Place>();
  let warm = false;
  let tending: ReturnType<typeof setTimeout> | undefined;

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

  /** A thread ends with its last engine: that is what gives its memory back at once. */
  function end(place: Place): void {
    if (place.engines > 0) return;
    places.delete(place);
    place.thread.end();
  }

  async function keepReserve(): Promise<void> {
    if (![...places].some(({ engines }) => engines > 0)) places.forEach(end);
    else if (places.size < mostThreads) {
      const reserve = start();
      await reserve.ready.catch((failure: unknown) => {
        end(reserve);
        throw failure;
      });
      if (!warm) await warmUp(reserve.thread.engine(), () => reserve.engines === 0);
      warm = true;
    }
  }

  function tend(): void {
    clearTimeout(tending);
    tending = setTimeout(() => {
      // Nobody waits for it.
      keepReserve().catch(() => undefined);
    }, rest);
  }

  return {
    async open(apart) {
      const place = placeFor(apart);
      ++place.engines;
      let here = true;
      const leave = (): void => {
        if (!here) return;
        here = false;
        --place.engines;
        end(place);
        tend();
      };
      try {
        await place.ready;
      } catch (failure) {
        leave();
        throw failure;
      }
      const engine = place.thread.engine();
      tend();
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
