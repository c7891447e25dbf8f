// Lengths of time as a parent would say them: "about a year and a half, maybe one to two years".
import type { MonthsOfFit } from "../engine/wire-answers";

const small = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
const half = " and a half";

/** Beyond this the forecast stops. */
const horizonMonths = 95;

interface Spoken {
  count: string;
  unit: "months" | "years";
  single: string;
}

function spoken(months: number): Spoken {
  const wholeMonths = Math.round(months);
  if (wholeMonths <= 10) {
    const count = small[wholeMonths] ?? "";
    return { count, unit: "months", single: wholeMonths === 1 ? "a month" : `${count} months` };
  }
  const halfYears = Math.round(months / 6);
  const years = small[Math.floor(halfYears / 2)] ?? String(Math.floor(halfYears / 2));
  const count = halfYears % 2 === 0 ? years : years + half;
  if (halfYears === 2) return { count, unit: "years", single: "a year" };
  if (halfYears === 3) return { count, unit: "years", single: "a year and a half" };
  return { count, unit: "years", single: `${count} years` };
}

export function about(months: number): string {
  if (months < 0.75) return "a few weeks at most";
  if (months >= horizonMonths) return "eight years or more";
  return `about ${spoken(months).single}`;
}

function between(low: number, high: number): string {
  const from = spoken(low);
  if (high >= horizonMonths) return `${from.single} to eight years or more`;
  const to = spoken(high);
  if (low < 0.75) return `up to ${to.single}`;
  return from.unit === to.unit ? `${from.count} to ${to.count} ${to.unit}` : `${from.single} to ${to.single}`;
}

/** The middle of the forecast, and the range around it where that says more. */
export function lengthOfUse({ p10, p50, p90 }: MonthsOfFit): string {
  const middle = about(p50);
  const same = spoken(p10).single === spoken(p90).single;
  return same || p90 < 0.75 ? middle : `${middle}, maybe ${between(p10, p90)}`;
}
