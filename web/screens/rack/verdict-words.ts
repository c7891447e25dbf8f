// A verdict in sentences: where the saddle goes or what is missing, and how long the bike lasts.
import type { JudgedBike } from "../../engine/wire-answers";
import type { Figures } from "../../figures/format-figures";
import type { Texts } from "../../texts/en";

/** A height that would be shown as nothing is nothing. */
const nothing = 0.5;

function place(texts: Texts, figures: Figures, bike: JudgedBike): string | null {
  const { above_lowest_mm: above, below_highest_mm: below } = bike;
  if (above !== null && above < nothing) return texts.verdict.atLowest;
  if (below !== null && below < nothing) return texts.verdict.atHighest;
  return above === null ? null : texts.verdict.aboveLowest(figures.length(above));
}

function room(texts: Texts, figures: Figures, { below_highest_mm: below }: JudgedBike): string {
  if (below === null) return texts.verdict.roomUnknown;
  return below < nothing ? texts.verdict.noRoom : texts.verdict.room(figures.length(below));
}

/** "Saddle at 49.5 cm: its lowest position, 13.5 cm left to raise." */
export function settingSentence(texts: Texts, figures: Figures, bike: JudgedBike): string | null {
  if (bike.saddle_mm === null) return null;
  const details = [place(texts, figures, bike), room(texts, figures, bike)].filter((part) => part !== null);
  return `${texts.verdict.setting(figures.length(bike.saddle_mm))}: ${details.join(", ")}.`;
}

/** How far a bike misses; null where it does not, or nobody knows. */
function missing(texts: Texts, figures: Figures, { verdict, margin_mm: margin }: JudgedBike): string | null {
  if (margin === null || margin >= 0) return null;
  const by = figures.length(Math.abs(margin));
  if (verdict === "too_tall") return texts.verdict.missesBelow(by);
  return verdict === "outgrown" ? texts.verdict.missesAbove(by) : null;
}

export function settingWords(texts: Texts, figures: Figures, bike: JudgedBike): string {
  const toMeasure = bike.to_measure.map((what) => texts.verdict.toMeasure[what] ?? what);
  const sentences = [
    bike.verdict === "close_call" ? texts.verdict.tryIt : null,
    missing(texts, figures, bike),
    bike.verdict === "too_tall" || bike.verdict === "outgrown" ? null : settingSentence(texts, figures, bike),
    bike.verdict === "not_measured" && toMeasure.length > 0 ? texts.verdict.measure(toMeasure) : null,
  ];
  return sentences.filter((sentence) => sentence !== null).join(" ");
}

/** How long it lasts, from when, and what that costs; null where there is nothing to say. */
export function lastingWords(texts: Texts, figures: Figures, bike: JudgedBike): string | null {
  const { fits_from: from, months_of_fit: months, cost_per_month: cost, verdict } = bike;
  if (verdict === "outgrown") return null;
  const parts: string[] = [];
  if (verdict === "too_tall" && from != null) parts.push(texts.verdict.fitsFrom(from, figures.month));
  if (months != null) {
    parts.push(parts.length === 0 ? texts.verdict.lasts(months) : texts.verdict.lastsThen(months));
  }
  if (cost != null) parts.push(texts.verdict.costPerMonth(figures.money(cost, bike.currency)));
  return parts.length === 0 ? null : `${parts.join(", ")}.`;
}
