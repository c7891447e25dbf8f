// The wasm module and its client: what goes in and out, and that nothing breaks it.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { openEngine } from "../../wasm-bindings/engine-client.js";
import { everyExchange, shed } from "../support/every-exchange.mjs";
import { openBuiltEngine, pageWasmFile, root, sample, wasmFile } from "../support/built-engine.mjs";
import { worded } from "../support/in-english.mjs";

const rider = { stage: "starting", readings: [{ on: "2026-11-20", inseam_mm: 495 }] };
const assess = { do: "assess", today: "2026-11-25", rider };

test("the module exports the functions of the list and imports nothing but four host calls", async () => {
  const module = await WebAssembly.compile(readFileSync(wasmFile));
  const listed = readFileSync(join(root, "wasm-bindings/exported-functions.txt"), "utf8").trim().split("\n");
  const exported = WebAssembly.Module.exports(module).map((entry) => entry.name);
  for (const name of listed) assert.ok(exported.includes(name.slice(1)), `${name} is exported`);
  assert.deepEqual(
    exported.filter((name) => name.startsWith("saddlerule_")).sort(),
    listed.map((name) => name.slice(1)).sort(),
  );
  const imported = WebAssembly.Module.imports(module).map((entry) => `${entry.module}.${entry.name}`);
  assert.deepEqual(imported.sort(), [
    "env.emscripten_notify_memory_growth",
    "env.saddlerule_may_go_on",
    "env.saddlerule_progress",
    "wasi_snapshot_preview1.proc_exit",
  ]);
});

test("a list stays loaded from call to call", async () => {
  const engine = await openBuiltEngine();
  const loaded = engine.ask({ do: "load" }, readFileSync(sample("loan-shed.json")));
  assert.ok(loaded.list.bikes >= 30);
  assert.equal(engine.ask(assess).bikes.length, loaded.list.bikes);
  assert.equal(engine.ask({ do: "list" }).bikes.length, loaded.list.bikes);
});

test("a file that cannot be read leaves the list as it was", async () => {
  const engine = await openBuiltEngine();
  engine.ask({ do: "load" }, readFileSync(sample("loan-shed.json")));
  const before = engine.ask(assess);
  for (const bytes of [
    new Uint8Array(0),
    new TextEncoder().encode('{"format": '),
    new Uint8Array([0x50, 0x4b, 3, 4, 0, 0]),
  ]) {
    const answer = engine.ask({ do: "load" }, bytes);
    assert.ok(worded(answer).error.problem.length > 10);
    assert.deepEqual(engine.ask(assess), before);
  }
});

test("a file of more than 8 MiB is refused by its size", async () => {
  const engine = await openBuiltEngine();
  const answer = engine.ask({ do: "load" }, new Uint8Array(9 * 1024 * 1024).fill(0x20));
  assert.equal(worded(answer).error.problem, "the file has 9 MiB; a list can have at most 8 MiB");
});

test("text of every script goes in and comes out unchanged", async () => {
  const engine = await openBuiltEngine();
  const name = "Leihrad 7 – grün 🚲 דו־גלגלי <b>&";
  const answer = engine.ask({
    ...assess,
    taped: [{ id: "x", name, saddle_lowest: 48, saddle_highest: 60 }],
    taped_units: "cm",
  });
  assert.equal(answer.bikes[0].name, name);
});

test("after an error the next call works", async () => {
  const engine = await openBuiltEngine();
  for (const request of [
    "",
    "nonsense",
    "[",
    "null",
    "{}",
    { do: "fly" },
    { do: "assess" },
    { ...assess, today: "soon" },
  ]) {
    assert.ok(engine.ask(request).error, JSON.stringify(request));
    assert.equal(engine.ask({ do: "about" }).error, undefined);
  }
});

test("half a letter in a request is a letter that cannot be read, and no fault of the request", async () => {
  const engine = await openBuiltEngine();
  engine.ask({ do: "load" }, readFileSync(sample("loan-shed.json")));
  const { rider: reader, error } = engine.ask({ ...assess, wants: { colour: "\ud800 red \udc00" } });
  assert.equal(error, undefined);
  assert.equal(reader.basis, "measured");
  assert.equal(engine.ask({ do: "entry", id: "L\ud83d" }).error.code, "request_bike_unknown");
  const whole = engine.ask({ do: "entry", id: "\\ud800 \u{1F6B2}" }).error;
  assert.equal(whole.figures.id, "\\ud800 \u{1F6B2}", "what only looks like one stays as it is");
});

test("an array of requests is answered by an array, each on its own", async () => {
  const engine = await openBuiltEngine();
  const answers = engine.ask([{ do: "about" }, { do: "fly" }, assess]);
  assert.equal(answers.length, 3);
  assert.equal(answers[0].error, undefined);
  assert.equal(answers[1].error.where, "do");
  assert.equal(answers[2].rider.basis, "measured");
});

test("two engines in one program know nothing of each other", async () => {
  const [one, other] = [await openBuiltEngine(), await openBuiltEngine()];
  one.ask({ do: "load" }, readFileSync(sample("loan-shed.json")));
  assert.equal(other.ask({ do: "list" }).list, null);
});

test("the page's engine answers all but `about` as the complete one does", async () => {
  const complete = await openBuiltEngine();
  const onPage = await openEngine(readFileSync(pageWasmFile));
  for (const { name, request } of everyExchange) {
    if (request.do === "about") continue;
    const file = "load compare merge".includes(request.do) ? Buffer.from(JSON.stringify(shed)) : undefined;
    assert.deepEqual(onPage.ask(request, file), complete.ask(request, file), name);
  }
  const { error } = onPage.ask({ do: "about" });
  assert.equal(error.code, "request_value_unknown");
  assert.equal(error.where, "do");
});
