// The years ahead: what the family has, and what it would like to try, on which the plan of its bikes rests.
import type { MonthEntry, PageState } from "./page-state";
import type { Change } from "./store";

/** `owned`: may be sold again; `keep`: never; `not`: not to be in the plan. */
export type BikeStanding = "" | "owned" | "keep" | "not";

/** What the family says of one bike. */
export interface BikeMark {
  id: string;
  /** The title of the list that the bike is in, for another list may have another bike of that id. */
  list: string;
  is: BikeStanding;
  /** Where the list has none. */
  price: string;
}

/** All of it is kept. */
export interface YearsWishes {
  years: number;
  perYear: string;
  /** At one time; null: any number. */
  mostBikes: number | null;
  buyFrom: MonthEntry;
  marks: BikeMark[];
}

export interface YearsState extends YearsWishes {
  /** What is looked for among the bikes of the list. */
  find: string;
  /** The children who were made up to look round with. */
  invented: { key: number; name: string }[];
}

export const noYearsWishes: YearsWishes = {
  years: 6,
  perYear: "",
  mostBikes: null,
  buyFrom: { year: "", month: "" },
  marks: [],
};

export function yearsWished(part: Partial<YearsState>): Change<PageState> {
  return (state) => ({ ...state, years: { ...state.years, ...part } });
}

const isTaped = ({ tape }: PageState, id: string): boolean => tape.kept.some((kept) => kept.id === id);

/** Where a bike is: among those that the family measured, or in the list in hand. */
function listOf(state: PageState, id: string): string {
  return isTaped(state, id) ? "" : (state.list.loaded?.list?.title ?? "");
}

/** The marks of bikes that may be here. */
export function marksHere(state: PageState): BikeMark[] {
  return state.years.marks.filter(({ id, list }) => list === listOf(state, id));
}

export function markOf(state: PageState, id: string): BikeMark {
  const list = listOf(state, id);
  return state.years.marks.find((mark) => mark.id === id && mark.list === list) ?? noMark(id, list);
}

export function isOwned(state: PageState, id: string): boolean {
  return ["owned", "keep"].includes(markOf(state, id).is);
}

const noMark = (id: string, list: string): BikeMark => ({ id, list, is: "", price: "" });

export function bikeMarked(id: string, part: Partial<Pick<BikeMark, "is" | "price">>): Change<PageState> {
  return (state) => {
    const before = markOf(state, id);
    const mark = { ...before, ...part };
    const others = state.years.marks.filter((one) => one !== before);
    const marks = mark.is === "" && mark.price === "" ? others : [...others, mark];
    return yearsWished({ marks })(state);
  };
}
