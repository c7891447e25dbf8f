// The lists that are open, and the work on the one in hand. The engine holds that one; the page keeps what was done to it.
import type { RowsRequest, TypedUnit } from "../engine/narrowed";
import type { RefusalNote } from "../engine/refusal";
import type {
  Cells,
  CompareAnswer,
  EntryChange,
  ListHead,
  ListRowsAnswer,
  ListShow,
  Note,
} from "../engine/wire";
import type { KeptBike } from "./page-state";

/** What was done, for the bar that takes it back. */
export interface Done {
  what: "added" | "changed" | "copied" | "removed" | "repaired" | "headed" | "merged";
  /** The bike it was done to, or the list. */
  name?: string;
  count?: number;
  /** How many are still left out is said as well. */
  toMend?: boolean;
  /** A bike that was on the rack by itself until it came into the list. */
  taped?: KeptBike;
}

export interface Step {
  key: number;
  done: Done;
  /** The edit that takes it back, or does it again. */
  changes: EntryChange[];
}

export interface OpenList {
  key: number;
  /** The file it came from or was saved to last. */
  file: string | null;
  title: string | null;
  bikes: number;
  sample: boolean;
  /** Nothing newer could be fetched than this copy of that day. */
  keptOn: string | null;
  /** The page named it, and no reader chose it. */
  named?: boolean;
  undo: Step[];
  redo: Step[];
  /** The newest step when the list was saved last; 0: as it was opened; `neverSaved`: it was opened with changes in it. */
  savedAt: number;
}

export type DeskView = "entries" | "entry" | "workshop" | "head" | "save" | "merge";

/** An entry as somebody types it; the list keeps the old one until it is put there. */
export interface Draft {
  /** The entry it would replace; null: a new one. */
  number: number | null;
  name: string | null;
  before: Cells;
  cells: Cells;
  /** How it is in the file. */
  source: string | null;
  /** Bare lengths are in this unit; null: in the list's. */
  unit: TypedUnit | null;
  /** The field somebody types into. */
  inHand: string;
}

export type Side = "here" | "there" | "both" | "newer" | "fill";

export interface Merge {
  /** The other list. */
  name: string;
  answer: CompareAnswer;
  /** For every bike that is not decided by itself. */
  all: Side;
  take: ReadonlyMap<string, Side>;
  add: boolean;
}

export interface SaveWish {
  /** "page": the page itself as one file, with the list in it. */
  form: "json" | "csv" | "page";
  separator: "," | ";" | "tab";
  only: "all" | "set_aside";
}

export interface DeskState {
  open: OpenList[];
  /** The key of the list in hand; 0: none is open. */
  inHand: number;
  view: DeskView;
  show: ListShow;
  find: string;
  rows: RowsRequest;
  /** What the list's screen shows of the list in hand. */
  page: { answer: ListRowsAnswer; from: number } | null;
  /** The step said last, and whether it was taken back. */
  said: { done: Done; back: boolean } | null;
  /** Why the last thing asked for was not done. */
  refused: RefusalNote | null;
  draft: Draft | null;
  /** The entry that was worked on last; the focus comes back to it. */
  lastNumber: number | null;
  merge: Merge | null;
  save: SaveWish & { savedAs: string | null; failed: boolean };
  /** A list that comes once the draft is in its own, or discarded. */
  waits: string | null;
  /** The list that somebody wants to close although it holds unsaved changes. */
  closing: number | null;
}

export const firstEntries: RowsRequest = { from: 0, count: 48 };

export const emptyDesk: DeskState = {
  open: [],
  inHand: 0,
  view: "entries",
  show: "all",
  find: "",
  rows: firstEntries,
  page: null,
  said: null,
  refused: null,
  draft: null,
  lastNumber: null,
  merge: null,
  save: { form: "json", separator: ",", only: "all", savedAs: null, failed: false },
  waits: null,
  closing: null,
};

export function listInHand(desk: DeskState): OpenList | null {
  return desk.open.find(({ key }) => key === desk.inHand) ?? null;
}

/** What the list says of itself and cannot be read. */
export function headNote({ page }: DeskState, field: keyof ListHead): Note | null {
  return page?.answer.notes.find(({ where }) => where === field) ?? null;
}

/** No step has this key. */
export const neverSaved = -1;

export function isUnsaved({ undo, savedAt }: OpenList): boolean {
  return (undo.at(-1)?.key ?? 0) !== savedAt;
}

export function isTyped({ before, cells }: Draft): boolean {
  return Object.entries(cells).some(([field, text]) => (text ?? "") !== (before[field] ?? ""));
}

/** Somebody types a bike that is in no list yet. */
export function holdsDraft({ draft }: DeskState): boolean {
  return draft !== null && isTyped(draft);
}

/** Something would be lost if the page went away. */
export function holdsUnsaved(desk: DeskState): boolean {
  return desk.open.some(isUnsaved) || holdsDraft(desk);
}
