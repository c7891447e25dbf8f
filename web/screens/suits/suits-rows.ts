// What the chart, the tags and the wall strip are made of: the bikes of one way of riding by wheel size, and their words.
import type { Ends, SharedLegs, Stage, SuitedLegs, SuitsAnswer, SuitsBike } from "../../engine/wire";
import type { Figures } from "../../figures/format-figures";
import type { Texts } from "../../texts/texts";

export const everyStage: Stage[] = ["gliding", "side_wheels", "starting", "riding"];

export interface SuitsRow {
  bike: SuitsBike;
  legs: SuitedLegs;
}

export interface SuitsGroup {
  wheel: number | null;
  rows: SuitsRow[];
}

/** Only bikes that are known to fit somebody who rides that way. */
export function rowsOf({ bikes }: SuitsAnswer, stage: Stage): SuitsRow[] {
  return bikes.flatMap((bike) => {
    const legs = bike.stages[stage];
    return legs === undefined ? [] : [{ bike, legs }];
  });
}

export function groupsOf(rows: SuitsRow[]): SuitsGroup[] {
  const groups: SuitsGroup[] = [];
  for (const row of rows) {
    const wheel = row.bike.wheel_nominal_in;
    const last = groups.at(-1);
    if (last?.wheel === wheel) last.rows.push(row);
    else groups.push({ wheel, rows: [row] });
  }
  return groups;
}

/** From and to as they are drawn: where nobody measured an end, as far as is sure. */
export function drawnEnds({ inseam_mm: [from, to], surely_mm: surely }: SuitedLegs): [number, number] {
  const low = from ?? surely?.[0] ?? to ?? 0;
  return [low, to ?? surely?.[1] ?? low];
}

export function openEnd({ inseam_mm: [from, to] }: SuitedLegs): "open-below" | "open-above" | "" {
  return from === null ? "open-below" : to === null ? "open-above" : "";
}

export function legWords(texts: Texts, figures: Figures, [from, to]: Ends): string {
  const low = from === null ? null : to === null ? figures.length(from) : figures.bareLength(from);
  return texts.suits.ends({ low, high: to === null ? null : figures.length(to) });
}

/** "age 4 to 6, roughly"; null where nothing can be said. */
export function ageWords(texts: Texts, ends: Ends | null): string | null {
  if (ends === null) return null;
  const [low, high] = ends;
  return texts.suits.age({ years: low === high ? String(low) : texts.suits.ends({ low, high }) });
}

/** Without the stretches that fewer bikes fit. */
function sharedWords(texts: Texts, figures: Figures, { inseam_mm: [from, to], gaps_mm: gaps }: SharedLegs) {
  const starts = [from, ...gaps.map(([, end]) => end)];
  const ends = [...gaps.map(([start]) => start), to];
  return starts.map((start, place) => legWords(texts, figures, [start, ends[place] ?? to]));
}

/** What a wheel size takes in, in words. */
export function wheelWords(
  texts: Texts,
  figures: Figures,
  { wheels }: SuitsAnswer,
  stage: Stage,
  wheel: number | null,
): string[] {
  const told = wheels.find(({ nominal_in: nominal }) => nominal === wheel)?.stages[stage];
  // Of a single bike all is said in its row.
  if (told === undefined || told.bikes < 2) return [];
  const [any, half] = [told.any, told.half].map((shared) => shared && sharedWords(texts, figures, shared));
  return [
    // Where most are alike, both are the same.
    any && any.join() !== half?.join() && texts.suits.any({ legs: any }),
    half && texts.suits.half({ legs: half }),
  ].filter((words) => typeof words === "string");
}

export function wheelName(texts: Texts, figures: Figures, wheel: number | null): string {
  return wheel === null ? texts.suits.noWheel : texts.rack.wheel({ nominal: figures.number(wheel) });
}

/** The mark on the bike and its name, where these are two. */
export function bikeWords({ id, name }: SuitsBike): string {
  return id === name ? name : `${id} ${name}`;
}
