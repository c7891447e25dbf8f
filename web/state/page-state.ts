// Everything the page knows, in one plain object. It is replaced, never changed in place; screens are drawn from it.
import type { RowsRequest, TypedUnit } from "../engine/narrowed";
import type { RefusalNote } from "../engine/refusal";
import type {
  BikeKind,
  BrakeWish,
  Confidence,
  GearsWish,
  ListRowsAnswer,
  Order,
  Population,
  SetAside,
  TableSketch,
  Stage,
} from "../engine/wire";
import type { Language } from "../texts/languages";
import { noClub } from "./club-day";
import type { ClubState } from "./club-day";
import { noYearsWishes } from "./years-ahead";
import type { YearsState } from "./years-ahead";
import { noKeeping } from "../keeping/keeping-state";
import type { KeepingState } from "../keeping/keeping-state";
import type { Answers } from "./answers";
import type { Printing } from "./printing";
import { emptyDesk } from "./list-desk";
import type { DeskState } from "./list-desk";
import type { Tag } from "./suits";

export type Screen =
  | { name: "rider"; at?: "mass" }
  | { name: "rack" }
  | { name: "bike"; id: string }
  /** The card of one bike and the rider, to print or to share. */
  | { name: "card"; id: string }
  | { name: "beside" }
  | { name: "keep" }
  | { name: "tape" }
  | { name: "list" }
  /** Who rides which bike on a club's morning. */
  | { name: "club" }
  /** The plan of bikes for the whole family. */
  | { name: "years" }
  /** Whom each bike fits. */
  | { name: "suits" };

/** One figure as somebody typed it. The engine reads it; the page never does. */
export interface TypedFigure {
  text: string;
  unit: TypedUnit;
}

export interface ReadingEntry {
  key: number;
  on: string;
  figure: TypedFigure;
  shoes: boolean;
}

/** A month picked from two lists; either may still be open. */
export interface MonthEntry {
  year: string;
  month: string;
}

export interface RiderEntry {
  /** Counts the riders of the family; one without a name is called by it. */
  key: number;
  name: string;
  readings: ReadingEntry[];
  /** null: nobody said; every saddle height hangs on it, so none is guessed. */
  stage: Stage | null;
  confidence: Confidence;
  born: MonthEntry;
  sex: "girl" | "boy" | null;
  population: Population;
  stature: TypedFigure;
  massKg: string;
  ridingFrom: MonthEntry;
}

export interface WantsEntry {
  maxPrice: string;
  maxMassKg: string;
  brakes: BrakeWish;
  gears: GearsWish;
  kind: BikeKind | "any";
  wheel: number | null;
  colour: string | null;
  availableOnly: boolean;
  offRoad: boolean;
  /** Percent of the price that a bike brings when it is sold on. */
  resalePercent: string;
  order: Order;
  /** Every bike is told about in sentences, not in a line. */
  detail: boolean;
  /** The groups of bikes of which only the heading is shown, by `groupName`. */
  folded: string[];
}

/** What is typed about one rider. The one in hand is in the state itself; the others wait like this. */
export interface WaitingRider {
  rider: RiderEntry;
  wants: WantsEntry;
}

export interface TapedBike {
  name: string;
  kind: BikeKind;
  unit: TypedUnit;
  lowest: string;
  highest: string;
  standover: string;
  wheel: string;
  massKg: string;
  price: string;
}

export interface KeptBike {
  id: string;
  bike: TapedBike;
}

export interface TapeState {
  draft: TapedBike;
  kept: KeptBike[];
  nextNumber: number;
  /** A message about a bike, until the engine has read it. */
  message: { text: string; units: TypedUnit } | null;
  /** What became of the last one. */
  messageTold: "nothing" | "read" | RefusalNote;
}

/** What the engine tells of the list it holds; its bikes are asked for as they come near the screen. */
export type LoadedList = Omit<ListRowsAnswer, "entries">;

export interface ListState {
  loaded: LoadedList | null;
  /** Counts the lists and their changes, so that answers about an older list are told from answers about this one. */
  edition: number;
  /** Invented bikes, opened from inside the page. */
  sample: boolean;
  /** What of the file opened last may need a word: which of its columns is which. */
  table?: TableSketch | undefined;
  /** `named`: by the page, and not chosen by its reader. */
  refusal: {
    fileName: string;
    problem: RefusalNote;
    setAside: SetAside[];
    table?: TableSketch | undefined;
    named: boolean;
  } | null;
}

/** A file on its way in beside the list in use, in bytes; known of once that takes a moment. */
export type Opening = { stopped: false; name: string; done: number; total: number } | { stopped: true };

export interface PageState {
  today: string;
  /** The language that is wanted; its words may still be on their way. */
  language: Language;
  /** The unit in which lengths are shown. */
  unit: TypedUnit;
  /** Of prices of which a list names none. */
  currency: string | null;
  screen: Screen;
  /** The rider in hand, and what is wished for this one. */
  rider: RiderEntry;
  wants: WantsEntry;
  waiting: WaitingRider[];
  /** The rider taken out last, until somebody goes on. */
  removed: WaitingRider | null;
  tape: TapeState;
  /** Ids of the bikes to see side by side. */
  picked: string[];
  keeping: KeepingState;
  list: ListState;
  opening: Opening | null;
  desk: DeskState;
  club: ClubState;
  years: YearsState;
  /** The bike that the page's address names. */
  tag: Tag | null;
  /** The places of the rack that are on screen or near it. */
  rows: RowsRequest;
  printing: Printing | null;
  /** What would put another bike first is unfolded. */
  whatIfOpen: boolean;
  /** So is the picture of all bikes. */
  overviewOpen: boolean;
  answers: Answers;
}

export const noMonth: MonthEntry = { year: "", month: "" };

export function emptyTapedBike(unit: TypedUnit): TapedBike {
  return {
    name: "",
    kind: "pedal",
    unit,
    lowest: "",
    highest: "",
    standover: "",
    wheel: "",
    massKg: "",
    price: "",
  };
}

export const noWants: WantsEntry = {
  maxPrice: "",
  maxMassKg: "",
  brakes: "any",
  gears: "any",
  kind: "any",
  wheel: null,
  colour: null,
  availableOnly: false,
  offRoad: false,
  resalePercent: "50",
  order: "lasts",
  detail: false,
  folded: [],
};

export const noList: ListState = {
  loaded: null,
  edition: 0,
  sample: false,
  refusal: null,
};

/** Every filter off; the order, how much is told and what money is counted with stay. */
export function withoutFilters({ order, resalePercent, detail, folded }: WantsEntry): WantsEntry {
  return { ...noWants, order, resalePercent, detail, folded };
}

/** As many places as a tall screen shows, and as many again to scroll into. */
export const firstRows: RowsRequest = { from: 0, count: 48 };

export function newRider(key: number, today: string, unit: TypedUnit, population: Population): RiderEntry {
  return {
    key,
    name: "",
    readings: [{ key: 1, on: today, figure: { text: "", unit }, shoes: true }],
    stage: null,
    confidence: "usual",
    born: noMonth,
    sex: null,
    population,
    stature: { text: "", unit },
    massKg: "",
    ridingFrom: noMonth,
  };
}

export function firstState(
  today: string,
  unit: TypedUnit,
  language: Language,
  population: Population = "any",
): PageState {
  return {
    today,
    language,
    unit,
    currency: null,
    screen: { name: "rider" },
    rider: newRider(1, today, unit, population),
    wants: noWants,
    waiting: [],
    removed: null,
    tape: { draft: emptyTapedBike(unit), kept: [], nextNumber: 1, message: null, messageTold: "nothing" },
    picked: [],
    keeping: noKeeping,
    list: noList,
    opening: null,
    desk: emptyDesk,
    club: noClub,
    years: { ...noYearsWishes, find: "", invented: [] },
    tag: null,
    rows: firstRows,
    printing: null,
    whatIfOpen: false,
    overviewOpen: false,
    answers: {},
  };
}
