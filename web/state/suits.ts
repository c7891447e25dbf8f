// The list turned round, and the bike whose tag was scanned.
import type { SuitsAnswer, TextAnswer } from "../engine/wire";
import type { Question } from "./answers";
import type { PageState, Screen } from "./page-state";
import { went } from "./screen-changes";
import type { Change } from "./store";

/** More would be no chart to look at and no pile of tags to cut. */
const mostBikes = 1000;

/** Whom each bike of the list fits. */
export const suitsQuestion: Question<SuitsAnswer> = {
  name: "suits",
  engine: "rack",
  pose: ({ screen, list }) =>
    screen.name === "suits" && list.loaded !== null
      ? {
          request: { do: "suits", rows: { from: 0, count: mostBikes } },
          edition: list.edition,
          subject: String(list.edition),
        }
      : null,
};

/** The same as a table to be saved, of the whole list. */
export const suitsTableQuestion: Question<TextAnswer> = {
  name: "suits table",
  engine: "rack",
  settles: 300,
  pose: ({ screen, list }) =>
    screen.name === "suits" && list.loaded !== null
      ? { request: { do: "suits", form: "csv" }, edition: list.edition, subject: String(list.edition) }
      : null,
};

/** The page's address names this bike. `awaited`: the list that it names as well is still on its way. */
export interface Tag {
  id: string;
  awaited: boolean;
}

export function tagOf(id: string | null, list: string | null): Tag | null {
  return id === null ? null : { id, awaited: list !== null };
}

/** @param screen one about that bike */
export function tagScanned(tag: Tag, screen: Screen): Change<PageState> {
  return (state) => ({ ...went(screen)(state), tag });
}

/** The list that was named has come, or will not come. */
export function tagAwaitsNothing(): Change<PageState> {
  return (state) =>
    state.tag?.awaited === true ? { ...state, tag: { ...state.tag, awaited: false } } : state;
}
