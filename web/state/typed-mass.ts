// Weights as they are typed. A bare number counts in kilograms; one that was typed beside inches bears its unit: "40 lb". So it
// stays the same weight when the reader changes the unit of lengths.
import type { TypedUnit } from "../engine/narrowed";

export type MassUnit = "kg" | "lb";

/** The unit of weights that goes with a unit of lengths. */
export function massUnitBeside(unit: TypedUnit): MassUnit {
  return unit === "in" ? "lb" : "kg";
}

const bareNumber = /^\d+([.,]\d+)?$/;

function partsOf(text: string): { number: string; unit: MassUnit } {
  const [, number = text, unit = "kg"] = /^(.*?)\s*(kg|lb)?$/is.exec(text.trim()) ?? [];
  return { number, unit: unit.toLowerCase() as MassUnit };
}

/** What a field in `unit` shows of a text that is kept. */
export function massShown(text: string, unit: MassUnit): string {
  const parts = partsOf(text);
  if (text.trim() === "" || !bareNumber.test(parts.number)) return text;
  return parts.unit === unit ? parts.number : `${parts.number} ${parts.unit}`;
}

/** What is kept of a text that was typed into a field in `unit`. */
export function massKept(typed: string, unit: MassUnit): string {
  return unit === "lb" && bareNumber.test(typed.trim()) ? `${typed.trim()} lb` : typed;
}

/** For the engine: kilograms as a number, other weights as they were typed; null for what is no weight. */
export function massSent(text: string): number | string | null {
  const { number, unit } = partsOf(text);
  if (!bareNumber.test(number)) return null;
  return unit === "kg" ? Number(number.replace(",", ".")) : `${number} ${unit}`;
}
