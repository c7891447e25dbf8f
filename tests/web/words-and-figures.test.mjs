// Lengths of time in words, and lengths as a tape is read: the page's own modules, bundled for Node.

import assert from "node:assert/strict";
import test from "node:test";
import { pageModule } from "../support/page-modules.mjs";

const durations = await pageModule("texts/durations.ts");
const { textsIn } = await pageModule("texts/texts.ts");
const words = textsIn("en", "en-GB").durations;
const about = (months) => durations.about(words, months);
const lengthOfUse = (months) => durations.lengthOfUse(words, months);
const { lengthFigure, tapeMarks } = await pageModule("figures/lengths.ts");
const { createFigures } = await pageModule("figures/format-figures.ts");
const { checkFigures } = await pageModule("figures/check-figures.ts");
const symbols = { cm: "cm", in: "in", kg: "kg", mm: "mm", m: "m", km_h: "km/h" };
const plain = (text) => text.replaceAll("\u00a0", " ");

for (const [months, words] of [
  [0.3, "a few weeks at most"],
  [1, "about a month"],
  [6.4, "about six months"],
  [10.4, "about ten months"],
  [12, "about a year"],
  [17, "about a year and a half"],
  [30, "about two and a half years"],
  [47, "about four years"],
  [95, "eight years or more"],
]) {
  test(`${months} months are ${words}`, () => assert.equal(about(months), words));
}

for (const [range, words] of [
  [{ p10: 11.6, p50: 16.5, p90: 22.2 }, "about a year and a half, most likely one to two years"],
  [{ p10: 4, p50: 6, p90: 9 }, "about six months, most likely four to nine months"],
  [{ p10: 0.2, p50: 2, p90: 5 }, "about two months, most likely up to five months"],
  [
    { p10: 30, p50: 60, p90: 96 },
    "about five years, most likely two and a half years to eight years or more",
  ],
  [{ p10: 23.5, p50: 24, p90: 25 }, "about two years"],
]) {
  test(`the range ${JSON.stringify(range)} is told as: ${words}`, () =>
    assert.equal(lengthOfUse(range), words));
}

const english = new Intl.NumberFormat("en", { maximumFractionDigits: 1 }).format;
// The international inch of 1959 is 25.4 mm exactly.
for (const [mm, unit, figure] of [
  [495.3, "in", "19½"],
  [495.3, "cm", "49.5"],
  [25.4, "in", "1"],
  [12.7, "in", "½"],
  [3.175, "in", "⅛"],
  [0, "in", "0"],
  [-12.7, "in", "−½"],
  [508 - 0.5, "in", "20"],
  [470, "cm", "47"],
]) {
  test(`${mm} mm read in ${unit} are ${figure}`, () => assert.equal(lengthFigure(mm, unit, english), figure));
}

test("a tape bears at most as many figures as asked for, and a line at every whole division", () => {
  const inches = tapeMarks(400, 600, "in", 7);
  assert.ok(inches.filter(({ figure }) => figure !== null).length <= 7);
  // From 16 in (406.4 mm) to 23.5 in (596.9 mm) in halves.
  assert.equal(inches.length, 16);
  assert.deepEqual(inches.find(({ mm }) => Math.abs(mm - 508) < 0.01)?.rank, "long");
  assert.equal(tapeMarks(400, 600, "cm", 7).length, 21);
});

test("figures of checks come in the reader's unit by the ending of their names", () => {
  const check = {
    value_mm: 82,
    limit_mm: 75,
    figures: { bike_kg: 6.4, slope_ratio: 0.05, easy_speed_km_h: 9.03 },
  };
  const inInches = checkFigures(createFigures("en-GB", "in", symbols), check);
  const inCentimetres = checkFigures(createFigures("en-GB", "cm", symbols), check);
  assert.equal(plain(inInches.value), "3¼ in");
  assert.equal(plain(inCentimetres.value), "8.2 cm");
  assert.equal(plain(inCentimetres.limit), "7.5 cm");
  assert.equal(plain(inCentimetres.bike), "6.4 kg");
  assert.equal(inCentimetres.slope, "5%");
  assert.equal(plain(inCentimetres.easy_speed), "9 km/h");
});

// 1 lb is 0.45359237 kg, 1 ft is 0.3048 m and 1 mile 1.609344 km (international yard and pound agreement, 1959).
test("beside inches, weights are in pounds, turns of the pedals in feet and speeds in miles an hour", () => {
  const inInches = createFigures("en-GB", "in", symbols);
  assert.equal(plain(inInches.mass(6.4)), "14.1 lb");
  assert.equal(plain(inInches.metres(3.1)), "10.2 ft");
  assert.equal(plain(inInches.speed(9.03)), "6 mph");
  assert.doesNotMatch(inInches.mass(6.4) + inInches.metres(3.1) + inInches.speed(9.03), / /);
});

const { massKept, massSent, massShown } = await pageModule("state/typed-mass.ts");

test("a weight keeps the unit in which it was typed, whichever unit the field shows", () => {
  assert.equal(massKept("40", "lb"), "40 lb");
  assert.equal(massKept("18,5", "kg"), "18,5");
  assert.deepEqual([massShown("40 lb", "lb"), massShown("40 lb", "kg")], ["40", "40 lb"]);
  assert.deepEqual([massShown("18", "lb"), massShown("18", "kg")], ["18 kg", "18"]);
  assert.deepEqual(
    [massSent("40 lb"), massSent("18,5"), massSent("heavy"), massSent("")],
    ["40 lb", 18.5, null, null],
  );
});
