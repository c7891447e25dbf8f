// Lengths as people read them off a tape: centimetres to a tenth, inches to an eighth.
import type { TypedUnit } from "../engine/narrowed";

const millimetresIn = { cm: 10, in: 25.4 } as const;
const eighths = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];

/** The figure alone, without its unit: "49.5", "19½". `plain` writes numbers to a tenth. */
export function lengthFigure(mm: number, unit: TypedUnit, plain: (value: number) => string): string {
  const value = mm / millimetresIn[unit];
  return unit === "in" ? inchFigure(value, plain) : plain(value);
}

function inchFigure(inches: number, plain: (value: number) => string): string {
  const parts = Math.round(Math.abs(inches) * 8);
  const whole = Math.floor(parts / 8);
  const fraction = eighths[parts % 8] ?? "";
  const sign = inches < 0 && parts > 0 ? "−" : "";
  return sign + (whole === 0 && fraction !== "" ? "" : plain(whole)) + fraction;
}

/** A mark on a tape, for drawings: every `step` a line, every `numbered` one with its figure. */
export interface TapeMark {
  mm: number;
  rank: "short" | "middle" | "long";
  figure: string | null;
}

/** Which lines a tape bears in each unit, counted in its smallest division. */
const divisions = {
  cm: { mm: 10, middle: 5, long: 10, figureEvery: [10, 20], perUnit: 1 },
  in: { mm: 12.7, middle: 2, long: 4, figureEvery: [4, 8, 16], perUnit: 2 },
} as const;

/** The marks between two heights, with at most `figures` figures. */
export function tapeMarks(low: number, high: number, unit: TypedUnit, figures: number): TapeMark[] {
  const { mm, middle, long, figureEvery, perUnit } = divisions[unit];
  const span = (high - low) / mm;
  const every =
    figureEvery.find((step) => span / step <= figures) ?? figureEvery[figureEvery.length - 1] ?? 1;
  const marks: TapeMark[] = [];
  for (let count = Math.ceil(low / mm); count * mm <= high; count++) {
    const rank = count % long === 0 ? "long" : count % middle === 0 ? "middle" : "short";
    marks.push({ mm: count * mm, rank, figure: count % every === 0 ? String(count / perUnit) : null });
  }
  return marks;
}
