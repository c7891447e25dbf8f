// ask.mjs as scripts use it.

import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import test from "node:test";
import { askFromShell, root, sample } from "../support/built-engine.mjs";

const request = {
  do: "assess",
  today: "2026-11-25",
  rider: { stage: "starting", readings: [{ on: "2026-11-20", inseam_mm: 495, shoes: true }] },
};

test("one request is answered by one answer, exit 0", () => {
  const run = askFromShell(JSON.stringify(request), "--catalogue", sample("loan-shed.json"));
  assert.equal(run.status, 0, run.stderr);
  const answer = JSON.parse(run.stdout);
  assert.ok(answer.bikes.some((bike) => bike.verdict === "fits_now"));
});

test("an array is answered by an array; one refusal among them is exit 1", () => {
  const run = askFromShell(
    JSON.stringify([request, { do: "assess" }]),
    "--catalogue",
    sample("loan-shed.json"),
  );
  assert.equal(run.status, 1);
  const answers = JSON.parse(run.stdout);
  assert.equal(answers[0].error, undefined);
  assert.ok(answers[1].error.problem);
});

test("each request of a batch is answered, whatever is inside the requests", () => {
  const name = 'tricky ", [ ] { } \\" name';
  const odd = { ...request, taped: [{ id: "t", name, saddle_lowest: 48, saddle_highest: 60 }] };
  const run = askFromShell(` [ ${JSON.stringify(odd, null, 1)} ,{"do":"about"},\n${JSON.stringify(odd)}]\n`);
  assert.equal(run.status, 0, run.stdout);
  const answers = JSON.parse(run.stdout);
  assert.equal(answers.length, 3);
  assert.equal(answers[0].bikes[0].name, name);
  assert.deepEqual(answers[2], answers[0]);
  assert.ok(answers[1].version);
  assert.deepEqual(JSON.parse(askFromShell(" [ ] ").stdout), []);
});

test("an array that is broken, or holds an impossible figure, is refused as a whole or in its place", () => {
  const broken = askFromShell('[{"do":"about"},{"do":]');
  assert.equal(broken.status, 1);
  assert.ok(JSON.parse(broken.stdout).error.line);
  const impossible = askFromShell('[{"do":"about"},{"do":"forecast","months":1e999}]');
  assert.equal(impossible.status, 1);
  assert.ok(JSON.parse(impossible.stdout)[1].error);
});

test("a thousand riders in one batch are answered", () => {
  const riders = Array.from({ length: 1000 }, (_, i) => ({
    ...request,
    rider: { ...request.rider, readings: [{ on: "2026-11-20", inseam_mm: 400 + i / 4 }] },
  }));
  const run = askFromShell(JSON.stringify(riders), "--catalogue", sample("loan-shed.json"));
  assert.equal(run.status, 0, run.stderr);
  const answers = JSON.parse(run.stdout);
  assert.equal(answers.length, 1000);
  assert.ok(answers.every((answer) => answer.bikes.length === 40));
});

test("without a list there are no bikes, and the window and wheel sizes all the same", () => {
  const answer = JSON.parse(askFromShell(JSON.stringify(request)).stdout);
  assert.deepEqual(answer.bikes, []);
  assert.equal(answer.rider.wheel_sizes[0].from, "common_practice");
});

test("a request that is not JSON is refused with its position, exit 1", () => {
  const run = askFromShell('{"do": "about",\n "x": }');
  assert.equal(run.status, 1);
  const { error } = JSON.parse(run.stdout);
  assert.equal(error.line, 2);
  assert.equal(error.column, 7);
});

test("a list that cannot be loaded is the answer, exit 1", () => {
  const run = askFromShell(JSON.stringify([request, request]), "--catalogue", sample("broken/cut-off.json"));
  assert.equal(run.status, 1);
  const answers = JSON.parse(run.stdout);
  assert.equal(answers.length, 2);
  assert.ok(answers[0].error.line >= 1);
});

test("a load among the requests says what was set aside", () => {
  const run = askFromShell('{"do":"load"}', "--catalogue", sample("every-mistake.json"));
  assert.equal(run.status, 0);
  assert.ok(JSON.parse(run.stdout).set_aside.length > 5);
});

test("wrong usage is exit 2, with the usage on standard error", () => {
  for (const args of [
    ["--catalog", "x"],
    ["--catalogue", "/no/such/file"],
    ["surplus"],
    ["--wasm", "/no/such/file"],
  ]) {
    const run = askFromShell("{}", ...args);
    assert.equal(run.status, 2, args.join(" "));
    assert.match(run.stderr, /usage: node ask\.mjs/);
    assert.equal(run.stdout, "");
  }
});

test("it ends quietly when whoever reads its answers goes away", async () => {
  const batch = JSON.stringify(Array.from({ length: 2000 }, () => ({ do: "about" })));
  const asking = spawn(process.execPath, [join(root, "wasm-bindings/ask.mjs")], {
    stdio: ["pipe", "pipe", "pipe"],
  });
  let complaint = "";
  asking.stderr.on("data", (said) => (complaint += said));
  // It may be gone before it has read all of the batch.
  asking.stdin.on("error", () => undefined);
  asking.stdin.end(batch);
  await once(asking.stdout, "data");
  asking.stdout.destroy();
  const [status, signal] = await once(asking, "close");
  assert.deepEqual([status, signal, complaint], [0, null, ""]);
});

test("--help prints the usage and exits 0", () => {
  const run = askFromShell("", "--help");
  assert.equal(run.status, 0);
  assert.match(run.stdout, /--catalogue FILE/);
});
