// Filter counts over the wire: what the answer says before a value is chosen is what the answer has once it is chosen.

import assert from "node:assert/strict";
import test from "node:test";
import { openBuiltEngine } from "../support/built-engine.mjs";
import { makeList } from "../support/make-list.mjs";

const today = "2026-11-25";
const rider = { stage: "starting", readings: [{ on: today, inseam_mm: 495, shoes: true }] };
const taped = [{ id: "T", name: "Taped", kind: "balance", saddle_lowest: "30 cm", price: 20, mass_kg: 3 }];

const list = makeList(200);
for (const [place, bike] of list.bikes.entries()) {
  if (place % 5 === 0) bike.kind = "balance";
  if (place % 7 === 0) delete bike.brakes;
  if (place % 11 === 0) delete bike.gears;
  if (place % 13 === 0) delete bike.mass_kg;
}

async function shed() {
  const engine = await openBuiltEngine();
  engine.ask({ do: "load" }, new TextEncoder().encode(JSON.stringify(list)));
  return (wants, more = {}) =>
    engine.ask({ do: "assess", today, rider, wants, taped, taped_units: "cm", detail: "brief", ...more });
}

/** Every value of every filter: the wishes with it, or without the filter, and the number that was said. */
function* offered(wants, counts) {
  const without = (...names) =>
    Object.fromEntries(Object.entries(wants).filter(([name]) => !names.includes(name)));
  const massless = without("max_mass_kg", "max_mass");
  for (const name of ["max_price", "brakes", "kind", "gears", "available_only", "wheel", "colour"])
    yield [without(name), counts[name].any];
  yield [massless, counts.max_mass.any];
  for (const name of ["brakes", "kind", "gears"])
    for (const [value, bikes] of Object.entries(counts[name])) yield [{ ...wants, [name]: value }, bikes];
  yield [{ ...wants, available_only: true }, counts.available_only.available];
  for (const { limit, bikes } of counts.max_price.limits) yield [{ ...wants, max_price: limit }, bikes];
  for (const { limit, bikes } of counts.max_mass.limits_kg)
    yield [{ ...massless, max_mass_kg: limit }, bikes];
  for (const { limit, bikes } of counts.max_mass.limits_lb)
    yield [{ ...massless, max_mass: `${limit} lb` }, bikes];
  for (const { nominal_in: wheel, bikes } of counts.wheel.sizes) yield [{ ...wants, wheel }, bikes];
  for (const { colour, bikes } of counts.colour.colours) yield [{ ...wants, colour }, bikes];
}

for (const wants of [
  {},
  { brakes: "two_hand" },
  { max_price: 150, gears: "single" },
  { kind: "balance", available_only: true, colour: "RED" },
  { wheel: 28, max_mass_kg: 8 },
]) {
  test(`what is said of every value is what it leaves, beside ${JSON.stringify(wants)}`, async () => {
    const ask = await shed();
    const { filter_counts: counts } = ask(wants);
    let values = 0;
    for (const [chosen, bikes] of offered(wants, counts)) {
      assert.equal(ask(chosen).bikes.length, bikes, JSON.stringify(chosen));
      ++values;
    }
    assert.ok(values > 35, `${values} values`);
  });
}

test("the counts come with every part of an answer, and are the same whatever part is asked for", async () => {
  const ask = await shed();
  const wants = { gears: "several", max_price: 120 };
  const { filter_counts: counts } = ask(wants);
  for (const more of [{ rows: { from: 3, count: 2 } }, { detail: "spans" }, { detail: "full", only: ["T"] }])
    assert.deepEqual(ask(wants, more).filter_counts, counts);
});

test("what is chosen is among what is offered, spelled as it was asked for", async () => {
  const { wheel, colour } = (await shed())({ wheel: 28, colour: "Sea green" }).filter_counts;
  assert.deepEqual(wheel.sizes.at(-1), { nominal_in: 28, bikes: 0 });
  assert.deepEqual(colour.colours.at(-1), { colour: "Sea green", bikes: 0 });
  assert.equal(colour.more_colours, 0);
});

test("without a list there is nothing to choose from", async () => {
  const engine = await openBuiltEngine();
  const { filter_counts: counts } = engine.ask({ do: "assess", today, rider });
  assert.deepEqual(counts.wheel, { any: 0, sizes: [] });
  assert.deepEqual(counts.colour, { any: 0, colours: [], more_colours: 0 });
  assert.deepEqual(counts.max_price, { any: 0, limits: [] });
});
