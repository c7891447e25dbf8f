// The figures of a check in the reader's form. On the wire each bears its unit at the end of its name.
import type { Check } from "../engine/wire";
import type { Figures } from "./format-figures";

/** By name without unit: `value`, `limit`, `limit_low`, `limit_high`, and whatever else the check states. */
export type CheckFigures = Partial<Record<string, string>>;

type Form = (figures: Figures, value: number) => string;

const forms: Record<string, Form> = {
  mm: (figures, value) => figures.length(value),
  metres: (figures, value) => figures.metres(value),
  kg: (figures, value) => figures.mass(value),
  ratio: (figures, value) => figures.share(value),
  degrees: (figures, value) => figures.angle(value),
  km_h: (figures, value) => figures.speed(value),
};

export function checkFigures(figures: Figures, check: Check): CheckFigures {
  const named = Object.entries(check).filter(([name]) => /^(value|limit)_/.test(name)) as [string, number][];
  const formed: CheckFigures = {};
  for (const [name, value] of [...named, ...Object.entries(check.figures)]) {
    const unit = Object.keys(forms).find((ending) => name.endsWith(`_${ending}`));
    const form = unit === undefined ? undefined : forms[unit];
    if (unit !== undefined && form !== undefined)
      formed[name.slice(0, -unit.length - 1)] = form(figures, value);
  }
  return formed;
}
