// The figures of a problem in the reader's form. They come typed: a quote as a text, a count as a number, the rest as objects.
import type { SaidFigure } from "../engine/refusal";
import { byCode } from "../texts/texts";
import type { Texts } from "../texts/texts";
import type { Figure, GivenFigures } from "../texts/templates";
import type { Figures } from "./format-figures";

const millimetresIn = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 } as const;

/** Problems with a list are told in the unit of the list; those with a rider in the unit that the reader chose. */
const toldAsWritten = /^(bike|file|slip)_/;

export function problemFigures(
  texts: Texts,
  figures: Figures,
  { code, figures: said }: { code: string; figures: Readonly<Record<string, SaidFigure>> },
): GivenFigures {
  const asWritten = toldAsWritten.test(code);
  return Object.fromEntries(
    Object.entries(said).map(([name, figure]) => [
      name,
      name === "field" && typeof figure === "string"
        ? fieldWord(texts, figure)
        : inForm(texts, figures, figure, asWritten),
    ]),
  );
}

/** The field as the page calls it; a heading of a table as it is. */
export const fieldWord = (texts: Texts, name: string): string => byCode(texts.desk.fields, name) ?? name;

/** null: nothing that can be said. */
function inForm(texts: Texts, figures: Figures, figure: SaidFigure, asWritten: boolean): Figure | null {
  if (typeof figure !== "object" || figure === null) return figure;
  if ("word" in figure) return byCode(texts.problems.words, figure.word) ?? null;
  if ("date" in figure) return figures.day(figure.date);
  if ("names" in figure) return figure.names.join(", ");
  if ("problem" in figure) return null;
  const { unit } = figure;
  const value = "text" in figure ? Number(figure.text) : figure.value;
  if (value !== null && !Number.isNaN(value)) {
    if (unit === "kg") return figures.mass(value);
    if (unit === "degrees") return figures.angle(value);
    if (!asWritten && unit in millimetresIn)
      return figures.length(value * millimetresIn[unit as keyof typeof millimetresIn]);
  }
  const number =
    "text" in figure && Number.isNaN(value) ? figure.text : value === null ? "?" : figures.exact(value);
  return `${number}\u00a0${byCode(texts.units, unit) ?? ""}`.trim();
}
