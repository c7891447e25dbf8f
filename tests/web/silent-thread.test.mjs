// A thread that says nothing any more: after 20 s it is taken for dead, and a fresh one is asked. The seconds are the test's own.

import assert from "node:assert/strict";
import test from "node:test";
import { pageModule } from "../support/page-modules.mjs";
import { virtualTime } from "../support/virtual-time.mjs";
import { workers } from "../support/stand-in-workers.mjs";

const { engineDoor, engineThreads } = await pageModule("engine/engine-threads.ts", "engine/engine-door.ts");

const pass = virtualTime();

const opened = () => {
  const { made, start } = workers();
  return { made, threads: engineThreads(start, (thread) => thread.make({ module: {} })) };
};

test("a thread that says nothing for 20 s is ended, and what it was asked is asked of a fresh one, with the list", async () => {
  const { made, threads } = opened();
  const door = engineDoor((apart) => threads.open(apart));
  await door.ask({ do: "load" }, new Uint8Array(1));
  const other = await threads.open(false);
  let answered = null;
  // The first worker never answers this.
  const asking = door.ask({ do: "wait" }).then((answer) => (answered = answer));
  await pass(19_000);
  assert.equal(made[0].ended, false);
  assert.equal(answered, null);
  await pass(1_000);
  assert.equal(made[0].ended, true);
  const requests = ({ told }) => told.flatMap(({ request }) => request?.do ?? []);
  const second = made.slice(1).find((worker) => requests(worker).includes("wait"));
  assert.deepEqual(requests(second).slice(-2), ["load", "wait"]);
  await assert.rejects(other.ask({ do: "list" }), "the other engine of that thread is gone too");
  await pass(20_000);
  await asking;
  assert.equal(answered.error.code, "internal", "asked twice in vain");
});

test("a thread that says how far it is may take as long as it likes", async () => {
  const { made, threads } = opened();
  const engine = await threads.open(false);
  const heard = [];
  const asking = engine.ask({ do: "wait" }, undefined, (done) => heard.push(done));
  for (let turn = 1; turn <= 4; ++turn) {
    await pass(15_000);
    made[0].onmessage({ data: { engine: 1, progress: { done: turn, total: 4 } } });
  }
  assert.equal(made[0].ended, false);
  made[0].onmessage({ data: { engine: 1, answer: { text: "at last" } } });
  assert.deepEqual(await asking, { text: "at last" });
  await pass(60_000);
  assert.equal(made[0].ended, false, "nothing is asked, so nothing has to be said");
  assert.deepEqual(heard, [1, 2, 3, 4]);
});
