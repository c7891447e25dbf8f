// What the engine has to say: worded here by code where the page has words, in its own sentence where not.
import { usePage } from "../page/page-context";
import type { Note, SetAside } from "../engine/wire-answers";
import type { Texts } from "../texts/en";

type Said = Pick<Note | SetAside, "code" | "problem" | "expected" | "figures">;

export function worded(texts: Texts, { code, problem, expected, figures }: Said): string {
  const wording = texts.problems.wording[code];
  return wording === undefined ? texts.problems.fallback(problem, expected) : wording(figures);
}

export function Notes({ notes }: { notes: Said[] }) {
  const { texts } = usePage();
  if (notes.length === 0) return null;
  return (
    <ul class="notes">
      {notes.map((note, place) => (
        <li key={place}>{worded(texts, note)}</li>
      ))}
    </ul>
  );
}
