// Lengths of time as a parent would say them: "about a year and a half, maybe one to two years".
import type { MonthsOfFit } from "../engine/wire";
import type { Figures } from "../figures/format-figures";
import type { Texts } from "./texts";

type Durations = Texts["durations"];

/** Beyond this the forecast stops. */
const horizonMonths = 95;

interface Spoken {
  /** "two and a half". */
  count: string;
  unit: "months" | "years";
  /** "two and a half years". */
  whole: string;
}

/** Up to ten months by the month, from there by half years, the first of which is a year. */
function spoken(words: Durations, months: number): Spoken {
  const wholeMonths = Math.max(1, Math.round(months));
  const unit = wholeMonths <= 10 ? "months" : "years";
  const place = unit === "months" ? wholeMonths - 1 : Math.round(months / 6) - 2;
  return { count: words.counts[unit][place] ?? "", unit, whole: words[unit][place] ?? "" };
}

export function about(words: Durations, months: number): string {
  if (months < 0.75) return words.fewWeeks;
  return months >= horizonMonths ? words.longest : words.about({ time: spoken(words, months).whole });
}

function between(words: Durations, low: number, high: number): string {
  const from = spoken(words, low);
  if (high >= horizonMonths) return words.range({ low: from.whole, high: words.longest });
  const to = spoken(words, high);
  if (low < 0.75) return words.upTo({ time: to.whole });
  return from.unit === to.unit
    ? words.rangeOf[from.unit]({ low: from.count, high: to.count })
    : words.range({ low: from.whole, high: to.whole });
}

/** The middle of the forecast, and the range around it where that says more. */
export function lengthOfUse(words: Durations, { p10, p50, p90 }: MonthsOfFit): string {
  const middle = about(words, p50);
  const same = spoken(words, p10).whole === spoken(words, p90).whole;
  return same || p90 < 0.75 ? middle : words.maybe({ middle, range: between(words, p10, p90) });
}

const halfYears = (months: number): number => Math.max(0.5, Math.round(months / 6) / 2);

/** "2–3 years", "4–7 months": the range of the forecast in figures, where there is no room for words. */
export function briefUse(words: Durations, figures: Figures, { p10, p90 }: MonthsOfFit): string {
  if (p90 < 0.75) return words.fewWeeks;
  if (p10 >= horizonMonths) return words.longest;
  const inYears = Math.round(p90) > 10;
  const [low, high] = inYears
    ? [halfYears(p10), halfYears(p90)]
    : [Math.max(1, Math.round(p10)), Math.max(1, Math.round(p90))];
  const end = inYears ? figures.years(high) : figures.months(high);
  return low === high ? end : `${figures.number(low)}–${end}`;
}
