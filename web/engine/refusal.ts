// What was refused: by the engine, or by the page with a code of its own.
import type { NoteFields, ProblemFigure, SetAside, TableSketch } from "./wire";

/** As the engine's, or a word of the page's own. */
export type SaidFigure = ProblemFigure | { word: string };

export interface RefusalNote extends Omit<NoteFields, "code" | "figures"> {
  code: string;
  figures: Record<string, SaidFigure>;
}

export interface Refusal {
  error: RefusalNote;
  set_aside?: SetAside[];
  table?: TableSketch;
}

export function isRefusal(answer: object): answer is Refusal {
  return "error" in answer;
}

/** What the page refuses by itself, before the engine sees it. */
type OwnCode =
  | "file_is_spreadsheet"
  | "file_not_given"
  | "file_too_large"
  | "inline_rewritten"
  | `address_${
      | "gone"
      | "refused"
      | "server"
      | "slow"
      | "no_signal"
      | "web_page"
      | "too_large"
      | "not_allowed"
      | "policy"
      | "offline"}`;

export function refused(code: OwnCode, figures: Record<string, SaidFigure> = {}): Refusal {
  return { error: { code, where: "", figures } };
}
