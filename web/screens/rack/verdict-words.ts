// A verdict in sentences: where the saddle goes or what is missing, and how long the bike lasts.
import type { JudgedBike, LikelyHeights, Pause } from "../../engine/wire";
import type { Figures } from "../../figures/format-figures";
import { briefUse, lengthOfUse } from "../../texts/durations";
import { byCode } from "../../texts/texts";
import type { Texts } from "../../texts/texts";

/** A height that would be shown as nothing is nothing. */
const nothing = 0.5;

function place(texts: Texts, figures: Figures, bike: JudgedBike): string | null {
  const { above_lowest_mm: above, below_highest_mm: below } = bike;
  if (above !== null && above < nothing) return texts.verdict.atLowest;
  if (below !== null && below < nothing) return texts.verdict.atHighest;
  return above === null ? null : texts.verdict.aboveLowest({ height: figures.length(above) });
}

function room(texts: Texts, figures: Figures, { below_highest_mm: below }: JudgedBike): string {
  if (below === null) return texts.verdict.roomUnknown;
  return below < nothing ? texts.verdict.noRoom : texts.verdict.room({ height: figures.length(below) });
}

/**
 * "Saddle at 49.5 cm", and "its lowest position, 13.5 cm left to raise"; of a guessed leg a range, and nothing beside it. null
 * where it cannot be set for this rider.
 */
export function settingWords(
  texts: Texts,
  figures: Figures,
  bike: JudgedBike,
): { height: string; place: string | null } | null {
  const { saddle_mm: saddle, saddle_likely_mm: likely, verdict } = bike;
  if (saddle === null || verdict === "too_tall" || verdict === "outgrown") return null;
  if (likely !== undefined)
    return { height: texts.guess.setting({ range: rangeWords(texts, figures, likely) }), place: null };
  const details = [place(texts, figures, bike), room(texts, figures, bike)].filter((part) => part !== null);
  return { height: texts.verdict.setting({ height: figures.length(saddle) }), place: details.join(", ") };
}

/** "47 to 55 cm". */
export function rangeWords(texts: Texts, figures: Figures, { low, high }: LikelyHeights): string {
  return texts.window.range({ low: figures.bareLength(low), high: figures.length(high) });
}

/** How far a bike misses; null where it does not, or nobody knows. */
function missing(texts: Texts, figures: Figures, { verdict, margin_mm: margin }: JudgedBike): string | null {
  if (margin === null || margin >= 0) return null;
  const by = figures.length(Math.abs(margin));
  if (verdict === "too_tall") return texts.verdict.missesBelow({ by });
  return verdict === "outgrown" ? texts.verdict.missesAbove({ by }) : null;
}

/** What is to be said before the setting; null where nothing is. */
export function cautionWords(texts: Texts, figures: Figures, bike: JudgedBike): string | null {
  const toMeasure = bike.to_measure.map((what) => byCode(texts.verdict.toMeasure, what) ?? what);
  const sentences = [
    bike.suits_stage ? null : texts.verdict.otherKind[bike.kind],
    bike.verdict === "close_call" ? texts.verdict.tryIt : null,
    missing(texts, figures, bike),
    bike.verdict === "not_measured" && toMeasure.length > 0
      ? texts.verdict.measure({ what: toMeasure })
      : null,
  ];
  const said = sentences.filter((sentence) => sentence !== null);
  return said.length === 0 ? null : said.join(" ");
}

/** How long it lasts, from when, and what that costs; null where there is nothing to say. */
export function lastingWords(
  texts: Texts,
  figures: Figures,
  bike: JudgedBike,
  told = { cost: true },
): string | null {
  const { months_of_fit: months, cost_per_month: cost, fits_from: from, pauses, verdict } = bike;
  if (verdict === "outgrown") return null;
  const parts: string[] = [];
  if (verdict === "too_tall" && from !== null)
    parts.push(texts.verdict.fitsFrom({ month: from.p50 && figures.month(from.p50) }));
  const [pause] = pauses;
  if (pause !== undefined) {
    const until = figures.month(pause.from);
    parts.push(parts.length === 0 ? texts.pauses.until({ until }) : texts.pauses.thenUntil({ until }));
  } else if (months !== null) {
    const time = lengthOfUse(texts.durations, months);
    parts.push(parts.length === 0 ? texts.verdict.lasts({ time }) : texts.verdict.lastsThen({ time }));
  }
  const lasting = parts.length === 0 ? null : `${parts.join(", ")}.`;
  const costing =
    cost === null || !told.cost
      ? null
      : texts.verdict.costPerMonth({ amount: figures.money(cost, bike.currency) });
  const sentences = [lasting, ...pauseSentences(texts, figures, bike), costing].filter(
    (sentence) => sentence !== null,
  );
  return sentences.length === 0 ? null : sentences.join(" ");
}

/** Where the saddle is set, as a figure; of a guessed leg the range. null where it cannot be set for this rider. */
export function settingFigure(
  figures: Figures,
  { saddle_mm: saddle, saddle_likely_mm: likely, verdict }: JudgedBike,
): string | null {
  if (saddle === null || verdict === "too_tall" || verdict === "outgrown") return null;
  return likely === undefined
    ? figures.length(saddle)
    : `${figures.bareLength(likely.low)}–${figures.length(likely.high)}`;
}

/** The setting for a line, beside the mark that a guess is one. */
export function briefSetting(texts: Texts, figures: Figures, bike: JudgedBike): string | null {
  const height = settingFigure(figures, bike);
  return height === null ? null : texts.verdict.setting({ height });
}

/** What a line has room for: what is still to be measured, of which kind it is, and how long or from when it fits. */
export function briefWords(texts: Texts, figures: Figures, bike: JudgedBike): string[] {
  const { fits_from: from, months_of_fit: months, pauses, verdict } = bike;
  const [pause] = pauses;
  const lasting = (): string | null => {
    if (verdict === "outgrown") return null;
    if (verdict === "too_tall" && from !== null)
      return texts.verdict.fitsFrom({ month: from.p50 && figures.shortMonth(from.p50) });
    if (pause !== undefined) return texts.pauses.until({ until: figures.shortMonth(pause.from) });
    return months && texts.rack.fitsFor({ time: briefUse(texts.durations, figures, months) });
  };
  return [
    bike.suits_stage ? null : texts.verdict.otherKind[bike.kind],
    ...(verdict === "not_measured"
      ? bike.to_measure.map((what) => byCode(texts.checks.measure, what) ?? what)
      : []),
    lasting(),
  ].filter((words) => words !== null);
}

/** Whether the bike fits again after a pause, which may also end where the bike is outgrown for good. */
export function fitsAfter(pause: Pause, { outgrown }: Pick<JudgedBike, "outgrown">): boolean {
  const end = outgrown?.p50 ?? null;
  return end === null || pause.to < end;
}

/** Every pause in a sentence, and that the bike fits again after it; empty where there is none. */
export function pauseSentences(
  texts: Texts,
  figures: Figures,
  { pauses, outgrown }: Pick<JudgedBike, "pauses" | "outgrown">,
): string[] {
  return pauses.flatMap((pause, place) => {
    const until = pauses[place + 1]?.from ?? outgrown?.p50 ?? null;
    const again = texts.pauses.again({ until: until && figures.month(until) });
    return [pauseWords(texts, figures, pause), ...(fitsAfter(pause, { outgrown }) ? [again] : [])];
  });
}

/** "Too high from May to November 2027, when …". */
export function pauseWords(texts: Texts, figures: Figures, pause: Pause): string {
  return texts.pauses.during[pause.code]({ time: pauseTime(texts, figures, pause) });
}

/** "from May to November 2027". */
function pauseTime(texts: Texts, figures: Figures, { from, to }: Pause): string {
  const [first, last] = [figures.month(from), figures.month(to)];
  if (first === last) return texts.pauses.within({ month: last });
  const isOneYear = from.slice(0, 4) === to.slice(0, 4);
  return texts.pauses.between({
    from: isOneYear ? figures.monthName(Number(from.slice(5, 7))) : first,
    to: last,
  });
}

/** What it costs a month and how far that may differ; or why there is no figure. */
export function costWords(texts: Texts, figures: Figures, bike: JudgedBike): string[] {
  const { cost_per_month: cost, cost_per_month_range: range, cost_gap: gap, currency, verdict } = bike;
  if (verdict === "outgrown") return [];
  const money = (amount: number): string => figures.money(amount, currency);
  if (cost === null) {
    const why = gap === undefined ? undefined : byCode(texts.bike.costGaps, gap);
    return why === undefined ? [] : [why];
  }
  return [
    texts.verdict.costPerMonth({ amount: money(cost) }),
    range === undefined
      ? null
      : texts.verdict.costRange({
          low: money(range.low),
          high: range.high === null ? null : money(range.high),
        }),
  ].filter((sentence) => sentence !== null);
}
