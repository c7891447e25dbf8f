// The way to the engine: opened when first asked, and an answer to everything, its own failure included.
import type { EngineRequest } from "./wire-requests";
import { isRefusal } from "./wire-answers";
import type { Refusal } from "./wire-answers";

/** What the page needs of an engine; `wasm-bindings/engine-client.js` is one. */
export interface Engine {
  ask: (request: EngineRequest, fileBytes?: Uint8Array) => object | Promise<object>;
}

/**
 * An engine that never rejects: what goes wrong with it comes back as a refusal with the code `internal`. One that had
 * to start afresh is given its list again before it is asked anything else.
 */
export function engineDoor(open: () => Promise<Engine>): Engine {
  let opening: Promise<Engine> | null = null;
  let list: Uint8Array | null = null;

  async function openWithList(): Promise<Engine> {
    const engine = await open();
    if (list !== null) await engine.ask({ do: "load" }, list);
    return engine;
  }

  return {
    async ask(request, fileBytes) {
      try {
        opening ??= openWithList();
        const engine = await opening;
        const answer = await engine.ask(request, fileBytes);
        if (request.do === "load" && fileBytes !== undefined && !isRefusal(answer)) list = fileBytes;
        return answer;
      } catch (failure) {
        opening = null;
        return ownFailure(failure);
      }
    },
  };
}

function ownFailure(failure: unknown): Refusal {
  const cause = failure instanceof Error ? failure.message : String(failure);
  return {
    error: {
      code: "internal",
      where: "",
      problem: `the engine made a mistake of its own (${cause})`,
      expected: "",
      figures: { what: cause },
    },
  };
}
