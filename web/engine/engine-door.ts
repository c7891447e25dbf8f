// The way to an engine: opened when first asked, and an answer to everything, its own failure included.
import { historyWith } from "./list-history";
import type { Step } from "./list-history";
import { isRefusal } from "./refusal";
import type { Refusal } from "./refusal";
import { SilentThread } from "./thread";
import type { OnProgress, OwnEngine } from "./thread";
import type { Asked } from "./worker-messages";

/** What the page needs of an engine. It never rejects: what goes wrong with it is a refusal with the code `internal`. */
export interface Engine {
  ask: (request: Asked, file?: Uint8Array, onProgress?: OnProgress) => Promise<object>;
}

export interface EngineDoor extends Engine {
  /** Opens it now, so that the first question need not wait for that. */
  begin: () => void;
  /**
   * Opens a second engine, and lets `prepare` ask it while the first one goes on answering. Where that resolves to true
   * the second takes the place of the first; otherwise, and where it was stopped, nothing has happened.
   */
  beside: (prepare: (second: Engine) => Promise<boolean>, stop: AbortSignal) => Promise<void>;
  /** How the engine came by its list. */
  history: () => Step[];
  /** Nothing is asked any more. */
  end: () => void;
}

/** `open` is told whether the engine is to work beside another one. */
export function engineDoor(open: (apart: boolean) => Promise<OwnEngine>): EngineDoor {
  let inUse = lastingEngine(() => open(false));
  return {
    begin: () => inUse.begin(),
    ask: (...asked) => inUse.ask(...asked),
    history: () => inUse.history(),
    async beside(prepare, stop) {
      const second = lastingEngine(() => open(true));
      stop.addEventListener("abort", second.end);
      const wanted = await prepare(second);
      stop.removeEventListener("abort", second.end);
      if (!wanted || stop.aborted) {
        second.end();
        return;
      }
      inUse.retire();
      inUse = second;
    },
    end() {
      inUse.end();
    },
  };
}

interface LastingEngine extends Engine {
  begin: () => void;
  history: () => Step[];
  /** At once: what was asked is not answered any more. */
  end: () => void;
  /** Once all that was asked is answered. */
  retire: () => void;
}

/**
 * Asks one thing after another. An engine that broke down or went silent is followed by a fresh one, which is given its list again, edits
 * included, before it is asked anything else.
 */
function lastingEngine(open: () => Promise<OwnEngine>): LastingEngine {
  let opening: Promise<OwnEngine> | null = null;
  let engine: OwnEngine | null = null;
  let asking = 0;
  let history: Step[] = [];
  let turn: Promise<unknown> = Promise.resolve();
  let over = false;

  async function openWithHistory(): Promise<OwnEngine> {
    const engine = await open();
    for (const { request, file } of history) await engine.ask(request, file);
    return engine;
  }

  const answerOnce: Engine["ask"] = async (request, file, onProgress) => {
    try {
      if (over) throw new Error("the engine was ended");
      opening ??= openWithHistory();
      engine ??= await opening;
      const answered = await engine.ask(request, file, onProgress);
      if (!isRefusal(answered)) history = historyWith(history, { request, file });
      return answered;
    } catch (failure) {
      opening = engine = null;
      throw failure;
    }
  };

  /** What went silent is asked once more, of a fresh engine: a device may have ended it to save memory. */
  const answer: Engine["ask"] = (...asked) =>
    answerOnce(...asked)
      .catch((failure: unknown) => {
        if (failure instanceof SilentThread) return answerOnce(...asked);
        throw failure;
      })
      .catch(ownFailure);

  function end(): void {
    over = true;
    void opening?.then((engine) => {
      engine.end();
    });
  }

  return {
    history: () => history,
    begin() {
      opening ??= openWithHistory();
      // Whoever asks is told of it.
      opening.catch(() => undefined);
    },
    ask(...asked) {
      // Where nothing waits it is asked at once, so that it works while the page goes on.
      const mine = asking++ === 0 ? answer(...asked) : turn.then(() => answer(...asked));
      turn = mine.then(() => --asking);
      return mine;
    },
    end,
    retire() {
      void turn.then(end);
    },
  };
}

function ownFailure(failure: unknown): Refusal {
  const cause = failure instanceof Error ? failure.message : String(failure);
  return {
    error: {
      code: "internal",
      where: "",
      figures: { what: cause },
    },
  };
}
