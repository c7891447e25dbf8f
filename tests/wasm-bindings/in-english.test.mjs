// The sentences that ask.mjs puts beside the engine's codes: one for every code, and in each every figure that it names.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { inEnglish } from "../../wasm-bindings/in-english.js";
import { openBuiltEngine, root } from "../support/built-engine.mjs";
import { everyExchange, shed } from "../support/every-exchange.mjs";
import { interfaceSchema } from "../support/interface-schema.mjs";
import { measuredBike } from "../support/measured-bike.mjs";

const english = JSON.parse(readFileSync(join(root, "wasm-bindings/english.json"), "utf8"));
const { $defs } = interfaceSchema;
const today = "2026-11-25";
const engine = await openBuiltEngine();
const { constants } = engine.ask({ do: "about" });
const worded = inEnglish(english, constants);

const rider = { stage: "riding", mass_kg: 18.5, readings: [{ on: today, inseam_mm: 495 }] };

const bike = { ...measuredBike, id: "A", mass_kg: 5.4, rider_mass_limit_kg: 50 };

/** The sentences about one bike, by check. */
function sentences(more, who = {}) {
  const taped = [{ ...bike, ...more }];
  const { bikes } = worded(engine.ask({ do: "assess", today, rider: { ...rider, ...who }, taped }));
  return Object.fromEntries(bikes[0].checks.map(({ what, why }) => [what, why]));
}

test("every code has a sentence, and no sentence is without a code", () => {
  assert.deepEqual(Object.keys(english.checks), $defs.CheckCode.enum);
  assert.deepEqual(Object.keys(english.measures), $defs.Measure.enum);
  assert.deepEqual(Object.keys(english.worth), $defs.Worth.properties.code.enum);
  assert.deepEqual(Object.keys(english.not_offered), $defs.NotOffered.properties.code.enum);
  assert.deepEqual(Object.keys(english.wheel_sizes), $defs.WheelSize.properties.reason.enum);
  assert.deepEqual(["measured", ...Object.keys(english.rests_on)], $defs.Check.properties.basis.enum);
});

test("figures are said with their unit, rounded as people say them", () => {
  assert.equal(
    sentences({ lever_reach: 8 }).lever_reach,
    "the brake lever is 80 mm from the grip, more than the 75 mm for young children (US: 76 mm on sidewalk bicycles, " +
      "89 mm on others): adjust it, or see if the child can pull it",
  );
  assert.match(
    sentences({}).gears,
    /2\.51 m \(31 gear inches\): 9 km\/h at 60 turns a minute, 12 km\/h at 80 turns a minute$/,
  );
  assert.match(sentences({}).first_hill, /^a gentle climb \(0\.05 up for 1 along\)/);
  assert.match(sentences({}).bike_mass, /^the bike \(5\.4 kg\) weighs 0\.29 of its rider \(18\.5 kg\)$/);
  assert.match(sentences({ brakes: ["front hand", "rear hand"] }).brake_kind, /in the US/);
});

test("what is missing or a guess is said", () => {
  assert.equal(
    sentences({ chainring: null, sprocket: null }).gears,
    "this cannot be checked without the teeth on the front chainring, the teeth on the rear sprocket",
  );
  const guessed = sentences({}, { mass_kg: null, born: "2021-09" }).bike_mass;
  assert.match(guessed, /\(the rider's weight is estimated: weigh to be sure\)$/);
});

test("no sentence has a gap, whatever the bike", () => {
  const odd = { standover: [null, 20, 45, 80], mass_kg: [null, 3, 6, 20], crank: [null, 5, 12, 20, 25] };
  const further = {
    seat_tube_angle_deg: [null, 50, 85],
    bottom_bracket_height: [null, 10, 40],
    lever_reach: [null, 14],
  };
  for (const [field, values] of Object.entries({ ...odd, ...further })) {
    for (const value of values) {
      for (const [what, why] of Object.entries(sentences({ [field]: value }))) {
        assert.doesNotMatch(why, /[{}]|undefined|NaN| {2}|\(\)/, what);
        assert.ok(why.length > 10, what);
      }
    }
  }
});

test("nothing else of an answer is touched, and no code is left without its sentence", () => {
  engine.ask({ do: "load" }, new TextEncoder().encode(JSON.stringify(shed)));
  const withoutWhy = (value) =>
    JSON.parse(JSON.stringify(value, (name, field) => (name === "why" ? undefined : field)));
  let found = 0;
  for (const { name, request } of everyExchange.filter(({ request }) =>
    ["assess", "years_ahead"].includes(request.do),
  )) {
    const answer = engine.ask(request);
    const said = worded(answer);
    assert.deepEqual(withoutWhy(said), answer, name);
    JSON.stringify(said, (key, value) => {
      if (key === "why") {
        assert.ok(value.length > 0);
        found += 1;
      }
      return value;
    });
  }
  assert.ok(found > 50);
});
