// The JSON Schema of lists and the engine's reader say the same about the same files: the samples, the broken files,
// tables saved as JSON, and one fault after the other put into a good list. The schema is read by ajv.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { Ajv2020 } from "ajv/dist/2020.js";
import { openBuiltEngine, sample } from "../support/built-engine.mjs";
import { measuredBike } from "../support/measured-bike.mjs";

/** What the reader refuses a bike for and no schema can say. Nothing else may come between the two. */
const beyondAnySchema = {
  bike_highest_below_lowest: "one field against another",
  bike_id_taken: "one bike against another",
  bike_field_twice: "gone once the text is an object",
};
/** The same where the field's value is a length given as text: its size is in the words. */
const beyondAnySchemaInText = {
  bike_figure_out_of_range: "such as 5 in",
  figure_too_large: "such as 900 m",
  figure_fraction_malformed: "one and more, such as 19 3/2",
};
/** The same for files. */
const beyondAnySchemaInFiles = {
  file_field_twice: "gone once the text is an object",
  file_date_malformed: "the 29th of February",
  json_too_deep: "levels of brackets",
  json_figure_too_large: "infinite once the text is an object",
};

const engine = await openBuiltEngine();
const schema = JSON.parse(readFileSync(sample("catalogue.schema.json"), "utf8"));
const validate = new Ajv2020({
  allErrors: true,
  strict: true,
  allowUnionTypes: true,
  strictTypes: false,
}).compile(schema);

/** Which bikes the schema finds fault with, and whether it finds any with the file around them. */
function verdictOfSchema(list) {
  validate(list);
  const faults = (validate.errors ?? []).filter((error) => error.keyword !== "if");
  const bikes = new Set();
  let file = false;
  for (const { instancePath } of faults) {
    const inBike = /^\/bikes\/(\d+)/.exec(instancePath);
    if (inBike) bikes.add(Number(inBike[1]));
    else file = true;
  }
  return { bikes, file };
}

/** The same of the reader: the problem of each bike, or the note on a cell that was left open, and the code for the file. A note on what it could not read counts. */
function verdictOfReader(bytes) {
  const answer = engine.ask({ do: "load" }, bytes);
  const bikes = new Map((answer.set_aside ?? []).map((entry) => [entry.number - 1, entry]));
  for (const entry of answer.notes ?? []) {
    const inBike = /^bikes\[(\d+)\]/.exec(entry.where);
    if (entry.code === "list_cell_not_read" && inBike) bikes.set(Number(inBike[1]), entry);
  }
  const note = (answer.notes ?? []).find(({ code }) => code.startsWith("file_"));
  return { bikes, file: answer.error?.code ?? note?.code ?? null };
}

function accountedFor({ code, where }, bike) {
  const field = /^bikes\[\d+\]\.(\w+)$/.exec(where)?.[1];
  return code in beyondAnySchema || (code in beyondAnySchemaInText && typeof bike[field] === "string");
}

function assertAgreement(list, text, what) {
  const bySchema = verdictOfSchema(list);
  const byReader = verdictOfReader(new TextEncoder().encode(text));
  if (byReader.file === "file_no_usable_bike") {
    assert.equal(
      bySchema.bikes.size,
      list.bikes.length,
      `${what}: the reader can use no bike, the schema can`,
    );
    return;
  }
  if (bySchema.file || byReader.file) {
    const agree = bySchema.file ? byReader.file : byReader.file in beyondAnySchemaInFiles;
    assert.ok(agree, `${what}: file at fault by schema ${bySchema.file}, by reader ${byReader.file}`);
    return;
  }
  list.bikes.forEach((bike, index) => {
    const refused = byReader.bikes.get(index);
    const agree = bySchema.bikes.has(index) ? refused : !refused || accountedFor(refused, bike);
    const said = `by schema ${bySchema.bikes.has(index)}, by reader ${refused?.code}`;
    assert.ok(agree, `${what}: bike ${index} at fault ${said}`);
  });
}

/** What a file holds once it is text, or undefined where no schema can look at it. */
function contentOf(bytes) {
  const mark = bytes.subarray(0, 2).toString("hex");
  const encoding = mark === "fffe" ? "utf-16le" : mark === "feff" ? "utf-16be" : "utf-8";
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    const list = JSON.parse(text);
    validate(list); // runs out of stack where brackets go very deep
    return { text, list };
  } catch {
    return undefined;
  }
}

const table = JSON.parse(readFileSync(sample("broken/expected.json"), "utf8"));
for (const { file } of table) {
  test(`schema and reader agree on ${file}`, () => {
    const bytes = readFileSync(sample(file));
    const content = contentOf(bytes);
    if (content) {
      assertAgreement(content.list, content.text, file);
    } else if (!verdictOfReader(bytes).file) {
      // A table: the schema looks at the list that it is saved as.
      const { text } = engine.ask({ do: "save", form: "json" });
      assertAgreement(JSON.parse(text), text, file);
    }
  });
}

const good = {
  ...measuredBike,
  id: "A1",
  name: "16 in",
  kind: "pedal",
  rider_mass_limit_kg: 35,
  price: 120,
  colours: ["green"],
  condition: "used",
  available: true,
  notes: "bell missing",
};
const other = { id: "A2", saddle_lowest: "58 cm" };
const listOf = (bike, facts = {}) => ({ units: "cm", currency: "EUR", ...facts, bikes: [bike, other] });
const bikes = "\u{1F6B2}";

/** Values of every kind, most of them wrong in most fields. */
const values = [
  null,
  true,
  false,
  0,
  -0.5,
  1,
  6,
  7.5,
  8,
  14.9,
  15,
  20,
  25.1,
  45,
  50,
  80,
  90,
  90.5,
  130,
  130.1,
  300,
  1000,
  1e9,
  1e10,
  1e308,
  -1e308,
  5e-324,
  2 ** 53,
  "",
  " ",
  "\u00a0",
  "x",
  "0",
  "16",
  "49.5",
  "pedal",
  "balance",
  "Pedal",
  "front hand",
  "47-305",
  [],
  {},
  [null],
  ["coaster"],
  ["front hand", "rear hand"],
  ["Coaster"],
  ["green", ""],
  [["green"]],
  [1],
  [true],
  { cm: 49.5 },
  "n".repeat(2000),
  "n".repeat(2001),
  bikes.repeat(2000),
  bikes.repeat(2001),
  ["n".repeat(2001)],
];

test("schema and reader agree on every field with values of every kind", () => {
  for (const field of [...Object.keys(good), "frame"]) {
    for (const value of values) {
      const list = listOf({ ...good, [field]: value });
      assertAgreement(list, JSON.stringify(list), `${field}: ${JSON.stringify(value).slice(0, 60)}`);
    }
    const without = { ...good };
    delete without[field];
    assertAgreement(listOf(without), JSON.stringify(listOf(without)), `without ${field}`);
  }
});

test("schema and reader agree on what a bike needs", () => {
  const needs = [
    {},
    { id: "A" },
    { name: "A" },
    { saddle_lowest: 50 },
    { id: "A", saddle_lowest: 50 },
    { name: "A", saddle_highest: 50 },
    { id: "", name: "", saddle_lowest: 50 },
    { id: " ", name: "A", saddle_lowest: 50 },
    { id: 7, saddle_lowest: 50 },
    { id: "A", saddle_lowest: 50, "": "x" },
    { id: 7.5, saddle_lowest: 50 },
    { id: -1, saddle_lowest: 50 },
    { id: null, name: null, saddle_lowest: 50 },
    { id: "A", saddle_lowest: null, saddle_highest: null },
    { id: "A", saddle_lowest: null, saddle_highest: 50 },
    { id: "A", standover: 50 },
    { id: "\n", saddle_lowest: 50 },
    { id: "\t\u00a0", saddle_lowest: 50 },
  ];
  for (const bike of [...needs, null, true, 7, "A", [], [{}]]) {
    assertAgreement(listOf(bike), JSON.stringify(listOf(bike)), JSON.stringify(bike));
  }
});

const lengths = [
  "49.5",
  "49,5",
  "49.5 cm",
  "49.5cm",
  " 495 mm ",
  "\u00a049.5\tcm",
  "0.495 m",
  "19 1/2 in",
  "19-1/2 in",
  "19 - 1 / 2 in",
  '19\u00bd"',
  "19 \u00bd in",
  "19 1\u20442 in",
  "39/2 in",
  "39/2in",
  "1 ft 7",
  "1 ft 7 in",
  "1ft7in",
  "1'7\"",
  "1\u20197\u201d",
  "1\u2032 7 1/2\u2033",
  "1.6 feet",
  "20 Zoll",
  "20 ZOLL",
  "20 pouces",
  "20 po",
  "20 pulgadas",
  "20 duim",
  "20 ins",
  "50 cms",
  "50 Zentimeter",
  "50 centim\u00e8tres",
  "50 cent\u00edmetros",
  "1 Fu\u00df 8",
  "2 pieds",
  "1' - 7\"",
  "1'-7 1/2\"",
  "19 \u2153 in",
  "49.5\u202fcm\u2009",
  "20 inches",
  "20 Inch.",
  "20 in.",
  "1 foot 8 inch",
  "500 millimetres",
  "50 Centimeters",
  "0.5 metre",
  "20''",
  "007 ft",
  "50 cm 2",
  "50 cm 2 mm",
  "1 ft 13 in",
  "1 ft 7 cm",
  "1 ft 2 ft",
  "-50 cm",
  "\u221250 cm",
  "+50 cm",
  "5e1",
  "0x32",
  "50.",
  ".5 m",
  "5 0 cm",
  "1,000 mm",
  "1.000,5 mm",
  "49.5.1",
  "49,5,1",
  "19 1/0 in",
  "19 1/2/3 in",
  "1.5/2 m",
  "19.5 1/2 in",
  "19 3/2 in",
  "half a metre",
  "50 furlongs",
  "50 cm.",
  "50 c m",
  "50cm!",
  "cm 50",
  "cm",
  "/2",
  "1/",
  "\u0665\u0660 cm",
  "50\ncm",
  "50 cm\n",
  "\uff15\uff10 cm",
  "50 \u33a0",
  "1e308 cm",
  "9".repeat(400),
  "900 m",
  "1 in",
  "NaN",
  "Infinity",
];

test("schema and reader agree on lengths as people type them, with a unit of the list and without", () => {
  for (const units of ["cm", "in", "mm", undefined, null]) {
    for (const length of lengths) {
      const list = listOf({ id: "A", saddle_highest: "120 cm", saddle_lowest: length }, { units });
      assertAgreement(list, JSON.stringify(list), `${length} in ${units}`);
    }
  }
});

test("schema and reader agree on the limits of lengths in every unit", () => {
  const inMillimetres = { mm: 1, cm: 10, in: 25.4 };
  const ends = {
    saddle_lowest: [150, 1300],
    saddle_highest: [150, 1300],
    standover: [100, 1100],
    lever_reach: [20, 150],
    crank: [40, 250],
    bottom_bracket_height: [80, 450],
  };
  for (const [units, size] of Object.entries(inMillimetres)) {
    for (const [field, [low, high]] of Object.entries(ends)) {
      for (const mm of [low - 1, low - 0.01, low + 0.01, high - 0.01, high + 0.01, high + 1]) {
        const bike = { id: "A", saddle_highest: "1300 mm", [field]: mm / size };
        assertAgreement(
          listOf(bike, { units }),
          JSON.stringify(listOf(bike, { units })),
          `${field} of ${mm} mm in ${units}`,
        );
      }
    }
  }
});

test("schema and reader agree on the limits of all other figures", () => {
  const ends = {
    mass_kg: [0.5, 60],
    rider_mass_limit_kg: [5, 300],
    gears: [0, 40],
    chainring: [8, 80],
    sprocket: [6, 80],
    seat_tube_angle_deg: [45, 90],
    price: [0, 1e9],
  };
  for (const [field, [low, high]] of Object.entries(ends)) {
    for (const figure of [low - 1, low - 0.001, low, low + 1, high - 1, high, high + 0.001, high + 1]) {
      const list = listOf({ ...good, [field]: figure });
      assertAgreement(list, JSON.stringify(list), `${field}: ${figure}`);
    }
  }
});

const wheels = [
  "12",
  "16 in",
  '16"',
  "27.5",
  "27,5 in",
  "27.50",
  "016",
  "16.0",
  "700C",
  "700 c",
  "47-305",
  "47 - 305",
  " 47-305 ",
  "28-451",
  "15-100",
  "130-700",
  "130.5-305",
  "131-305",
  "14-305",
  "47-99",
  "47-701",
  "700",
  "17",
  "16 cm",
  "16in47",
  "47-305-1",
  "47x305",
  "16 x 1.75",
  '20x1.95"',
  "12 1/2 x 2 1/4",
  "12.5",
  "700x35C",
  "47\u2013305",
  "ETRTO 47-305",
  "305",
  "16 x 1 3/8",
  "26 x 1 3/8",
  "16 x",
  "470",
  "26 x 1.75",
  "",
  "-305",
  "47-",
  16,
  27.5,
  17,
  700,
  12.0,
  "16 Zoll",
  "16 inches",
  "29",
  "28 in",
  "1e1",
];

test("schema and reader agree on wheels", () => {
  for (const wheel of wheels) {
    const list = listOf({ ...good, wheel });
    assertAgreement(list, JSON.stringify(list), `wheel ${JSON.stringify(wheel)}`);
  }
});

test("schema and reader agree on what a list says of itself", () => {
  const facts = {
    format: ["saddlerule-catalogue", null, "saddlerule", "", 1, []],
    version: [1, null, 2, 0, -1, 1.5, "1", true, 1e308],
    title: ["Loan shed", "", null, 7, ["a"], "n".repeat(2000), "n".repeat(2001)],
    measured_on: [
      "2026-10-03",
      "2024-02-29",
      null,
      "2026-02-29",
      "2026-02-30",
      "2026-13-01",
      "3.10.2026",
      "2026-10",
      "",
      2026,
      "1899-12-31",
    ],
    units: ["mm", "cm", "in", null, "m", "CM", "inch", "", 1, true, ["cm"]],
    currency: ["EUR", null, "eur", "EURO", "", "\u20ac", 978],
    bikes: [null, {}, [], "A", 7, [{}], [good], [good, 7]],
    hall: [1, "n".repeat(2000), "n".repeat(2001), { a: ["n".repeat(2001)] }, { ["n".repeat(2001)]: 1 }],
    ["n".repeat(2001)]: [1],
  };
  const bike = { id: "A", saddle_lowest: "50 cm" };
  for (const [field, tried] of Object.entries(facts)) {
    for (const value of tried) {
      const list = { ...listOf(bike), [field]: value };
      assertAgreement(
        list,
        JSON.stringify(list),
        `${field.slice(0, 20)}: ${JSON.stringify(value).slice(0, 60)}`,
      );
    }
  }
  for (const list of [null, [], [listOf(bike)], "A", 7, {}, { units: "cm" }]) {
    assertAgreement(list, JSON.stringify(list), JSON.stringify(list));
  }
});

test("schema and reader agree on how many fields and bikes there may be", () => {
  const extra = (count) => Object.fromEntries(Array.from({ length: count }, (_, i) => [`x${i}`, i]));
  for (const count of [98, 99]) {
    const list = listOf({ id: "A", saddle_lowest: 50, ...extra(count) });
    assertAgreement(list, JSON.stringify(list), `a bike of ${count + 2} fields`);
  }
  for (const count of [97, 98]) {
    const list = listOf({ id: "A", saddle_lowest: 50 }, extra(count));
    assertAgreement(list, JSON.stringify(list), `a list of ${count + 3} fields`);
  }
  for (const count of [20_000, 20_001]) {
    const list = {
      units: "cm",
      bikes: Array.from({ length: count }, (_, id) => ({ id, saddle_lowest: 50 })),
    };
    assertAgreement(list, JSON.stringify(list), `a list of ${count} bikes`);
  }
});
