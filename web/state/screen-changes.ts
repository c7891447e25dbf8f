// Going from screen to screen.
import type { RefusalNote } from "../engine/refusal";
import type { ReadBikeAnswer } from "../engine/wire";
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

/** A message about a bike is handed to the engine; what it reads comes back through `messageRead`. */
export function messageGiven(text: string): PageChange {
  return (state) => ({ ...state, tape: { ...state.tape, message: { text, units: state.tape.draft.unit } } });
}

/** Fills in what the message says, and leaves what was typed where it says nothing. */
export function messageRead({ cells }: ReadBikeAnswer): PageChange {
  return (state) => {
    const said = {
      name: cells.id,
      lowest: cells.saddle_lowest,
      highest: cells.saddle_highest,
      wheel: cells.wheel,
      price: cells.price,
      kind: cells.kind,
    };
    const given = Object.fromEntries(Object.entries(said).filter(([, text]) => text !== ""));
    const draft = { ...state.tape.draft, lowest: "", highest: "", ...given };
    return { ...state, tape: { ...state.tape, draft, message: null, messageTold: "read" } };
  };
}

export function messageRefused(why: RefusalNote): PageChange {
  return (state) => ({ ...state, tape: { ...state.tape, message: null, messageTold: why } });
}

/** The draft joins the rack under `name`; the next one starts empty, in the same unit. */
export function draftKept(name: string): PageChange {
  return (state) => {
    const { draft, kept, nextNumber } = state.tape;
    const id = `taped-${nextNumber}`;
    return {
      ...state,
      tape: {
        ...state.tape,
        messageTold: "nothing",
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
