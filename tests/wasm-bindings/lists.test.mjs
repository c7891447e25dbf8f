// Lists over the wire: looking through, editing with undo, slips and their repair, comparing, merging, saving.

import assert from "node:assert/strict";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after as afterAll, test } from "node:test";
import { makeList } from "../support/make-list.mjs";
import { askFromShell, openBuiltEngine, sample } from "../support/built-engine.mjs";

const bytes = (list) => new TextEncoder().encode(typeof list === "string" ? list : JSON.stringify(list));
const rows = { from: 0, count: 100 };
const ids = ({ entries }) => entries.map(({ id }) => id);

const three = {
  title: "Three",
  units: "cm",
  currency: "EUR",
  bikes: [
    { id: "A", name: "Grün und groß", wheel: "16", saddle_lowest: 49.5, colours: ["green"] },
    { id: "B", saddle_lowest: 495 },
    { id: "C", name: "Red", wheel: "16", saddle_lowest: 52, saddle_highest: 52, colours: ["red", "green"] },
  ],
};

const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
afterAll(() => rmSync(folder, { recursive: true }));

function writtenTable(text) {
  const file = join(folder, "list.txt");
  writeFileSync(file, text);
  return file;
}

async function engineWith(list) {
  const engine = await openBuiltEngine();
  const loaded = engine.ask({ do: "load", rows }, bytes(list));
  assert.equal(loaded.error, undefined);
  return engine;
}

test("a list is looked through by rows, with what surrounds them", async () => {
  const engine = await engineWith(three);
  const answer = engine.ask({ do: "list", rows: { from: 1, count: 1 } });
  assert.deepEqual(answer.list, {
    title: "Three",
    measured_on: null,
    units: "cm",
    currency: "EUR",
    bikes: 2,
    entries: 3,
    form: "json",
  });
  assert.deepEqual(answer.counts, { entries: 3, bikes: 2, set_aside: 1, slips: 2, shown: 3 });
  assert.deepEqual(answer.offers, {
    wheels: [{ nominal_in: 16, count: 2 }],
    colours: [
      { colour: "green", count: 2 },
      { colour: "red", count: 1 },
    ],
  });
  assert.deepEqual(answer.heights_mm, { lowest: 495, highest: 520 });
  assert.deepEqual(answer.slip_kinds, [
    { code: "slip_unit", count: 1 },
    { code: "slip_span_narrow", count: 1 },
  ]);
  assert.deepEqual(ids(answer), ["B"]);
  assert.equal(answer.entries[0].problem.code, "bike_figure_out_of_range");
  assert.deepEqual(answer.entries[0].slips[0].changes, [{ set: { saddle_lowest: "495 mm" }, number: 2 }]);
});

test("rows are narrowed to what is shown and what is searched for, in whatever case", async () => {
  const engine = await engineWith(three);
  const shown = (request) => ids(engine.ask({ do: "list", rows, ...request }));
  assert.deepEqual(shown({ show: "bikes" }), ["A", "C"]);
  assert.deepEqual(shown({ show: "set_aside" }), ["B"]);
  assert.deepEqual(shown({ show: "slips" }), ["B", "C"]);
  assert.deepEqual(shown({ find: "GRÜN" }), ["A"]);
  assert.deepEqual(shown({ find: "green" }), ["A", "C"]);
  assert.deepEqual(shown({ find: "495" }), ["B"]);
  assert.deepEqual(shown({ find: "nothing like it" }), []);
});

test("without a list every answer about lists is an empty one", async () => {
  const engine = await openBuiltEngine();
  assert.equal(engine.ask({ do: "list", rows }).list, null);
  assert.deepEqual(engine.ask({ do: "list", rows }).entries, []);
  assert.equal(engine.ask({ do: "entry", number: 1 }).error.code, "request_bike_unknown");
  assert.equal(engine.ask({ do: "check_entry", cells: { id: "A", saddle_lowest: "50 cm" } }).problem, null);
  assert.deepEqual(JSON.parse(engine.ask({ do: "save", form: "json" }).text).bikes, []);
});

test("a new list takes the place of the old one, and bikes come into it", async () => {
  const engine = await engineWith(three);
  const empty = engine.ask({ do: "new_list", title: "Barn", units: "in", currency: null, rows });
  assert.deepEqual(empty.counts, { entries: 0, bikes: 0, set_aside: 0, slips: 0, shown: 0 });
  assert.equal(empty.list.units, "in");
  const added = engine.ask({ do: "edit", rows, changes: [{ add: { id: "N", saddle_lowest: "19 1/2" } }] });
  assert.equal(added.entries[0].saddle_lowest_mm, 495.3);
  assert.equal(engine.ask({ do: "new_list", units: "ells" }).error.code, "file_value_unknown");
  assert.equal(engine.ask({ do: "list" }).list.title, "Barn");
});

test("an entry is told as cells, found by its number or its id", async () => {
  const engine = await engineWith(three);
  const entry = engine.ask({ do: "entry", id: "C" });
  assert.equal(entry.number, 3);
  assert.deepEqual(entry.cells, {
    id: "C",
    name: "Red",
    wheel: "16",
    saddle_lowest: "52",
    saddle_highest: "52",
    colours: "red, green",
  });
  assert.equal(entry.bike.saddle_lowest_mm, 520);
  assert.equal(entry.source, JSON.stringify(three.bikes[2]));
  assert.equal(engine.ask({ do: "entry", number: 2 }).bike, null);
  assert.equal(entry.next_id, undefined);
  assert.equal(engine.ask({ do: "entry", number: 3, next_id: true }).next_id, null);
  for (const request of [{ number: 4 }, { number: 0 }, { id: "none" }, {}])
    assert.ok(engine.ask({ do: "entry", ...request }).error, JSON.stringify(request));
});

test("an entry is checked before it is in the list", async () => {
  const engine = await engineWith(three);
  const check = (cells, number) => engine.ask({ do: "check_entry", cells, number });
  assert.equal(check({ id: "D", saddle_lowest: "50" }).bike.saddle_lowest_mm, 500);
  assert.equal(check({ id: "A", saddle_lowest: "50" }).problem.code, "bike_id_given_twice");
  assert.equal(check({ saddle_lowest: "50" }, 1).problem, null); // its own id is no other bike's
  assert.equal(check({ id: "D", saddle_lowest: "forty" }).problem.code, "figure_not_a_number");
  assert.deepEqual(check({ id: "D", saddle_lowest: "19.5" }).slips[0].changes[0].set, {
    saddle_lowest: "19.5 in",
  });
  assert.deepEqual(engine.ask({ do: "list", rows }).counts.entries, 3);
});

test("an edit is undone and redone exactly", async () => {
  const engine = await engineWith(three);
  const state = () => [engine.ask({ do: "save", form: "json" }).text, engine.ask({ do: "list", rows })];
  const before = state();
  const changes = [
    { set: { saddle_lowest: "49,5 cm", brakes: "front hand, rear hand" }, number: 2 },
    { copy: 1 },
    { add: { name: "New", saddle_highest: "70" }, before: 1 },
    { remove: 4 },
    { list: { title: "Barn", currency: null, measured_on: "2026-11-25" } },
  ];
  const edited = engine.ask({ do: "edit", rows, changes });
  assert.deepEqual(ids(edited), ["New", "A", "A (2)", "C"]);
  assert.equal(edited.list.title, "Barn");
  const after = state();
  const undone = engine.ask({ do: "edit", rows, changes: edited.undo });
  assert.deepEqual(state(), before);
  engine.ask({ do: "edit", rows, changes: undone.undo });
  assert.deepEqual(state(), after);
});

test("of an edit with a fault nothing is done, and the fault is told by its path", async () => {
  const engine = await engineWith(three);
  const good = { set: { name: "Changed" }, number: 1 };
  const faults = [
    [{ remove: 4 }, "changes[1].remove", "request_value_out_of_range"],
    [{ set: { name: 7 }, number: 1 }, "changes[1].set.name", "request_field_wrong_type"],
    [{ set: { name: "x" } }, "changes[1].number", "request_field_missing"],
    [{ put: "{", number: 1 }, "changes[1].put", "json_cut_off"],
    [{ insert: { id: "A" } }, "changes[1].insert", "request_field_wrong_type"],
    [{ remove: 1, copy: 1 }, "changes[1].remove", "request_field_unknown"],
    [{ remove: 1, wish: 1 }, "changes[1].wish", "request_field_unknown"],
    [{}, "changes[1]", "request_field_missing"],
    [7, "changes[1]", "request_field_wrong_type"],
    [{ list: { units: "ells" } }, "changes[1].list.units", "file_value_unknown"],
    [{ list: { bikes: "x" } }, "changes[1].list.bikes", "request_field_unknown"],
    [{ repair_all: "slip_unit" }, "changes[1].repair_all", "request_value_unknown"],
  ];
  const before = engine.ask({ do: "save", form: "json" }).text;
  for (const [fault, where, code] of faults) {
    const { error } = engine.ask({ do: "edit", changes: [good, fault] });
    assert.deepEqual([error?.where, error?.code], [where, code], JSON.stringify(fault));
  }
  assert.equal(engine.ask({ do: "save", form: "json" }).text, before);
});

test("all slips of a kind are mended at once, and that is undone", async () => {
  const list = { units: "cm", bikes: [] };
  for (let i = 0; i < 30; ++i) list.bikes.push({ id: `B${i}`, saddle_lowest: i % 2 ? 50 : 500 });
  const engine = await engineWith(list);
  const mended = engine.ask({ do: "edit", rows, changes: [{ repair_all: "slip_unit" }] });
  assert.deepEqual(mended.counts, { entries: 30, bikes: 30, set_aside: 0, slips: 0, shown: 30 });
  assert.ok(mended.entries.every(({ saddle_lowest_mm }) => saddle_lowest_mm === 500));
  const undone = engine.ask({ do: "edit", rows, changes: mended.undo });
  assert.equal(undone.counts.set_aside, 15);
  assert.equal(undone.entries[0].problem.line, 1); // its place in the file is back as well
});

test("a merge takes what is wished, and is undone", async () => {
  const engine = await engineWith(three);
  const other = {
    units: "in",
    bikes: [
      { id: "A", wheel: "16", name: "Grün und groß", saddle_lowest: 20, colours: ["green"] },
      {
        id: "C",
        name: "Red",
        wheel: "16",
        saddle_lowest: "52 cm",
        saddle_highest: "520 mm",
        colours: ["red", "green"],
      },
      { id: "N", saddle_lowest: 19.5 },
      { id: "broken" },
    ],
  };
  const compared = engine.ask({ do: "compare" }, bytes(other));
  assert.equal(compared.same, 1);
  assert.equal(compared.only_here, 1);
  assert.deepEqual(compared.only_there, [{ number: 3, id: "N", name: null }]);
  assert.equal(compared.set_aside, 1);
  assert.deepEqual(
    compared.conflicts.map(({ id, differs, here, there }) => [
      id,
      differs,
      here.cells.saddle_lowest,
      there.cells.saddle_lowest,
    ]),
    [["A", ["saddle_lowest"], "49.5", "20 in"]],
  );
  const before = engine.ask({ do: "save", form: "json" }).text;
  const merged = engine.ask({ do: "merge", take: { A: "both" }, rows }, bytes(other));
  assert.deepEqual(ids(merged), ["A", "B", "C", "A (2)", "N"]);
  assert.equal(merged.entries[4].saddle_lowest_mm, 495.3);
  engine.ask({ do: "edit", changes: merged.undo });
  assert.equal(engine.ask({ do: "save", form: "json" }).text, before);
  assert.deepEqual(ids(engine.ask({ do: "merge", add: false, rows }, bytes(other))), ["A", "B", "C"]);
  assert.equal(
    engine.ask({ do: "merge", take: { A: "there" }, rows }, bytes(other)).entries[0].saddle_lowest_mm,
    508,
  );
  const refused = engine.ask({ do: "merge", take: { Z: "there" } }, bytes(other));
  assert.equal(refused.error.code, "request_bike_unknown");
});

test("a merge takes the newer bike, or fills gaps once and for all, and is undone", async () => {
  const mine = {
    units: "in",
    currency: "EUR",
    measured_on: "2026-03-01",
    bikes: [
      { id: "A", name: "Green", saddle_lowest: 19.5, notes: "bell" },
      { id: "B", saddle_lowest: 20, measured_on: "2026-11-20" },
      { id: "C", saddle_lowest: 21, measured_on: "in spring" },
    ],
  };
  const other = {
    units: "cm",
    currency: "GBP",
    measured_on: "2026-10-03",
    bikes: [
      { id: "A", saddle_lowest: 51, saddle_highest: 62, price: 80 },
      { id: "B", saddle_lowest: 52, condition: "used" },
      { id: "C", saddle_lowest: 53, notes: "new tyre" },
    ],
  };
  const engine = await engineWith(mine);
  const { conflicts } = engine.ask({ do: "compare" }, bytes(other));
  assert.deepEqual(
    conflicts.map(({ id, newer, fills, here, there }) => [
      id,
      newer,
      fills,
      here.measured_on,
      there.measured_on,
    ]),
    [
      ["A", "there", ["saddle_highest", "price_gbp"], "2026-03-01", "2026-10-03"],
      ["B", "here", ["condition"], "2026-11-20", "2026-10-03"],
      ["C", null, ["notes"], null, "2026-10-03"],
    ],
  );
  const saved = () => engine.ask({ do: "save", form: "json" }).text;
  const before = saved();
  const take = (way) => ({ A: way, B: way, C: way });
  const newer = engine.ask({ do: "merge", take: take("newer"), rows }, bytes(other));
  assert.equal(
    newer.list.measured_on,
    "2026-10-03",
    "no bike of the spring is left without a day of its own",
  );
  assert.deepEqual(JSON.parse(saved()).bikes, [
    {
      id: "A",
      name: "Green",
      saddle_lowest: "51 cm",
      saddle_highest: "62 cm",
      notes: "bell",
      price_gbp: 80,
    },
    mine.bikes[1],
    mine.bikes[2],
  ]);
  engine.ask({ do: "edit", changes: newer.undo });
  assert.equal(saved(), before);

  const filled = engine.ask({ do: "merge", take: take("fill"), rows }, bytes(other));
  assert.equal(filled.list.measured_on, "2026-03-01");
  assert.deepEqual(JSON.parse(saved()).bikes, [
    { ...mine.bikes[0], saddle_highest: "62 cm", price_gbp: 80 },
    { ...mine.bikes[1], condition: "used" },
    { ...mine.bikes[2], notes: "new tyre" },
  ]);
  const once = saved();
  assert.deepEqual(engine.ask({ do: "merge", take: take("fill"), rows }, bytes(other)).undo, []);
  assert.equal(saved(), once);
  engine.ask({ do: "edit", changes: filled.undo });
  assert.equal(saved(), before);
});

test("the one faulty cell of an entry is told as it is typed, and none where the fault is in no cell alone", async () => {
  const engine = await engineWith({
    units: "cm",
    bikes: [
      { id: "A", saddle_lowest: "forty", gears: "many" },
      { id: "B", saddle_lowest: 50, saddle_highest: 40 },
      { id: "C" },
      7,
      { id: "D", saddle_lowest: 50, brakes: ["front hand", "rope"] },
      { id: "Total", name: "total", saddle_lowest: 5000 },
      { id: "E", saddle_lowest: 50 },
    ],
  });
  const told = () => engine.ask({ do: "list", rows }).entries.map(({ to_mend }) => to_mend);
  const before = told();
  assert.deepEqual(before[0], { field: "saddle_lowest", text: "forty" });
  assert.deepEqual(before[1], { field: "saddle_highest", text: "40" });
  assert.deepEqual([before[2], before[3], before[6]], [null, null, null]);
  const set = { saddle_lowest: "40,5" };
  engine.ask({ do: "edit", rows, changes: [{ set, number: 1 }] });
  assert.notDeepEqual(told()[0], before[0]);
});

test("only what was set aside is saved when that is wished, and a table says what it cannot hold", async () => {
  const engine = await engineWith({ ...three, bikes: [...three.bikes, 7] });
  const aside = engine.ask({ do: "save", form: "json", only: "set_aside" });
  assert.deepEqual(JSON.parse(aside.text).bikes, [three.bikes[1], 7]);
  const table = engine.ask({ do: "save", form: "csv" });
  assert.equal(table.entries, 3);
  assert.deepEqual(
    table.left_out.map(({ number, code }) => [number, code]),
    [[4, "table_cannot_hold"]],
  );
  assert.ok(engine.ask({ do: "save" }).error);
  assert.ok(engine.ask({ do: "save", form: "xls" }).error);
});

test("the reader of a file is told how far it is", async () => {
  const engine = await openBuiltEngine();
  const file = bytes(makeList(2000));
  const told = [];
  engine.ask({ do: "load" }, file, (done, total) => told.push([done, total]));
  assert.ok(told.length > 3);
  assert.ok(told.every(([done, total]) => done <= total && total === file.length));
  assert.deepEqual(
    told.map(([done]) => done),
    told.map(([done]) => done).sort((a, b) => a - b),
  );
  engine.ask({ do: "load" }, file); // nobody is told what nobody asked
});

test("ask.mjs takes a table for a list, told by its content", () => {
  const table = "id,saddle lowest [cm]\r\nA,49.5\r\n";
  const engine = askFromShell('{"do":"list"}', "--catalogue", writtenTable(table));
  assert.equal(engine.status, 0);
  assert.equal(JSON.parse(engine.stdout).list.form, "table");
  assert.equal(JSON.parse(engine.stdout).bikes[0].saddle_lowest_mm, 495);
});

test("the samples have no slips", async () => {
  for (const name of ["loan-shed.json", "swap-morning.json"]) {
    const engine = await openBuiltEngine();
    const { counts } = engine.ask({ do: "load", rows, show: "slips" }, readFileSync(sample(name)));
    assert.equal(counts.slips, 0, name);
  }
});
