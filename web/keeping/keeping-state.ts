// What the page knows of its own keeping, as far as a reader is told about it.
import { familyOf } from "../state/family-changes";
import type { PageState, TapedBike } from "../state/page-state";
import { sentReadings } from "../state/request-building";
import type { Change } from "../state/store";
import type { FormFault } from "./family-form";

/**
 * Why nothing is kept although that is wanted: no place for it, refused, full; or a record that must not be written over
 * unasked: damaged, of a newer page, of another page that wrote since (`elsewhere`), or taken away by one (`gone`).
 * `mended`: parts of the record cannot be read. `left`: an earlier version kept it where other pages can read it, so that it has to go. `held`: another page keeps it from
 * being deleted.
 */
export type KeepingTrouble =
  | "missing"
  | "refused"
  | "full"
  | "elsewhere"
  | "gone"
  | "mended"
  | "left"
  | "held"
  | Exclude<FormFault["code"], "foreign">;

export interface KeepingState {
  /** Off until somebody asks for it. */
  on: boolean;
  /** The device holds something of this page. */
  written: boolean;
  trouble: KeepingTrouble | null;
  /** What was measured, as it is in the family's file that was saved or opened last. */
  inFile: string;
  /** What came of the last file, or of wiping. */
  said:
    | { what: "saved"; file: string }
    /** But for what is `lost`. */
    | { what: "opened"; file: string; lost: string[] }
    | { what: "mended"; lost: string[] }
    | { what: "fault"; file: string; fault: FormFault }
    | { what: "wiped" | "undone" }
    | null;
}

/** All that somebody measured, as one text; empty where nothing was. */
export function measured(state: PageState): string {
  const { kept, draft } = state.tape;
  const riders = familyOf(state).map(({ rider: { readings, stature, massKg } }) => [
    ...sentReadings({ readings }).map(({ on, figure, shoes }) => [on, figure, shoes]),
    ...[stature.text, massKg].filter((text) => text.trim() !== ""),
  ]);
  const bikes = [...kept.map(({ bike }) => bike), ...(isTaped(draft) ? [draft] : [])];
  const all = [...riders, bikes].filter((part) => part.length > 0);
  return all.length === 0 ? "" : JSON.stringify(all);
}

function isTaped({ lowest, highest, standover }: TapedBike): boolean {
  return [lowest, highest, standover].some((text) => text.trim() !== "");
}

/** Something was measured, and is neither on the device nor in a file. */
export function holdsUnkept(state: PageState): boolean {
  const { on, trouble, inFile } = state.keeping;
  if (on && trouble === null) return false;
  const now = measured(state);
  return now !== "" && now !== inFile;
}

export const noKeeping: KeepingState = { on: false, written: false, trouble: null, inFile: "", said: null };

export function keepingIs(part: Partial<KeepingState>): Change<PageState> {
  return (state) => ({ ...state, keeping: { ...state.keeping, ...part } });
}

/** Nothing is written until somebody says which of two records is to stay. */
export function waitsForWord(trouble: KeepingTrouble | null): boolean {
  return trouble !== null && ["damaged", "newer", "mended", "elsewhere"].includes(trouble);
}
