// The door to the engine: one thing at a time, a fresh engine with the same list after a breakdown, a second one beside it.
// The engines here are stand-ins that hold a list of words.

import assert from "node:assert/strict";
import test from "node:test";
import { pageModule } from "../support/page-module.mjs";

const { engineDoor } = await pageModule("engine/engine-door.ts");
const { editedFile } = await pageModule("engine/list-history.ts");
const { latestWins } = await pageModule("engine/latest-wins.ts");

const bytes = (text) => new TextEncoder().encode(text);
/** Everything else that is ready goes first. */
const turn = () => new Promise((resolve) => setImmediate(resolve));
const noStop = () => new AbortController().signal;

/** Engines that are opened one after the other; each knows whether it was ended. */
function workshop() {
  const made = [];
  const open = async () => {
    let list = [];
    const engine = {
      ended: false,
      busy: 0,
      asked: [],
      async ask(request, file) {
        assert.equal(++engine.busy, 1, "asked before it had answered");
        engine.asked.push(request.do);
        await turn();
        --engine.busy;
        if (engine.ended) throw new Error("ended");
        switch (request.do) {
          case "load":
            if (file.length === 0) return { error: { code: "file_empty" } };
            list = new TextDecoder().decode(file).split(" ");
            return { bikes: list.length };
          case "edit":
            list = [...list, ...request.changes.map(({ add, repair_all }) => add ?? repair_all)];
            return { undo: [] };
          case "break":
            throw new Error("out of memory");
          default:
            return { list };
        }
      },
      end() {
        engine.ended = true;
      },
    };
    made.push(engine);
    return engine;
  };
  return { made, open };
}

test("an engine is opened when it is first asked, and asked one thing at a time", async () => {
  const { made, open } = workshop();
  const door = engineDoor(open);
  assert.equal(made.length, 0);
  const load = door.ask({ do: "load" }, bytes("a b"));
  const answers = await Promise.all([load, door.ask({ do: "list" }), door.ask({ do: "list" })]);
  assert.deepEqual(answers, [{ bikes: 2 }, { list: ["a", "b"] }, { list: ["a", "b"] }]);
  assert.equal(made.length, 1);
});

test("what breaks an engine is refused, and the next engine has the list, edits included", async () => {
  const { made, open } = workshop();
  const door = engineDoor(open);
  await door.ask({ do: "load" }, bytes("old"));
  await door.ask({ do: "load" }, bytes("a b"));
  await door.ask({ do: "edit", changes: [{ add: "c" }] });
  await door.ask({ do: "edit", changes: [{ add: "d" }, { add: "e" }] });
  const broken = door.ask({ do: "break" });
  const innocent = door.ask({ do: "list" });
  const { error } = await broken;
  assert.equal(error.code, "internal");
  assert.equal(error.figures.what, "out of memory");
  assert.deepEqual((await innocent).list, ["a", "b", "c", "d", "e"]);
  assert.equal(made.length, 2);
  assert.deepEqual(made[1].asked, ["load", "edit", "list"], "edits in a row are told as one");
});

test("repairs of a whole list, which are the first of their edit, stay so for the next engine", async () => {
  const { made, open } = workshop();
  const door = engineDoor(open);
  await door.ask({ do: "load" }, bytes("a"));
  await door.ask({ do: "edit", changes: [{ add: "b" }] });
  await door.ask({ do: "edit", changes: [{ repair_all: "slip_unit" }] });
  await door.ask({ do: "edit", changes: [{ add: "c" }] });
  await door.ask({ do: "break" });
  assert.deepEqual((await door.ask({ do: "list" })).list, ["a", "b", "slip_unit", "c"]);
  assert.deepEqual(made[1].asked, ["load", "edit", "edit", "list"]);
  const { edits, bytes: file } = editedFile(door.history());
  assert.deepEqual(edits, [[{ add: "b" }], [{ repair_all: "slip_unit" }, { add: "c" }]]);
  assert.deepEqual(file, bytes("a"));
});

test("a list that was merged is not one file and its edits", () => {
  const load = { request: { do: "load" }, file: bytes("a") };
  assert.deepEqual(editedFile([load]).edits, []);
  assert.equal(editedFile([load, { request: { do: "merge" }, file: bytes("b") }]), null);
  assert.equal(editedFile([{ request: { do: "new_list" } }]), null);
  assert.equal(editedFile([{ ...load, request: { do: "load", table_units: "in" } }]), null);
  assert.equal(editedFile([]), null);
});

test("a file that is refused is not told to the next engine", async () => {
  const { open } = workshop();
  const door = engineDoor(open);
  await door.ask({ do: "load" }, bytes("a"));
  assert.equal((await door.ask({ do: "load" }, bytes(""))).error.code, "file_empty");
  await door.ask({ do: "break" });
  assert.deepEqual((await door.ask({ do: "list" })).list, ["a"]);
});

test("a second engine takes the place of the first, which answers what it was asked and is ended", async () => {
  const { made, open } = workshop();
  const door = engineDoor(open);
  await door.ask({ do: "load" }, bytes("old"));
  let meanwhile;
  await door.beside(async (second) => {
    await second.ask({ do: "load" }, bytes("new"));
    meanwhile = door.ask({ do: "list" });
    return true;
  }, noStop());
  assert.deepEqual((await door.ask({ do: "list" })).list, ["new"]);
  assert.deepEqual((await meanwhile).list, ["old"]);
  while (!made[0].ended) await turn();
  assert.equal(made[1].ended, false);
});

test("a second engine that is not wanted is ended, and the first goes on", async () => {
  const { made, open } = workshop();
  const door = engineDoor(open);
  await door.ask({ do: "load" }, bytes("old"));
  await door.beside(async (second) => {
    await second.ask({ do: "load" }, bytes("new"));
    return false;
  }, noStop());
  assert.deepEqual((await door.ask({ do: "list" })).list, ["old"]);
  assert.deepEqual(
    made.map(({ ended }) => ended),
    [false, true],
  );
});

test("stopped in the middle, a second engine is ended at once and takes nobody's place", async () => {
  const { made, open } = workshop();
  const door = engineDoor(open);
  await door.ask({ do: "load" }, bytes("old"));
  const stopping = new AbortController();
  await door.beside(async (second) => {
    const loading = second.ask({ do: "load" }, bytes("new"));
    while (made[1] === undefined || made[1].busy === 0) await turn();
    stopping.abort();
    assert.equal((await loading).error.code, "internal");
    return true;
  }, stopping.signal);
  assert.equal(made[1].ended, true);
  assert.deepEqual((await door.ask({ do: "list" })).list, ["old"]);
});

test("of the questions that come up while one is being answered only the newest is asked", async () => {
  const { made, open } = workshop();
  const door = engineDoor(open);
  const delivered = [];
  const ask = latestWins(
    (question) => door.ask({ do: question }),
    (_, question) => delivered.push(question),
  );
  for (const question of ["one", "two", "three", "four"]) ask(question);
  while (delivered.length === 0) await turn();
  assert.deepEqual(made[0].asked, ["one", "four"]);
  assert.deepEqual(delivered, ["four"]);
});
