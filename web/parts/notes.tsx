// What the engine has to say: worded here by code where the page has words, in its own sentence where not.
import { usePage } from "../page/page-context";
import type { Note, SetAside } from "../engine/wire-answers";
import { byCode, upperFirst } from "../texts/texts";
import type { Texts } from "../texts/texts";

type Said = Pick<Note | SetAside, "code" | "problem" | "expected" | "figures" | "line" | "column">;

export function worded(texts: Texts, said: Said): string {
  const { line, column } = said;
  const sentence = byCode(texts.problems.wording, said.code, said.figures);
  if (sentence === undefined) return unworded(texts, said.problem, said.expected);
  return line === undefined || column === undefined
    ? sentence
    : texts.problems.inFile({ line, column, sentence });
}

/** The engine's own sentence, made to stand alone. */
export function unworded(texts: Texts, problem: string, expected = ""): string {
  return texts.problems.unworded({
    problem: upperFirst(problem),
    expected: expected === "" ? null : expected,
  });
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
