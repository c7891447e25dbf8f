// What the engine has to say, worded here by code.
import { usePage } from "../page/page-context";
import type { RefusalNote } from "../engine/refusal";
import { fieldWord, problemFigures } from "../figures/problem-figures";
import type { Figures } from "../figures/format-figures";
import { byCode } from "../texts/texts";
import type { Texts } from "../texts/texts";

type Said = Omit<RefusalNote, "where">;

export function worded(texts: Texts, figures: Figures, said: Said): string {
  const { line, column, row, column_name: name = "" } = said;
  const sentence =
    byCode(texts.problems.wording, said.code, problemFigures(texts, figures, said)) ?? said.code;
  const heading = fieldWord(texts, name);
  // Many a sentence begins with the field.
  if (row !== undefined)
    return texts.problems.inRow({ row, column: sentence.startsWith(heading) ? null : heading, sentence });
  return line === undefined || column === undefined
    ? sentence
    : texts.problems.inFile({ line, column, sentence });
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
