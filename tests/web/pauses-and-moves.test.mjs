// Months in which a bike does not fit, and the steps of its saddle, in words: the page's own modules, bundled for Node.

import assert from "node:assert/strict";
import test from "node:test";
import { pageModule } from "../support/page-modules.mjs";

const { lastingWords } = await pageModule("screens/rack/verdict-words.ts");
const { saddleMoves, someMoves, countMoves } = await pageModule("screens/bike/saddle-moves.ts");
const { cardWords, cardText } = await pageModule("screens/bike/card-words.ts");
const { textsIn } = await pageModule("texts/texts.ts");
const { createFigures } = await pageModule("figures/format-figures.ts");

const symbols = { cm: "cm", in: "in", kg: "kg", mm: "mm", m: "m", km_h: "km/h" };
const texts = textsIn("en", "en-GB");
const figures = createFigures("en-GB", "cm", symbols);
const plain = (text) => text.replaceAll("\u00a0", " ");

const dates = (p50) => ({ p10: p50, p50, p90: p50 });

/** A bike that fits on training wheels, is too high for half a year without them, and fits again. */
const bike = {
  id: "L17",
  name: "Loan 17",
  kind: "pedal",
  suits_stage: true,
  verdict: "fits_now",
  stops: 0,
  looks: 0,
  span_mm: { lowest: 530, highest: 640 },
  saddle_mm: 546,
  above_lowest_mm: 16,
  below_highest_mm: 94,
  margin_mm: 20,
  to_measure: [],
  fits_from: dates("2026-11-25"),
  outgrown: dates("2032-01-10"),
  pauses: [{ from: "2027-05-25", to: "2027-11-29", code: "too_tall" }],
  months_of_fit: { mean: 55, p10: 50, p50: 55, p90: 60 },
  cost_per_month: null,
  raise: [
    { on: "2027-02-03", saddle_mm: 556 },
    { on: "2027-11-29", saddle_mm: 585, stage: "riding" },
    { on: "2028-02-20", saddle_mm: 595 },
  ],
};
const rider = { basis: "measured", stage: "side_wheels" };
const said = (changed) => plain(lastingWords(texts, figures, { ...bike, ...changed }));

test("how long it fits is told up to a pause and after it, with why and in which months", () => {
  assert.equal(
    said({}),
    "Fits until about May 2027. Too high from May to November 2027, when the training wheels come off. " +
      "Then it fits again until about January 2032.",
  );
});

test("a pause over the turn of a year names both years, one within a month names it once", () => {
  const pause = (from, to) => said({ pauses: [{ from, to, code: "too_tall" }] });
  assert.match(pause("2027-10-02", "2028-02-01"), /Too high from October 2027 to February 2028,/);
  assert.match(pause("2027-10-02", "2027-10-30"), /Too high in October 2027,/);
});

test("after a pause that ends where the bike is outgrown, nothing says that it fits again", () => {
  assert.doesNotMatch(said({ outgrown: dates("2027-11-29") }), /again/);
  assert.match(said({ outgrown: dates(null) }), /Then it fits again\.$/);
});

test("without a pause it is told as a length of time", () => {
  assert.match(said({ pauses: [] }), /^Fits for about four and a half years/);
});

test("steps are told by the month, and under what has to be true first", () => {
  const moves = saddleMoves(texts, figures, bike, rider);
  const words = moves.map(({ once, lines }) => [once, ...lines.map(plain)]);
  assert.deepEqual(words, [
    [null, "About February 2027: 55.6 cm"],
    [
      "Once your child starts, brakes and stops without help (perhaps about November 2027):",
      "Then: 58.5 cm",
      "About February 2028: 59.5 cm",
    ],
  ]);
  assert.equal(countMoves(moves), 3);
});

test("steps that are cut off keep their condition", () => {
  const moves = saddleMoves(texts, figures, bike, rider);
  const [rest] = someMoves(moves, 2);
  assert.match(rest.once, /^Once your child starts/);
  assert.equal(rest.lines.length, 1);
  assert.equal(countMoves(someMoves(moves, 0, 2)), 2);
});

test("a step down comes once the training wheels are off", () => {
  const raise = [{ on: "2027-05-25", saddle_mm: 530, stage: "starting" }];
  const [move] = saddleMoves(texts, figures, { raise }, rider);
  assert.match(move.once, /^Once the training wheels are off /);
});

test("of a leg that nobody measured there are no steps", () => {
  assert.deepEqual(
    saddleMoves(texts, figures, bike, { basis: "estimated_from_age", stage: "side_wheels" }),
    [],
  );
});

test("the message has the pause, the steps under their condition, for whom it holds, and to measure again", () => {
  const card = cardWords(texts, figures, bike, rider, { rider: null, today: "2026-11-25" });
  const lines = plain(cardText(texts, card)).split("\n");
  for (const line of [
    "Saddle height fits. As of 25 November 2026.",
    "For a child who rides with training wheels.",
    "Too high from May to November 2027, when the training wheels come off.",
    "- Measure again before each step.",
    "Once your child starts, brakes and stops without help (perhaps about November 2027):",
    "- Then: 58.5 cm",
  ])
    assert.ok(lines.includes(line), `${line}\nis missing in\n${lines.join("\n")}`);
  assert.doesNotMatch(lines.join("\n"), /\d+ (February|November) 2027/);
});

test("a warning is in the first line of the message, and what it says in the next", () => {
  const warned = { ...bike, stops: 1, checks: [check("brake_kind", "stop", "brakes_none")] };
  const card = cardWords(texts, figures, warned, rider, { rider: null, today: "2026-11-25" });
  const [, verdict, why] = cardText(texts, card).split("\n");
  assert.equal(verdict, "Saddle height fits. 1 warning. As of 25 November 2026.");
  assert.match(why, /Do not ride it like this\.$/);
});

test("a guess says so in the message, with a range and no one height", () => {
  const guessed = { ...bike, saddle_likely_mm: { low: 530, high: 581 } };
  const by = { basis: "estimated_from_age", stage: "side_wheels" };
  const text = plain(
    cardText(texts, cardWords(texts, figures, guessed, by, { rider: null, today: "2026-11-25" })),
  );
  assert.match(text, /Measure it before you buy\./);
  assert.match(text, /Saddle somewhere from 53 to 58\.1 cm\./);
  assert.doesNotMatch(text, /54\.6/);
});

function check(what, state, code) {
  return { what, state, code, basis: "measured", why: "", source: "", figures: {}, to_measure: [] };
}
