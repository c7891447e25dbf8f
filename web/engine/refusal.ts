// What was refused: by the engine, or by the page with a code of its own.
import type { NoteFields, SetAside, TableSketch } from "./wire";

export interface RefusalNote extends Omit<NoteFields, "code"> {
  code: string;
}

export interface Refusal {
  error: RefusalNote;
  set_aside?: SetAside[];
  table?: TableSketch;
}

export function isRefusal(answer: object): answer is Refusal {
  return "error" in answer;
}
