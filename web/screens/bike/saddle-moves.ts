// When the saddle of one bike has to be moved, in words: by months, and from a change in how the child rides on under what
// has to be true first. For the bike's page, its card and a message alike.
import type { JudgedBike, JudgedRider, Raise } from "../../engine/wire";
import { isGuess } from "../../drawings/shown-window";
import type { Figures } from "../../figures/format-figures";
import { byCode } from "../../texts/texts";
import type { Texts } from "../../texts/texts";
import { upperFirst } from "../../texts/upper-first";

/** Steps under one condition. */
export interface SaddleMoves {
  /** "Once the training wheels are off …"; null: as the child rides today. */
  once: string | null;
  lines: string[];
}

/** Of a guessed leg there are none: it is measured first. */
export function saddleMoves(
  texts: Texts,
  figures: Figures,
  { raise = [] }: Pick<JudgedBike, "raise">,
  rider: JudgedRider | null,
): SaddleMoves[] {
  if (rider !== null && isGuess(rider)) return [];
  const groups: SaddleMoves[] = [];
  for (const step of raise) {
    const once = onceWords(texts, figures, step);
    const last = groups.at(-1);
    const line = lineOf(texts, figures, step);
    if (last === undefined || once !== null) groups.push({ once, lines: [line] });
    else last.lines.push(line);
  }
  return groups;
}

export function countMoves(moves: SaddleMoves[]): number {
  return moves.reduce((sum, { lines }) => sum + lines.length, 0);
}

/** Steps from one place to before another, each still under its condition. */
export function someMoves(moves: SaddleMoves[], from: number, end = Infinity): SaddleMoves[] {
  let before = 0;
  return moves.flatMap(({ once, lines }) => {
    const some = lines.filter((_, place) => before + place >= from && before + place < end);
    before += lines.length;
    return some.length === 0 ? [] : [{ once, lines: some }];
  });
}

function onceWords(texts: Texts, figures: Figures, { on, stage }: Raise): string | null {
  const condition = stage === undefined ? undefined : byCode(texts.moves.once, stage);
  return condition === undefined
    ? null
    : upperFirst(texts.moves.taken({ condition, month: figures.month(on) }));
}

/** By the month: no child grows to the day. */
function lineOf(texts: Texts, figures: Figures, { on, saddle_mm, stage }: Raise): string {
  const height = figures.length(saddle_mm);
  return stage === undefined
    ? texts.moves.about({ month: figures.month(on), height })
    : texts.moves.then({ height });
}
