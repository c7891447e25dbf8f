// Nothing is lost on the way through the engine: lists made up by fast-check, with every kind of field, awkward texts,
// fields that are not known and entries that cannot be used, are opened, saved in either form, opened and saved again,
// and edited and brought back. The samples take the same way. Saved lists are held against the JSON Schema by ajv.
//
// A failure prints the seed that makes it again: SEED=... node --test lists-keep-all.property.test.mjs

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { openBuiltEngine, sample } from "../support/built-engine.mjs";

const options = { numRuns: 60, seed: Number(process.env.SEED ?? 20261125) };
const tableForms = [",", ";", "tab"].flatMap((separator) =>
  [".", ","].map((decimal) => ({ do: "save", form: "csv", separator, decimal })),
);

const engine = await openBuiltEngine();
const bytes = (text) => new TextEncoder().encode(text);

// What a list may hold.

/** Texts that have broken tables and pages before: separators, quotes, formulas, line breaks, other scripts. */
const awkward = fc.constantFrom(
  ",",
  ";",
  "\t",
  '"',
  '""',
  "'",
  "\n",
  "\r\n",
  "=1+2",
  "+49",
  "-1",
  "@x",
  "'=x",
  "# title: x",
  "json:7",
  "[1]",
  "{}",
  "true",
  "null",
  "none",
  "7",
  "007",
  "1,5",
  "4.95e1",
  "ירוק",
  "🚲",
  "e\u0301",
  "\u00a0",
  " ",
  "<b>",
  "\\",
  "\u2028",
);
const text = fc
  .array(fc.oneof(awkward, fc.fullUnicodeString({ maxLength: 8 })), { minLength: 1, maxLength: 4 })
  .map((pieces) => pieces.join(""));
const cm = fc
  .integer({ min: 16, max: 129 })
  .chain((whole) => fc.constantFrom(whole, whole + 0.5, whole + 0.25));
const length = fc.oneof(
  cm,
  fc.integer({ min: 7, max: 50 }).map((inches) => `${inches} 1/2 in`),
  fc.integer({ min: 160, max: 1290 }).map((mm) => `${mm} mm`),
  cm.map((figure) => String(figure).replace(".", ",")),
);
const unknownValue = fc.oneof(text, fc.jsonValue({ maxDepth: 2 }));
const fieldName = fc.oneof(
  fc.constantFrom(
    "owner",
    "shelf",
    "Saddle Highest",
    "frame",
    "price_gbp",
    "units",
    "id ",
    "größe",
    "a,b",
    'a"b',
  ),
  text,
);
const bikeFields = {
  name: text,
  kind: fc.constantFrom("pedal", "balance"),
  wheel: fc.constantFrom("16", 16, "47-305", "700C", 27.5),
  saddle_highest: length,
  standover: length,
  mass_kg: fc.integer({ min: 1, max: 599 }).map((figure) => figure / 10 + 0.5),
  rider_mass_limit_kg: fc.integer({ min: 5, max: 300 }),
  brakes: fc.uniqueArray(fc.constantFrom("front hand", "rear hand", "coaster")),
  lever_reach: fc.integer({ min: 20, max: 150 }).map((mm) => mm / 10),
  gears: fc.integer({ min: 0, max: 40 }),
  chainring: fc.integer({ min: 8, max: 80 }),
  sprocket: fc.integer({ min: 6, max: 80 }),
  crank: fc.integer({ min: 40, max: 250 }).map((mm) => mm / 10),
  bottom_bracket_height: fc.integer({ min: 8, max: 45 }),
  seat_tube_angle_deg: fc.integer({ min: 45, max: 90 }),
  price: fc.integer({ min: 0, max: 100000 }).map((cents) => cents / 100),
  colours: fc.array(text, { maxLength: 3 }),
  condition: text,
  available: fc.boolean(),
  notes: text,
};
const bike = fc
  .tuple(
    fc.record({ saddle_lowest: length }, { requiredKeys: ["saddle_lowest"] }),
    fc.record(bikeFields, { requiredKeys: [] }),
    fc.dictionary(fieldName, unknownValue, { maxKeys: 3 }),
  )
  .map(([needed, known, unknown]) => ({ ...unknown, ...needed, ...known }));
/** An entry that is set aside, mostly. */
const broken = fc.oneof(
  bike.map((entry) => ({ ...entry, saddle_lowest: "forty" })),
  bike.map((entry) => ({ ...entry, saddle_lowest: true, brakes: "front hand" })),
  fc.constant({ notes: "nothing but this" }),
  fc.dictionary(fieldName, unknownValue, { minKeys: 1, maxKeys: 3 }),
);
const header = fc.record(
  {
    title: text,
    measured_on: fc.constantFrom("2026-10-03", "2026-02-30"),
    currency: fc.constantFrom("EUR", "GBP", "euro"),
    hall: unknownValue,
    "a:b #": unknownValue,
  },
  { requiredKeys: [] },
);
const list = fc
  .tuple(header, fc.array(bike, { minLength: 1, maxLength: 6 }), fc.array(broken, { maxLength: 3 }))
  .map(([head, good, bad]) => ({
    format: "saddlerule-catalogue",
    version: 1,
    units: "cm",
    ...head,
    bikes: [
      { id: "always good", saddle_lowest: 50 },
      ...good.map((entry, i) => ({ id: `B${i}`, ...entry })),
      ...bad,
    ],
  }));

// What stays the same.

const saved = (form) => {
  const answer = engine.ask({ do: "save", ...form });
  assert.equal(answer.error, undefined);
  return answer;
};
const open = (file) => {
  const answer = engine.ask({ do: "load", rows: { from: 0, count: 100 } }, file);
  assert.equal(answer.error, undefined, answer.error?.code);
  return answer;
};

/** The same whatever the order of fields. Null says what an absent field says; a table has no place for it. */
const sorted = (value) =>
  value !== null && typeof value === "object" && !Array.isArray(value)
    ? Object.fromEntries(
        Object.keys(value)
          .sort()
          .map((key) => [key, sorted(value[key])]),
      )
    : value;
const withoutNulls = (entry) => {
  if (entry === null || typeof entry !== "object" || Array.isArray(entry)) return entry;
  return Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== null));
};
const content = (json) => {
  const { bikes, ...head } = JSON.parse(json);
  return { head: sorted(withoutNulls(head)), bikes: bikes.map((entry) => sorted(withoutNulls(entry))) };
};
/** What was judged of the entries, without their places in the file. */
const judged = ({ entries, list: summary }) => [
  { ...summary, form: null },
  entries.map(
    ({ id, name, kind, wheel, saddle_lowest_mm, saddle_highest_mm, price, mass_kg, problem, slips }) => [
      [id, name, kind, wheel, saddle_lowest_mm, saddle_highest_mm, price, mass_kg],
      problem && [problem.code, problem.where],
      slips.map(({ code, changes }) => [code, changes]),
    ],
  ),
];

function assertKept(file) {
  const first = open(file);
  const json = saved({ form: "json" });
  assert.equal(json.left_out.length, 0);
  const tables = tableForms.map((form) => saved(form));

  assert.deepEqual(judged(open(bytes(json.text))), judged(first), "opened again from JSON");
  assert.equal(saved({ form: "json" }).text, json.text, "JSON of JSON");

  const all = content(json.text);
  for (const table of tables) {
    const leftOut = new Set(table.left_out.map(({ number }) => number));
    const wanted = all.bikes.filter((_, index) => !leftOut.has(index + 1));
    assert.equal(table.entries, wanted.length);
    if (wanted.length === 0) continue;
    // A table that names no unit is asked for it, unless it is opened to be mended.
    const again = engine.ask({ do: "load", rows: { from: 0, count: 100 }, to_mend: true }, bytes(table.text));
    assert.equal(again.error, undefined, `${again.error?.code}\n${table.text}`);
    const back = content(saved({ form: "json" }).text);
    assert.deepEqual(back.bikes, wanted, table.text);
    assert.deepEqual(back.head, all.head, table.text);
  }
}

test("a list that is opened and saved, in either form, is the list it was", () => {
  fc.assert(
    fc.property(list, (made) => assertKept(bytes(JSON.stringify(made)))),
    options,
  );
});

for (const name of [
  "loan-shed.json",
  "swap-morning.json",
  "every-mistake.json",
  "broken/good-crlf.json",
  "broken/good-facts-unreadable.json",
  "broken/good-prices-without-currency.json",
  "broken/good-units-after-bikes.json",
  "broken/good-utf16-big.json",
  "broken/without-units.json",
]) {
  test(`${name} stays what it is`, () => assertKept(readFileSync(sample(name))));
}

const change = fc.oneof(
  fc.record({
    set: fc.dictionary(fc.oneof(fc.constantFrom(...Object.keys(bikeFields)), fieldName), text, {
      maxKeys: 4,
    }),
    number: fc.constant(1),
  }),
  fc.record({ add: fc.dictionary(fc.constantFrom("id", "name", "saddle_lowest", "notes"), text) }),
  fc.record({ copy: fc.constantFrom(1, 2) }),
  fc.record({ remove: fc.constant(1) }),
  bike.map((entry) => ({ insert: JSON.stringify(entry, null, 1), before: 1 })),
  fc.record({
    list: fc.record(
      { title: text, currency: fc.constantFrom("EUR", null), units: fc.constantFrom("in", "mm", "cm") },
      { requiredKeys: [] },
    ),
  }),
);

test("an edit that is undone leaves the list as it was, and redone as it became", () => {
  fc.assert(
    fc.property(list, fc.array(change, { minLength: 1, maxLength: 5 }), (made, changes) => {
      open(bytes(JSON.stringify(made, null, 1)));
      const state = () => [
        saved({ form: "json" }).text,
        engine.ask({ do: "list", rows: { from: 0, count: 100 } }),
      ];
      const before = state();
      const edited = engine.ask({ do: "edit", changes });
      if (edited.error) {
        assert.deepEqual(state(), before, "refused, and so nothing is done");
        return;
      }
      const after = state();
      const undone = engine.ask({ do: "edit", changes: edited.undo });
      assert.equal(undone.error, undefined);
      assert.deepEqual(state(), before);
      assert.equal(engine.ask({ do: "edit", changes: undone.undo }).error, undefined);
      assert.deepEqual(state(), after);
    }),
    options,
  );
});

test("a saved list is one by the JSON Schema, but for the entries that were set aside", () => {
  const schema = JSON.parse(readFileSync(sample("catalogue.schema.json"), "utf8"));
  const validate = new Ajv2020({ allErrors: true, strictTypes: false, allowUnionTypes: true }).compile(
    schema,
  );
  fc.assert(
    fc.property(list, (made) => {
      const { entries, notes } = open(bytes(JSON.stringify(made)));
      const written = JSON.parse(saved({ form: "json" }).text);
      validate(written);
      const faults = (validate.errors ?? []).filter(({ keyword }) => keyword !== "if");
      for (const { instancePath, message } of faults) {
        const number = Number(/^\/bikes\/(\d+)/.exec(instancePath)?.[1] ?? -1) + 1;
        const told =
          number > 0 ? entries[number - 1].problem : notes.some(({ code }) => code.startsWith("file_"));
        assert.ok(told, `${instancePath} ${message}, and the reader says nothing`);
      }
    }),
    options,
  );
});
