// What the engine has to say: worded here by code where the page has words, in its own sentence where not.
import { usePage } from "../page/page-context";
import type { Note, SetAside } from "../engine/wire-answers";
import type { Texts } from "../texts/en";

type Said = Pick<Note | SetAside, "code" | "problem" | "expected" | "figures" | "line" | "column">;

export function worded(texts: Texts, said: Said): string {
  const wording = texts.problems.wording[said.code];
  if (wording === undefined) return texts.problems.fallback(said.problem, said.expected);
  const sentence = wording(said.figures);
  return said.line === undefined || said.column === undefined
    ? sentence
    : texts.problems.inFile(said.line, said.column, sentence);
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
