// What can happen to the list of bikes. A file that cannot be read leaves the list in use as it was.
import type { Refusal } from "../engine/refusal";
import type { ListRowsAnswer, TableSketch } from "../engine/wire";
import { firstRows, withoutFilters } from "./page-state";
import type { PageState } from "./page-state";
import type { Change } from "./store";

type PageChange = Change<PageState>;

/** The list that the engine holds is another one, or has been changed: all that rests on it is asked again. */
export function withRack(state: PageState, loaded: ListRowsAnswer): PageState {
  return { ...state, list: { ...state.list, loaded, edition: state.list.edition + 1 } };
}

/** `table`: what of the file that was just opened may need a word. */
export function listOpened(loaded: ListRowsAnswer, sample: boolean, table?: TableSketch): PageChange {
  return (before) => {
    const state = withRack(before, loaded);
    return {
      ...state,
      // A wheel size or colour of the old list may be in no bike of the new one.
      wants: withoutFilters(state.wants),
      waiting: state.waiting.map((one) => ({ ...one, wants: withoutFilters(one.wants) })),
      picked: state.picked.filter((id) => state.tape.kept.some((kept) => kept.id === id)),
      rows: firstRows,
      // Of bikes of another list nothing is shown, not even in grey.
      answers: {},
      list: { ...state.list, sample, refusal: null, table },
      opening: null,
    };
  };
}

export function listRefused(fileName: string, refusal: Refusal, named: boolean): PageChange {
  return (state) => ({
    ...state,
    list: {
      ...state.list,
      table: undefined,
      refusal: {
        fileName,
        problem: refusal.error,
        setAside: refusal.set_aside ?? [],
        table: refusal.table,
        named,
      },
    },
    opening: null,
  });
}

export function openingShown(name: string, done: number, total: number): PageChange {
  return (state) => ({ ...state, opening: { stopped: false, name, done, total } });
}

export function openingStopped(): PageChange {
  return (state) => ({ ...state, opening: { stopped: true } });
}
