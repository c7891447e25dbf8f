// A club's morning: its riders, and what was settled by hand.
import type { TypedUnit } from "../engine/narrowed";
import type { RefusalNote } from "../engine/refusal";
import type { Note, RiderCell, TableRow } from "../engine/wire";

export interface PairIds {
  rider: string;
  bike: string;
}

/** `out`: on the road at this moment; otherwise somebody wants this pair kept. */
export interface FixedPair extends PairIds {
  out: boolean;
}

/** What is taken back step by step. */
export interface Morning {
  riders: TableRow[];
  /** Riders who have left. */
  gone: string[];
  absent: string[];
  fixed: FixedPair[];
  never: PairIds[];
  rounds: number;
  /** Bikes whose saddle is set. */
  set: string[];
}

export interface ClubState extends Morning {
  draft: Record<DraftCell, string>;
  /** A table on its way to the engine. */
  coming: { text: string; units: TypedUnit } | null;
  /** What was said of the last table that was read. */
  said: { added: number; problem: RefusalNote | null; setAside: Note[]; unknown: string[] };
  /** The pairs before the last change: kept where that costs nothing. */
  before: PairIds[];
  past: Morning[];
  byBike: boolean;
  numbersOnly: boolean;
}

export type DraftCell = Extract<RiderCell, "name" | "inseam" | "stage" | "age">;

export const emptyDraft: ClubState["draft"] = { name: "", inseam: "", stage: "", age: "" };

export const emptyMorning: Morning = {
  riders: [],
  gone: [],
  absent: [],
  fixed: [],
  never: [],
  rounds: 1,
  set: [],
};

export const noClub: ClubState = {
  ...emptyMorning,
  draft: emptyDraft,
  coming: null,
  said: { added: 0, problem: null, setAside: [], unknown: [] },
  before: [],
  past: [],
  byBike: false,
  numbersOnly: false,
};
