// The samples with their lengths written in another unit than the list's, as one number each or all of them: every such
// bike is asked about, and its repair brings back what was measured. Both samples are held against their own figures.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { openBuiltEngine, sample } from "../support/built-engine.mjs";

const lengths = [
  "saddle_lowest",
  "saddle_highest",
  "standover",
  "lever_reach",
  "crank",
  "bottom_bracket_height",
];
const saddle = ["saddle_lowest", "saddle_highest"];
/** 25.4 mm are an inch (international yard and pound agreement, 1959). */
const millimetres = { mm: 1, cm: 10, in: 25.4 };
const mixUps = [
  { list: "cm", typed: "in" },
  { list: "cm", typed: "mm" },
  { list: "in", typed: "cm" },
  { list: "in", typed: "mm" },
  { list: "mm", typed: "cm" },
  { list: "mm", typed: "in" },
];
const typedSo = [lengths, saddle, ...lengths.map((length) => [length])];

const engine = await openBuiltEngine();
const given = (bike, length) => bike[`${length}_mm`] !== null;

function asTyped(bike, unitOf) {
  const entry = { id: bike.id, kind: bike.kind };
  if (bike.wheel) entry.wheel = bike.wheel.text;
  for (const length of lengths) {
    if (given(bike, length))
      entry[length] = Number((bike[`${length}_mm`] / millimetres[unitOf(length)]).toFixed(4));
  }
  return entry;
}

for (const name of ["loan-shed.json", "swap-morning.json"]) {
  engine.ask({ do: "load" }, readFileSync(sample(name)));
  const bikes = engine.ask({ do: "list" }).bikes;
  for (const { list, typed } of mixUps) {
    test(`${name}: ${typed} in a list in ${list}`, () => {
      for (const fields of typedSo) {
        const touched = (bike) => fields.some((length) => given(bike, length));
        engine.ask({ do: "new_list", units: list });
        const answer = engine.ask({
          do: "edit",
          rows: { from: 0, count: bikes.length },
          changes: bikes.map((bike) => ({
            insert: JSON.stringify(asTyped(bike, (length) => (fields.includes(length) ? typed : list))),
          })),
        });
        for (const { number, slips } of answer.entries) {
          const bike = bikes[number - 1];
          const what = `${fields} of ${bike.id}`;
          assert.deepEqual(
            slips.map(({ code }) => code),
            touched(bike) ? ["slip_unit"] : [],
            what,
          );
          if (!touched(bike)) continue;
          engine.ask({ do: "edit", changes: slips[0].changes });
          const mended = engine.ask({ do: "entry", number });
          assert.deepEqual(mended.slips, [], what);
          for (const length of lengths) {
            if (!given(bike, length)) continue;
            const apart = Math.abs(mended.bike[`${length}_mm`] - bike[`${length}_mm`]);
            assert.ok(apart < 0.11, `${what}: ${length} is ${apart} mm off`);
          }
        }
      }
    });
  }

  test(`${name}: lowest and highest the wrong way round`, () => {
    const both = bikes.filter((bike) => saddle.every((length) => given(bike, length)));
    engine.ask({ do: "new_list", units: "cm" });
    const answer = engine.ask({
      do: "edit",
      rows: { from: 0, count: both.length },
      changes: both.map((bike) => {
        const entry = asTyped(bike, () => "cm");
        [entry.saddle_lowest, entry.saddle_highest] = [entry.saddle_highest, entry.saddle_lowest];
        return { insert: JSON.stringify(entry) };
      }),
    });
    for (const { number, slips } of answer.entries) {
      assert.deepEqual(
        slips.map(({ code }) => code),
        ["slip_swapped"],
        both[number - 1].id,
      );
    }
    const mended = engine.ask({
      do: "edit",
      rows: { from: 0, count: both.length },
      changes: [{ repair_all: "slip_swapped" }],
    });
    assert.equal(mended.counts.set_aside, 0);
    assert.equal(mended.counts.slips, 0);
    for (const { number, saddle_lowest_mm } of mended.entries)
      assert.equal(saddle_lowest_mm, both[number - 1].saddle_lowest_mm);
  });
}
