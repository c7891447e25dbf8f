// The sample files through the built engine: what loads, what is set aside and what is refused, with code and place.
// The table is catalogue-samples/broken/expected.json.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { openBuiltEngine, sample } from "../support/built-engine.mjs";

const engine = await openBuiltEngine();
const table = JSON.parse(readFileSync(sample("broken/expected.json"), "utf8"));

const place = ({ code, where, line = null, column = null, row = null, column_name = null }) => ({
  code,
  where,
  line,
  column,
  row,
  column_name,
});
const places = (expected) =>
  expected.map((entry) => ({ ...(entry.number && { number: entry.number }), ...place(entry) }));
const placeInList = (entry) => ({ number: entry.number, ...place(entry) });

for (const { file, refused, bikes, set_aside, notes } of table) {
  test(`${file} is ${refused ? `refused: ${refused.code}` : "read"}`, () => {
    const answer = engine.ask({ do: "load" }, readFileSync(sample(file)));
    if (refused) {
      assert.deepEqual(place(answer.error), place(refused));
      return;
    }
    assert.equal(answer.error, undefined);
    assert.equal(answer.list.bikes, bikes);
    assert.deepEqual(answer.set_aside.map(placeInList), places(set_aside));
    assert.deepEqual(answer.notes.map(place), places(notes));
  });
}

test("a file that is refused leaves the list that was loaded before", () => {
  engine.ask({ do: "load" }, readFileSync(sample("loan-shed.json")));
  for (const { file, refused } of table) {
    if (!refused) continue;
    engine.ask({ do: "load" }, readFileSync(sample(file)));
    assert.equal(engine.ask({ do: "list" }).list.title, "Loan shed, autumn list", file);
  }
});
