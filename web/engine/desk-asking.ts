// How the work on lists asks the engine: one thing after the other, and what was refused is said on the desk.
import type { DeskState, Done } from "../state/list-desk";
import { deskRefused, listStepped } from "../state/list-steps";
import type { PageState } from "../state/page-state";
import type { Change, Store } from "../state/store";
import type { Engine } from "./engine-door";
import { isRefusal } from "./refusal";
import type { EditAnswer, EditRequest, EngineRequest, ListWindow, MergeRequest } from "./wire";

export interface DeskAsking {
  state: () => PageState;
  desk: () => DeskState;
  change: (by: Change<PageState>) => void;
  /** The entries that the list's screen shows. */
  window: () => ListWindow;
  /** null: the engine refused, and the desk says why. */
  asked: <Answer>(request: EngineRequest, file?: Uint8Array) => Promise<Answer | null>;
  /** A step on the list in hand that can be taken back. */
  stepped: (
    request: Omit<EditRequest, "rows"> | Omit<MergeRequest, "rows">,
    done: Done,
    file?: Uint8Array,
  ) => Promise<boolean>;
  /** A tap must find the list as the one before left it. */
  inTurn: <Asked extends unknown[], Answer>(
    work: (...asked: Asked) => Promise<Answer>,
  ) => (...asked: Asked) => Promise<Answer>;
}

export function deskAsking(store: Store<PageState>, engine: Engine): DeskAsking {
  let turn: Promise<unknown> = Promise.resolve();
  let steps = 0;

  const desk = (): DeskState => store.read().desk;
  const window = (): ListWindow => {
    const { rows, show, find } = desk();
    return { rows, show, find };
  };

  async function asked<Answer>(request: EngineRequest, file?: Uint8Array): Promise<Answer | null> {
    const answer = await engine.ask(request, file);
    if (!isRefusal(answer)) return answer as Answer;
    store.change(deskRefused(answer.error));
    return null;
  }

  return {
    state: store.read,
    desk,
    change: store.change,
    window,
    asked,
    async stepped(request, done, file) {
      const answer = await asked<EditAnswer>({ ...request, ...window() }, file);
      if (answer !== null) store.change(listStepped(answer, done, ++steps));
      return answer !== null;
    },
    inTurn:
      (work) =>
      (...given) => {
        const mine = turn.then(() => work(...given));
        turn = mine.catch(() => undefined);
        return mine;
      },
  };
}
