// The examples of wasm-bindings/README.md are asked, and what it shows of each answer is in the answer.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { openBuiltEngine, root } from "../support/built-engine.mjs";

const text = readFileSync(join(root, "wasm-bindings/README.md"), "utf8");
const blocks = [...text.matchAll(/^```(json|csv)\n(.*?)\n```$/gms)].map(([, form, content]) => ({
  form,
  content,
}));
const list = new TextEncoder().encode(blocks[0].content);
const table = new TextEncoder().encode(`${blocks.find(({ form }) => form === "csv").content}\n`);
const examples = blocks
  .map(({ content }, place) => ({ request: content, answer: blocks[place + 1]?.content }))
  .filter(({ request }) => request.startsWith('{ "do"'));

/** Every field and item that is shown is there, in its place. */
function assertHolds(answer, shown, path) {
  if (typeof shown !== "object" || shown === null) {
    assert.equal(answer, shown, path);
    return;
  }
  assert.equal(Array.isArray(answer), Array.isArray(shown), path);
  for (const [name, value] of Object.entries(shown)) {
    assert.ok(name in answer, `${path}.${name}`);
    assertHolds(answer[name], value, `${path}.${name}`);
  }
}

for (const { request, answer } of examples) {
  const task = JSON.parse(request).do;
  test(`the example of ${task}`, async () => {
    const engine = await openBuiltEngine();
    engine.ask({ do: "load" }, list);
    assertHolds(engine.ask(request, task === "load" ? list : table), JSON.parse(answer), task);
  });
}

test("every task has an example", async () => {
  const { requests } = (await openBuiltEngine()).ask({ do: "about" });
  assert.deepEqual([...new Set(examples.map(({ request }) => JSON.parse(request).do))], requests);
});
