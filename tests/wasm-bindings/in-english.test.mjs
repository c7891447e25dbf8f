// The sentences that ask.mjs puts beside the engine's codes: one for every code, and in each every figure that it names.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { inEnglish } from "../../wasm-bindings/in-english.js";
import { openBareEngine, openBuiltEngine, root } from "../support/built-engine.mjs";
import { everyExchange, otherShed, shed } from "../support/every-exchange.mjs";
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

test("every problem and every word in one has its English, and none is without a code", () => {
  assert.deepEqual(Object.keys(english.problems), $defs.ProblemCode.enum);
  assert.deepEqual(
    Object.keys({ ...english.problem_words, ...english.request_words }),
    $defs.ProblemWord.enum,
  );
  for (const unit of $defs.FigureUnit.enum) assert.ok(unit in english.units, unit);
  const about = engine.ask({ do: "about" });
  assert.deepEqual(about.problem_words, $defs.ProblemWord.enum);
  const { problems } = worded(about);
  assert.deepEqual(
    problems.find(({ code }) => code === "figure_unit_unknown"),
    { code: "figure_unit_unknown", sentence: '"{unit}" is not a known unit', expected: "{units}" },
  );
});

/** The first problem that a request is refused with. */
const refusedWith = (request, file) => worded(engine.ask(request, file)).error;
const bytes = (text) => new TextEncoder().encode(text);

test("problems are said with their place first, in figures of every type", () => {
  const { error, set_aside: aside } = worded(
    engine.ask(
      { do: "load" },
      bytes('{ "units": "cm", "bikes": [\n  { "id": "C", "saddle_lowest": 495 }\n] }'),
    ),
  );
  assert.deepEqual(
    [aside[0].problem, aside[0].expected],
    ["line 2, column 33: saddle_lowest: 495 cm is out of range", "15 cm to 130 cm"],
  );
  assert.deepEqual(Object.keys(aside[0]).slice(-4), ["problem", "expected", "figures", "source"]);
  assert.equal(
    error.problem,
    "line 2, column 33: no bike in the file can be used (1 left out); the first: saddle_lowest: 495 cm is out of range",
  );
  const table = worded(
    engine.ask(
      { do: "load", to_mend: true },
      bytes("id;saddle lowest [cm];saddel highest\nA;495;60\nB;49;;x\n"),
    ),
  );
  assert.deepEqual(
    table.set_aside.map(({ problem }) => problem),
    ["row 2, saddle lowest [cm]: 495 cm is out of range", "row 3: x is in a column without a name"],
  );
  const brace = refusedWith('{ "do": ');
  assert.equal(brace.problem, "line 1, column 9: the text stops in the middle: 1 bracket is still open");
  assert.equal(
    refusedWith("[{").problem,
    "line 1, column 3: the text stops in the middle: 2 brackets are still open",
  );
  const fly = refusedWith({ do: "years_ahead", today, riders: [] });
  assert.deepEqual([fly.problem, fly.expected], ["0 riders is out of range", "1 to 10"]);
  const both = { do: "assess", today, rider: { ...rider, mass: "40 lb" } };
  assert.equal(refusedWith(both).expected, "either mass_kg or mass");
  const text = { do: "assess", today, rider: { ...rider, readings: [{ on: today, inseam: "5 stone" }] } };
  assert.deepEqual(
    [refusedWith(text).problem, refusedWith(text).expected],
    ['"stone" is not a known unit', "mm, cm, m, in or ft"],
  );
  const sex = { do: "assess", today, rider: { ...rider, sex: "x" } };
  assert.equal(refusedWith(sex).expected, "one of girl, boy");
  assert.equal(
    refusedWith(
      { do: "load" },
      Uint8Array.from("%PDF-1.7", (c) => c.charCodeAt(0)),
    ).problem,
    "this is a PDF document, not a list of bikes",
  );
});

test("no problem has a gap or an unknown word, whatever was changed in a request", async () => {
  // What is asked here is not what the schema allows.
  const bare = await openBareEngine();
  const odd = [null, true, -1, 1e300, "", "x", [], {}, [null]];
  const list = bytes(JSON.stringify(shed));
  let said = 0;
  const check = (value) => {
    if (typeof value !== "object" || value === null) return;
    if (typeof value.problem === "string" && "figures" in value) {
      said += 1;
      assert.doesNotMatch(value.problem + value.expected, /[{}]|undefined|NaN|\[object/, value.code);
      assert.ok(value.problem.length > 10, value.code);
    }
    Object.values(value).forEach(check);
  };
  for (const { request } of everyExchange) {
    for (const key of Object.keys(request)) {
      for (const put of odd) {
        bare.ask({ do: "load" }, list);
        check(worded(bare.ask({ ...request, [key]: put }, list)));
      }
    }
  }
  assert.ok(said > 300);
});

test("what is a list's own is not taken for a problem", () => {
  const own = { code: "internal", where: "", figures: {} };
  const file = bytes(JSON.stringify({ ...shed, title: own }));
  engine.ask({ do: "load" }, file);
  const answer = engine.ask({
    do: "edit",
    changes: [{ list: { title: "Barn" } }],
    rows: { from: 0, count: 1 },
  });
  assert.deepEqual(worded(answer).undo, answer.undo);
  assert.deepEqual(answer.undo[0].list.title, own);
});

test("nothing else of an answer is touched, and no code is left without its sentence", () => {
  /** Without the sentences; `problem` may also be the whole problem of an entry. */
  const withoutWords = (value) =>
    JSON.parse(
      JSON.stringify(value, (name, field) =>
        typeof field === "string" && ["why", "problem", "expected", "sentence"].includes(name)
          ? undefined
          : field,
      ),
    );
  let found = 0;
  const list = bytes(JSON.stringify(shed));
  const other = bytes(JSON.stringify(otherShed));
  // The constants of `about` have a `why` of their own.
  for (const { name, request } of everyExchange.filter(({ request }) => request.do !== "about")) {
    engine.ask({ do: "load" }, list);
    const answer = engine.ask(request, request.do === "load" ? list : other);
    const said = worded(answer);
    assert.deepEqual(withoutWords(said), answer, name);
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
