// What stands on the card of one bike and its rider, in sentences: for the paper and for a message alike.
import type { JudgedBike } from "../../engine/wire-answers";
import type { Figures } from "../../figures/format-figures";
import type { Texts } from "../../texts/texts";
import { cautionWords, settingWords } from "../rack/verdict-words";
import { growthSentences } from "./bike-growth";
import { checkWords } from "./check-words";

/** More than a year's worth; by then there is a new reading. */
const raisesOnCard = 6;

export interface CardWords {
  bike: string;
  /** null: not wanted. */
  rider: string | null;
  madeOn: string;
  verdict: string;
  /** "Saddle at 49.5 cm", and how it lies in the bike's range. */
  setting: { height: string; place: string } | null;
  /** What is in the way, until when it fits. */
  sentences: string[];
  raises: string[];
  /** Checks that ask for a look. */
  doubts: string[];
}

export function cardWords(
  texts: Texts,
  figures: Figures,
  judged: JudgedBike,
  { rider, today }: { rider: string | null; today: string },
): CardWords {
  const doubtful = (judged.checks ?? []).filter(({ state }) => state === "stop" || state === "look");
  return {
    bike: judged.name,
    rider,
    madeOn: texts.card.madeOn({ day: figures.day(today) }),
    verdict: texts.rack.verdicts[judged.verdict],
    setting: settingWords(texts, figures, judged),
    sentences: [
      cautionWords(texts, figures, judged),
      ...growthSentences(texts, figures, judged, null),
    ].filter((sentence) => sentence !== null && sentence !== texts.growth.fitsAlready) as string[],
    raises: (judged.raise ?? [])
      .slice(0, raisesOnCard)
      .map(({ on, saddle_mm }) =>
        texts.growth.raiseOn({ day: figures.day(on), height: figures.length(saddle_mm) }),
      ),
    doubts: doubtful.map((check) => Object.values(checkWords(texts, figures, check)).join(" ")),
  };
}

/** The card as lines of a message. */
export function cardText(texts: Texts, card: CardWords): string {
  const { bike, rider, madeOn, verdict, setting, sentences, raises, doubts } = card;
  const titled = (title: string, lines: readonly string[]): string[] =>
    lines.length === 0 ? [] : ["", `${title}${texts.colon}`.trim(), ...lines.map((line) => `- ${line}`)];
  return [
    rider === null ? bike : `${rider}${texts.colon}${bike}`,
    `${verdict}. ${madeOn}.`,
    ...(setting === null ? [] : [`${setting.height}${texts.colon}${setting.place}.`]),
    ...sentences,
    ...titled(texts.growth.raises, raises),
    ...titled(texts.card.doubts, doubts),
    ...titled(texts.cautions.title, texts.cautions.all),
  ]
    .join("\n")
    .replaceAll("\u00a0", " ");
}
