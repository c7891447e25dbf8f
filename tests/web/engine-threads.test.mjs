// Threads with several engines in them: where the next engine goes, what ends with what, and a worker that never starts.
// The workers here are stand-ins that answer as engine-thread.ts does.

import assert from "node:assert/strict";
import test from "node:test";
import { pageModule } from "../support/page-modules.mjs";
import { virtualTime } from "../support/virtual-time.mjs";
import { workers } from "../support/stand-in-workers.mjs";

const { engineThreads } = await pageModule("engine/engine-threads.ts");

const pass = virtualTime();

const opened = () => {
  const { made, start } = workers();
  const threads = engineThreads(start, (thread) => thread.make({}));
  return { made, threads };
};

const told = (worker, engine) => worker.told.filter((message) => message.engine === engine);

test("engines in use share a thread, each under its own number", async () => {
  const { made, threads } = opened();
  const engines = await Promise.all([threads.open(false), threads.open(false), threads.open(false)]);
  const answers = await Promise.all(engines.map((engine) => engine.ask({ do: "list" })));
  assert.deepEqual(
    answers.map(({ worker, engine }) => [worker, engine]),
    [
      [0, 1],
      [0, 2],
      [0, 3],
    ],
  );
  engines.forEach((engine) => engine.end());
  assert.ok(made[0].ended, "a thread ends with its last engine");
});

test("an engine that is to work apart gets a thread of its own, and never a third one", async () => {
  const { made, threads } = opened();
  const first = await threads.open(false);
  assert.equal(made.length, 1, "nothing is started before it is wanted");
  const second = await threads.open(true);
  const third = await threads.open(true);
  assert.equal((await second.ask({ do: "list" })).worker, 1);
  assert.ok((await third.ask({ do: "list" })).worker < 2);
  assert.equal(made.length, 2);
  first.end();
  third.end();
  second.end();
  assert.ok(
    made.every(({ ended }) => ended),
    "a thread ends with its last engine",
  );
});

test("an engine that is ended takes what it was asked with it, and leaves the others of its thread", async () => {
  const { made, threads } = opened();
  const [one, other] = [await threads.open(false), await threads.open(false)];
  const waiting = one.ask({ do: "wait" });
  one.end();
  await assert.rejects(waiting, /ended/);
  assert.ok(told(made[0], 1).some((message) => message.ended === true));
  assert.equal((await other.ask({ do: "list" })).engine, 2);
});

test("an engine that fails is gone, and the others of its thread go on", async () => {
  const { made, threads } = opened();
  const [one, other] = [await threads.open(false), await threads.open(false)];
  await assert.rejects(one.ask({ do: "break" }), /unreachable/);
  assert.equal((await other.ask({ do: "list" })).engine, 2);
  assert.equal(made[0].ended, false);
  other.end();
  assert.ok(made[0].ended);
});

test("a worker that breaks takes all its engines with it, and the next engine gets another one", async () => {
  const { made, threads } = opened();
  const [one, other] = [await threads.open(false), await threads.open(false)];
  const waiting = [one, other].map((engine) => engine.ask({ do: "wait" }));
  made[0].onerror({ message: "broken", preventDefault: () => undefined });
  for (const answer of waiting) await assert.rejects(answer, /broken/);
  await pass(10);
  const next = await threads.open(false);
  assert.equal((await next.ask({ do: "list" })).worker, made.length - 1);
});
