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
