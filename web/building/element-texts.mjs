// The element's texts in two parts: those of the first screens, and those that come later with the screens that say them.
import { ownModule } from "./scripts.mjs";

/** Sections of web/texts/en.ts, or parts of them, that no first screen says; tests/web/element-parts.test.mjs holds them to it. */
const laterTexts = [
  ...["guess.aboveFloor", "guess.moves", "guess.drawn", "guess.sideView", "pauses.names", "pauses.key"],
  ...["measuringBike", "moves", "bike", "leg", "checks", "growth", "tape", "beside", "desk", "card"],
  ...["keep", "site", "club", "years", "suits", "wishes", "whatIf"],
];

/** What a first screen says of them all the same. */
const firstTexts = [
  ...["bike.costGaps", "checks.measure", "desk.fields", "card.madeOn", "years.open", "years.standings.owned"],
  ...["beside.pick", "beside.how", "beside.picked", "beside.pickMore", "beside.open", "suits.toBike"],
  ...["wishes.title", "wishes.detail", "wishes.hidden", "wishes.because", "wishes.showAll", "wishes.kinds"],
  ...["wishes.notANumber", "whatIf.title", "whatIf.busy"],
];

/** Of the problems and their words, by code, those that can come before the rest is there: with the rider's figures, and with the engine. */
const firstProblems =
  /^(figure|reading|readings|rider)_|^(internal|rider_without_measure|request_value_out_of_range)$/;

const firstWords = /^((mm|cm|inches)_as_|shoes_|(trouser_seam|digits_swapped|misread)$)/;

/** @param path as in `texts.problems.wording` */
export const isLater = (path) =>
  path.startsWith("problems.w")
    ? !(path.startsWith("problems.words.") ? firstWords : firstProblems).test(
        path.split(".").slice(2).join("."),
      )
    : isIn(laterTexts, path) && !isIn(firstTexts, path);

function isIn(sections, path) {
  return sections.some((section) => path === section || path.startsWith(`${section}.`));
}

/** The part of `tree` whose paths are as wished; sections with nothing in them are left out. */
function partOf(tree, wished, path = "") {
  const kept = Object.entries(tree).flatMap(([key, text]) => {
    const own = path === "" ? key : `${path}.${key}`;
    if (typeof text === "string" || Array.isArray(text)) return wished(own) ? [[key, text]] : [];
    const section = partOf(text, wished, own);
    return Object.keys(section).length > 0 ? [[key, section]] : [];
  });
  return Object.fromEntries(kept);
}

/** Both parts: in English, and by language as packed-texts.ts has them. */
export async function textsInParts() {
  const { english } = await ownModule("texts/en.ts");
  const { packedLanguages } = await ownModule("texts/translations.ts");
  const part = (wished) => {
    const tree = partOf(english, wished);
    return { english: tree, words: packedLanguages(tree) };
  };
  return { first: part((path) => !isLater(path)), later: part(isLater) };
}
