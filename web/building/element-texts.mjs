// The element's texts in two parts: those of the first screens, and those that come later with the screens that say them.
import { textsOfForm } from "./form-texts.mjs";

/** Sections of web/texts/en.ts, or parts of them, that no first screen says; tests/web/element-size.test.mjs holds them to it. */
const laterTexts = [
  ...["measuringBike", "moves", "bike", "leg", "checks", "growth", "tape", "beside", "desk", "card"],
  ...["keep", "site", "club", "years", "suits", "wishes", "whatIf", "rack.print", "rack.paperPart"],
  ...["guess.aboveFloor", "guess.moves", "guess.drawn", "guess.sideView", "pauses.names", "pauses.key"],
  ...["rider.moreWhy", "rider.born", "rider.sex", "rider.girl", "rider.boy", "rider.sexWhy"],
  ...["rider.population", "rider.populations", "rider.populationWhy", "rider.mass", "rider.massWhy"],
  ...["rider.ridingFrom", "rider.ridingFromWhy", "rider.earlierWhy", "rider.addEarlier", "rider.readOn"],
];

/** What a first screen says of them all the same. */
const firstTexts = [
  ...["bike.costGaps", "checks.measure", "desk.fields", "years.open", "years.standings.owned"],
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

/** Both parts, each as form-texts.mjs gives it. */
export async function textsInParts() {
  return { first: await textsOfForm((path) => !isLater(path)), later: await textsOfForm(isLater) };
}
