// The figures of a problem in the reader's form. On the wire they are short English texts: "49.5 cm", "2026-10-03".
import { byCode } from "../texts/texts";
import type { Texts } from "../texts/texts";
import type { Figure, GivenFigures } from "../texts/templates";
import type { Figures } from "./format-figures";

const millimetresIn = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 } as const;
type LengthUnit = keyof typeof millimetresIn;

/** Figures of the engine's own. All else is shown as somebody typed it, or as it is in a file. */
const measured = new Set([
  ...["inseam", "before", "spread", "difference", "corrected", "stature", "on", "before_on", "date", "today"],
  ...["low", "high", "lowest", "highest", "span", "distance", "wheel", "limit", "count", "length", "size"],
]);
const measuredInSlips = new Set(["value", "meant"]);

/** Problems with a list are told in the unit of the list; those with a rider in the unit that the reader chose. */
const toldAsWritten = /^(bike|file|slip)_/;

export function problemFigures(
  texts: Texts,
  figures: Figures,
  { code, figures: said }: { code: string; figures: Readonly<Record<string, string>> },
): GivenFigures {
  const inForm = ([name, text]: [string, string]): [string, Figure | null] => {
    if (name === "slip") return [name, byCode(texts.problems.slips, said.slip_code ?? "") ?? text];
    if (name === "field") return [name, byCode(texts.desk.fields, text) ?? text];
    if (name === "known") return [name, knownWords(texts, text)];
    if (measured.has(name) || (code.startsWith("slip_") && measuredInSlips.has(name)))
      return [name, figureWords(texts, figures, text, toldAsWritten.test(code))];
    return [name, byCode(texts.problems.fragments, text) ?? text];
  };
  return Object.fromEntries(Object.entries(said).map(inForm));
}

/** "one of pedal, balance" and "perhaps "crank"" without the words around the names; null where nothing is known. */
function knownWords(texts: Texts, text: string): string | null {
  if (text === "") return null;
  return byCode(texts.problems.fragments, text) ?? text.replace(/^one of |^perhaps "(.*)"$/, "$1");
}

function figureWords(texts: Texts, figures: Figures, text: string, asWritten: boolean): Figure {
  const [, number, unit = ""] = /^(-?\d+(?:\.\d+)?)(?: (mm|cm|m|in|ft|kg|degrees))?$/.exec(text) ?? [];
  if (number !== undefined) return numberWords(texts, figures, Number(number), unit, asWritten);
  if (/^\d{4}-\d\d-\d\d$/.test(text)) return figures.day(text);
  return text;
}

function numberWords(
  texts: Texts,
  figures: Figures,
  value: number,
  unit: string,
  asWritten: boolean,
): Figure {
  if (unit === "") return value;
  if (unit === "kg") return figures.mass(value);
  if (unit === "degrees") return figures.angle(value);
  if (!asWritten) return figures.length(value * millimetresIn[unit as LengthUnit]);
  return `${figures.exact(value)}\u00a0${byCode(texts.units, unit) ?? unit}`;
}
