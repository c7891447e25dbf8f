// The same core built natively and as wasm answers the same bytes.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test from "node:test";
import { askNatively, openBuiltEngine, sample } from "../support/built-engine.mjs";

const today = "2026-11-25";
const reading = (on, inseam_mm, shoes = true) => ({ on, inseam_mm, shoes });

const riders = {
  "one reading": { stage: "starting", readings: [reading("2026-11-20", 495)] },
  "age and sex known, three readings": {
    stage: "side_wheels",
    confidence: "bold",
    born: "2021-09",
    sex: "girl",
    readings: [reading("2025-10-01", 452), reading("2026-11-20", 495), reading("2026-11-20", 478, false)],
  },
  "stature only": { stage: "riding", stature_mm: 1250, born: "2018-04-12", sex: "boy" },
  "age only": { stage: "gliding", born: "2023-06" },
  "nearly grown": { stage: "riding", born: "2011-02", readings: [reading("2026-05-01", 803)] },
};

for (const [name, rider] of Object.entries(riders)) {
  for (const list of ["loan-shed.json", "swap-morning.json", "every-mistake.json"]) {
    test(`${list}: ${name}`, async () => {
      const engine = await openBuiltEngine();
      const file = readFileSync(sample(list));
      engine.ask({ do: "load" }, file);
      const requests = [
        { do: "load" },
        { do: "list" },
        { do: "assess", today, rider },
        { do: "assess", today, rider, wants: { order: "closest", max_mass_kg: 9 } },
        { do: "assess", today, rider, detail: "brief", rows: { from: 3, count: 7 } },
        { do: "changes", today, rider, wants: { max_price: 100 } },
        { do: "forecast", today, rider, months: 60 },
        { do: "forecast", today, rider, months: 96, bike: engine.ask({ do: "list" }).bikes[0].id },
        { do: "side_view", today, rider, bike: engine.ask({ do: "list" }).bikes[0].id },
      ];
      const answers = engine.ask(requests, file);
      const native = askNatively(requests, sample(list));
      assert.deepEqual(answers, JSON.parse(native));
      for (const answer of answers) assert.equal(answer.error, undefined);
    });
  }
}

for (const list of ["loan-shed.json", "swap-morning.json", "every-mistake.json"]) {
  test(`${list}: looked through, edited, merged and saved`, async () => {
    const engine = await openBuiltEngine();
    const file = readFileSync(sample(list));
    const rows = { from: 0, count: 200 };
    const requests = [
      { do: "load", rows },
      { do: "list", rows: { from: 2, count: 3 }, show: "bikes", find: "two" },
      { do: "entry", number: 2 },
      {
        do: "check_entry",
        cells: { id: "new", saddle_lowest: "19.5", crank: "102", wheel: "16" },
        number: 1,
      },
      {
        do: "edit",
        rows,
        changes: [{ set: { saddle_lowest: "19 1/2 in", notes: 'ü, "x"' }, number: 1 }, { copy: 2 }],
      },
      { do: "edit", rows, changes: [{ repair_all: "slip_unit" }] },
      {
        do: "edit",
        rows,
        changes: [{ list: { units: "in", title: "Barn" } }, { add: { name: "n" } }, { remove: 3 }],
      },
      { do: "compare" },
      { do: "merge", rows },
      { do: "save", form: "json" },
      { do: "save", form: "csv", separator: ";", decimal: "," },
      { do: "new_list", units: "cm", rows },
    ];
    engine.ask({ do: "load" }, file);
    const answers = engine.ask(requests, file);
    assert.deepEqual(answers, JSON.parse(askNatively(requests, sample(list))));
    for (const answer of answers) assert.equal(answer.error, undefined);
  });
}
