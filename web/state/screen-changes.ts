// Going from screen to screen.
import { emptyTapedBike, withoutFilters } from "./page-state";
import type { PageState, Screen, TapedBike, WantsEntry } from "./page-state";
import type { Language } from "../texts/languages";
import type { Change } from "./store";

type PageChange = Change<PageState>;

export function went(screen: Screen): PageChange {
  return (state) => {
    const { screen: now } = state;
    if (now.name === screen.name && !("id" in now && "id" in screen && now.id !== screen.id)) return state;
    return { ...state, screen };
  };
}

/** Bikes are fetched from `rows` on when these places come near the screen. */
export function rowsNeared(first: number, end: number): PageChange {
  return (state) => {
    const { from, count } = state.rows;
    if (first >= from && end <= from + count) return state;
    const wanted = Math.max(count, end - first);
    const before = Math.floor((wanted - (end - first)) / 2);
    return { ...state, rows: { from: Math.max(0, first - before), count: wanted } };
  };
}

export function languageChosen(language: Language): PageChange {
  return (state) => ({ ...state, language });
}

export function currencyIs(currency: string | null): PageChange {
  return (state) => ({ ...state, currency });
}

export function unfolded(part: "whatIfOpen" | "overviewOpen", open: boolean): PageChange {
  return (state) => (open === state[part] ? state : { ...state, [part]: open });
}

export function wanted(part: Partial<WantsEntry>): PageChange {
  return (state) => ({ ...state, wants: { ...state.wants, ...part } });
}

export function wantsCleared(): PageChange {
  return (state) => ({ ...state, wants: withoutFilters(state.wants) });
}

export function draftTaped(part: Partial<TapedBike>): PageChange {
  return (state) => ({ ...state, tape: { ...state.tape, draft: { ...state.tape.draft, ...part } } });
}

/** The draft joins the rack under `name`; the next one starts empty, in the same unit. */
export function draftKept(name: string): PageChange {
  return (state) => {
    const { draft, kept, nextNumber } = state.tape;
    const id = `taped-${nextNumber}`;
    return {
      ...state,
      tape: {
        draft: emptyTapedBike(draft.unit),
        kept: [...kept, { id, bike: { ...draft, name } }],
        nextNumber: nextNumber + 1,
      },
    };
  };
}

export function keptBikeRemoved(id: string): PageChange {
  return (state) => ({
    ...state,
    tape: { ...state.tape, kept: state.tape.kept.filter((kept) => kept.id !== id) },
    picked: state.picked.filter((picked) => picked !== id),
  });
}
