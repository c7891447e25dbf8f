// What the page knows of its own keeping, as far as a reader is told about it.
import type { PageState } from "../state/page-state";
import type { Change } from "../state/store";
import type { FormFault } from "./family-form";

/**
 * Why nothing is kept although that is wanted: no place for it, refused, full; or a record that must not be written over
 * unasked: damaged, of a newer page, of another page that wrote since (`elsewhere`), or taken away by one (`gone`).
 */
export type KeepingTrouble =
  "missing" | "refused" | "full" | "elsewhere" | "gone" | Exclude<FormFault["code"], "foreign">;

export interface KeepingState {
  /** Off until somebody asks for it. */
  on: boolean;
  /** The device holds something of this page. */
  written: boolean;
  trouble: KeepingTrouble | null;
  /** What came of the last file, or of wiping. */
  said:
    | { what: "saved" | "opened"; file: string }
    | { what: "fault"; file: string; fault: FormFault }
    | { what: "wiped" | "undone" }
    | null;
}

export const noKeeping: KeepingState = { on: false, written: false, trouble: null, said: null };

export function keepingIs(part: Partial<KeepingState>): Change<PageState> {
  return (state) => ({ ...state, keeping: { ...state.keeping, ...part } });
}

/** Nothing is written until somebody says which of two records is to stay. */
export function waitsForWord(trouble: KeepingTrouble | null): boolean {
  return trouble === "damaged" || trouble === "newer" || trouble === "elsewhere";
}
