// ask.mjs as scripts use it.

import assert from "node:assert/strict";
import test from "node:test";
import { askFromShell, sample } from "../support/built-engine.mjs";

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
  const run = askFromShell(JSON.stringify([request, { do: "assess" }]), "--catalogue", sample("loan-shed.json"));
  assert.equal(run.status, 1);
  const answers = JSON.parse(run.stdout);
  assert.equal(answers[0].error, undefined);
  assert.ok(answers[1].error.problem);
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
  for (const args of [["--catalog", "x"], ["--catalogue", "/no/such/file"], ["surplus"], ["--wasm", "/no/such/file"]]) {
    const run = askFromShell("{}", ...args);
    assert.equal(run.status, 2, args.join(" "));
    assert.match(run.stderr, /usage: node ask\.mjs/);
    assert.equal(run.stdout, "");
  }
});

test("--help prints the usage and exits 0", () => {
  const run = askFromShell("", "--help");
  assert.equal(run.status, 0);
  assert.match(run.stdout, /--catalogue FILE/);
});
