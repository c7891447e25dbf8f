// Lists over the wire: opening, looking through, editing, comparing and saving them. An entry's `number` is its place in
// the list, from 1, usable or set aside alike.
import type { BikeFacts, BikeKind, ListFacts, Note } from "./wire-answers";
import type { RowsRequest } from "./wire-requests";

/** An entry's fields as text, the form they have in a table. "" or null takes a field out. */
export type Cells = Record<string, string | null>;

/** How a file is read. Nothing is guessed: without `encoding` it is UTF-8. */
export interface LoadRequest extends Partial<ListWindow> {
  do: "load";
  encoding?: "windows-1252";
  /** What bare lengths of a table count in where it says nothing of it. */
  table_units?: ListUnit;
  /** A list of which nothing can be used is opened all the same. */
  to_mend?: boolean;
}

export type ListUnit = "cm" | "mm" | "in";

export type ListShow = "all" | "bikes" | "set_aside" | "slips";

/** The part of a list that an answer tells about; without it, all of every bike is told. */
export interface ListWindow {
  rows: RowsRequest;
  show?: ListShow;
  /** Only entries that contain this text. */
  find?: string;
}

export interface ListRequest extends Partial<ListWindow> {
  do: "list";
}

/** What is above a list. null or "" takes it out. */
export interface ListHead {
  title?: string | null;
  units?: string | null;
  currency?: string | null;
  measured_on?: string | null;
}

export interface NewListRequest extends ListHead, Partial<ListWindow> {
  do: "new_list";
}

export type EntryRequest = { do: "entry" } & ({ number: number; next_id?: true } | { id: string });

export interface CheckEntryRequest {
  do: "check_entry";
  cells: Cells;
  /** The entry that it would replace. */
  number?: number;
}

/** One step of an edit. Steps are taken in their order, all of them or none. */
export type EntryChange =
  | { set: Cells; number: number }
  | { add: Cells; before?: number }
  | { copy: number }
  | { remove: number }
  | { put: unknown; number: number }
  | { insert: unknown; before?: number }
  | { list: ListHead }
  | { repair_all: SlipCode };

export interface EditRequest extends ListWindow {
  do: "edit";
  changes: EntryChange[];
}

/** Goes with the bytes of another file. */
export interface CompareRequest {
  do: "compare";
  encoding?: "windows-1252";
}

/** Goes with the bytes that were compared. */
export interface MergeRequest extends ListWindow {
  do: "merge";
  encoding?: "windows-1252";
  /** By the conflict's id; "here" where nothing is said. */
  take?: Record<string, "here" | "there" | "both">;
  /** Whether bikes that only the other file has come in; they do where nothing is said. */
  add?: boolean;
}

export interface SaveRequest {
  do: "save";
  form: "json" | "csv";
  separator?: "," | ";" | "tab";
  decimal?: "." | ",";
  only?: "set_aside";
}

export type ListsRequest =
  | LoadRequest
  | ListRequest
  | NewListRequest
  | EntryRequest
  | CheckEntryRequest
  | EditRequest
  | CompareRequest
  | MergeRequest
  | SaveRequest;

/** A problem in a file: by line and column, or by row and column of a table as a spreadsheet shows it. */
export interface PlacedNote extends Note {
  row?: number;
  column_name?: string;
}

export type SlipCode =
  | "slip_unit"
  | "slip_swapped"
  | "slip_id_taken"
  | "slip_span_narrow"
  | "slip_span_wide"
  | "slip_unlike_others";

/** What looks like a slip of the hand, and the edit that would mend it; none where only a tape measure can tell. */
export interface Slip {
  code: SlipCode;
  number: number;
  where: string;
  problem: string;
  expected: string;
  figures: Record<string, string>;
  changes: EntryChange[];
}

export interface ListedEntry {
  number: number;
  id: string | null;
  name: string | null;
  kind: BikeKind | null;
  wheel: BikeFacts["wheel"];
  saddle_lowest_mm: number | null;
  saddle_highest_mm: number | null;
  price: number | null;
  currency: string | null;
  mass_kg: number | null;
  /** Why it was set aside. */
  problem: PlacedNote | null;
  slips: Slip[];
}

/** What there is to choose from in the filters. */
export interface ListOffers {
  wheels: { nominal_in: number; count: number }[];
  colours: { colour: string; count: number }[];
}

export interface ListCounts {
  entries: number;
  bikes: number;
  set_aside: number;
  slips: number;
  /** Of what `show` and `find` let through. */
  shown: number;
}

/** The answer of `list`, and of `load`, `new_list`, `edit` and `merge`, where `rows` were asked for. */
export interface ListRowsAnswer {
  list: (ListFacts & { entries: number; form: "json" | "table" }) | null;
  counts: ListCounts;
  offers: ListOffers;
  /** From the lowest saddle of all usable bikes to the highest. */
  heights_mm: { lowest: number | null; highest: number | null };
  notes: Note[];
  entries: ListedEntry[];
  slip_kinds: { code: SlipCode; count: number }[];
}

export interface EditAnswer extends ListRowsAnswer {
  /** The edit that brings the list back as it was. */
  undo: EntryChange[];
}

export interface EntryAnswer {
  number: number;
  id: string | null;
  /** An id for one more bike, where that was asked for and this one's can be counted on from. */
  next_id?: string | null;
  name: string | null;
  cells: Record<string, string>;
  /** null: it was set aside. */
  bike: BikeFacts | null;
  problem: PlacedNote | null;
  slips: Slip[];
  /** As it is in the file. */
  source: string;
}

export interface CheckEntryAnswer {
  bike: BikeFacts | null;
  problem: PlacedNote | null;
  slips: Slip[];
}

export interface CompareAnswer {
  there: { title: string | null; units: string; currency: string | null; entries: number };
  same: number;
  only_here: number;
  only_there: { number: number; id: string | null; name: string | null }[];
  conflicts: Conflict[];
  set_aside: number;
}

/** The same bike with other figures in either list. */
export interface Conflict {
  id: string;
  here: { number: number; cells: Record<string, string> };
  there: { number: number; cells: Record<string, string> };
  differs: string[];
}

export interface SaveAnswer {
  text: string;
  entries: number;
  /** What cannot go into a table. */
  left_out: (PlacedNote & { number: number; id: string | null; name: string | null })[];
}
