// What the engine has to say: worded here by code where the page has words, in its own sentence where not.
import { usePage } from "../page/page-context";
import type { RefusalNote } from "../engine/refusal";
import { problemFigures } from "../figures/problem-figures";
import type { Figures } from "../figures/format-figures";
import { byCode, upperFirst } from "../texts/texts";
import type { Texts } from "../texts/texts";

type Said = Omit<RefusalNote, "where">;

export function worded(texts: Texts, figures: Figures, said: Said): string {
  const { line, column, row, column_name: name = "" } = said;
  const sentence = byCode(texts.problems.wording, said.code, problemFigures(texts, figures, said));
  if (sentence === undefined) return unworded(texts, said.problem, said.expected);
  if (row !== undefined) return texts.problems.inRow({ row, column: name === "" ? null : name, sentence });
  return line === undefined || column === undefined
    ? sentence
    : texts.problems.inFile({ line, column, sentence });
}

/** The engine's own sentence, made to stand alone. */
function unworded(texts: Texts, problem: string, expected = ""): string {
  return texts.problems.unworded({
    problem: upperFirst(problem),
    expected: expected === "" ? null : expected,
  });
}

export function Notes({ notes }: { notes: Said[] }) {
  const { texts, figures } = usePage();
  if (notes.length === 0) return null;
  return (
    <ul class="notes">
      {notes.map((note, place) => (
        <li key={place}>{worded(texts, figures, note)}</li>
      ))}
    </ul>
  );
}
