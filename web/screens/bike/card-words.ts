// What the card of one bike and its rider says, in sentences: for the paper and for a message alike.
import { isGuess } from "../../drawings/shown-window";
import type { Check, CheckState, JudgedBike, JudgedRider } from "../../engine/wire";
import type { Figures } from "../../figures/format-figures";
import { nameWithTag } from "../../parts/tag-number";
import type { Texts } from "../../texts/texts";
import { cautionWords, settingWords } from "../rack/verdict-words";
import { growthSentences } from "./bike-growth";
import { checkWords } from "./check-words";
import { saddleMoves, someMoves } from "./saddle-moves";
import type { SaddleMoves } from "./saddle-moves";

/** More than a year's worth; by then there is a new reading. */
const movesOnCard = 6;

export interface CardWords {
  bike: string;
  /** null: not wanted. */
  rider: string | null;
  madeOn: string;
  verdict: string;
  /** "1 warning"; null: none. */
  stops: string | null;
  /** What the checks say that say stop. */
  warnings: string[];
  /** The way of riding that it was judged for. */
  forWhom: string | null;
  /** Of a leg that nobody measured, that the card is a guess. */
  caveat: string | null;
  /** "Saddle at 49.5 cm", and where that is in the bike's range. */
  setting: { height: string; place: string | null } | null;
  /** What is in the way, until when it fits. */
  sentences: string[];
  moves: SaddleMoves[];
  /** Checks that ask for a look. */
  doubts: string[];
}

export function cardWords(
  texts: Texts,
  figures: Figures,
  judged: JudgedBike,
  judgedRider: JudgedRider | null,
  { rider, today }: { rider: string | null; today: string },
): CardWords {
  const checksThat = (says: CheckState): string[] => stateWords(texts, figures, judged.checks ?? [], says);
  return {
    bike: nameWithTag(judged),
    rider,
    madeOn: texts.card.madeOn({ day: figures.day(today) }),
    verdict: texts.rack.verdicts[judged.verdict],
    stops: judged.stops > 0 ? texts.choosing.stops({ number: judged.stops }) : null,
    warnings: checksThat("stop"),
    forWhom: judgedRider && `${texts.riding.for[judgedRider.stage]}.`,
    caveat: judgedRider !== null && isGuess(judgedRider) ? texts.guess.caveat : null,
    setting: settingWords(texts, figures, judged),
    sentences: [
      cautionWords(texts, figures, judged),
      ...growthSentences(texts, figures, judged, null),
    ].filter((sentence) => sentence !== null && sentence !== texts.growth.fitsAlready) as string[],
    moves: someMoves(saddleMoves(texts, figures, judged, judgedRider), 0, movesOnCard),
    doubts: checksThat("look"),
  };
}

/** What the checks in one state say. */
export function stateWords(texts: Texts, figures: Figures, checks: Check[], says: CheckState): string[] {
  return checks
    .filter(({ state }) => state === says)
    .map((check) => Object.values(checkWords(texts, figures, check)).join(" "));
}

/** The card as lines of a message. */
export function cardText(texts: Texts, card: CardWords): string {
  const {
    bike,
    rider,
    madeOn,
    verdict,
    stops,
    warnings,
    forWhom,
    caveat,
    setting,
    sentences,
    moves,
    doubts,
  } = card;
  const titled = (title: string, lines: readonly string[]): string[] =>
    lines.length === 0 ? [] : ["", `${title}${texts.colon}`.trim(), ...lines.map((line) => `- ${line}`)];
  return [
    rider === null ? bike : `${rider}${texts.colon}${bike}`,
    `${[verdict, stops].filter((words) => words !== null).join(". ")}. ${madeOn}.`,
    ...warnings,
    ...[forWhom, caveat].filter((words) => words !== null),
    ...(setting === null ? [] : [`${[setting.height, setting.place].filter(Boolean).join(texts.colon)}.`]),
    ...sentences,
    ...titled(texts.growth.raises, moves.length === 0 ? [] : [texts.moves.again]),
    ...moves.flatMap(({ once, lines }) => [
      ...(once === null ? [] : [once]),
      ...lines.map((line) => `- ${line}`),
    ]),
    ...titled(texts.card.doubts, doubts),
    ...titled(texts.cautions.title, texts.cautions.all),
  ]
    .join("\n")
    .replaceAll("\u00a0", " ");
}
