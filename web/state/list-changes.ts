// What can happen to the list of bikes. A file that cannot be read leaves the list in use as it was.
import type { ListAnswer, Refusal } from "../engine/wire-answers";
import { firstRows, noWants } from "./page-state";
import type { PageState } from "./page-state";
import type { Change } from "./store";

type PageChange = Change<PageState>;

export function listOpening(): PageChange {
  return (state) => ({ ...state, list: { ...state.list, busy: true, refusal: null } });
}

export function listOpened(loaded: ListAnswer, sample: boolean): PageChange {
  return (state) => ({
    ...state,
    // A wheel size or colour of the old list may be in no bike of the new one.
    wants: { ...noWants, order: state.wants.order, resalePercent: state.wants.resalePercent },
    rows: firstRows,
    list: { loaded, edition: state.list.edition + 1, sample, busy: false, refusal: null },
  });
}

export function listRefused(fileName: string, refusal: Refusal): PageChange {
  return (state) => ({
    ...state,
    list: {
      ...state.list,
      busy: false,
      refusal: { fileName, problem: refusal.error, setAside: refusal.set_aside ?? [] },
    },
  });
}
