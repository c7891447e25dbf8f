// What a club's page loads for <saddlerule-fit>, before the first verdict and after it: each file as a server packs it, and the engine as it
// is packed already; and that no first screen says what comes later.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { gzipSync } from "node:zlib";
import { elementScripts } from "../../web/building/element.mjs";
import { isLater, textsInParts } from "../../web/building/element-texts.mjs";
import { elementFolder } from "../support/club-site.mjs";
import { usedTexts } from "../support/used-texts.mjs";

/** In bytes. */
const largest = {
  /** All that a reader of English loads before the first verdict. */
  first: 260_000,
  /** The words of another language, for the first screens. */
  firstWords: 5_000,
  /** The rest, and its words. */
  later: 71_000,
  laterWords: 12_500,
};

const packed = (name) => gzipSync(readFileSync(join(elementFolder, name)), { level: 9 }).length;

/** Of files whose names match, each with its size. */
const sizesOf = (names) =>
  readdirSync(elementFolder)
    .filter((name) => names.test(name))
    .map((name) => [name, packed(name)]);

test("what the element loads before its first verdict is at most 260 kB as a server sends it", (test) => {
  const sizes = sizesOf(/^saddlerule-(fit|app|shared|thread|engine)\b/);
  assert.equal(sizes.length, 5);
  const whole = sizes.reduce((sum, [, size]) => sum + size, 0);
  const list = sizes.map(([name, size]) => `${name} ${size}`).join(", ");
  test.diagnostic(`${whole} bytes: ${list}`);
  assert.ok(whole <= largest.first, `${whole} bytes, ${whole - largest.first} too many: ${list}`);
});

for (const [what, names, number, most] of [
  ["the words of its first screens in another language", /^saddlerule-words-/, 4, largest.firstWords],
  ["the script that comes later", /^saddlerule-later-[0-9a-f]+\.js/, 1, largest.later],
  ["the words that come later", /^saddlerule-later-words-/, 4, largest.laterWords],
])
  test(`${what}: at most ${most / 1000} kB`, (test) => {
    const sizes = sizesOf(names);
    assert.equal(sizes.length, number);
    test.diagnostic(sizes.map(([name, size]) => `${name} ${size}`).join(", "));
    for (const [name, size] of sizes) assert.ok(size <= most, `${name} is ${size} bytes`);
  });

test("what every page loads at once is less than 2 kB, and what goes into a page with a frame less than 1 kB", () => {
  assert.ok(packed("saddlerule-fit.js") < 2000);
  assert.ok(packed("saddlerule-frame.js") < 1000);
});

test("no first screen says a text that comes later", async () => {
  const none = { de: "", fr: "", es: "", nl: "" };
  const files = { engine: "", thread: "", words: none, laterWords: none };
  const scripts = await elementScripts(files, await textsInParts());
  const first = new Set(
    scripts.filter(({ stem }) => stem !== "later").flatMap(({ sources }) => sources.map(inWeb)),
  );
  assert.ok(first.has("screens/rack/the-rack.tsx"));
  assert.ok(!first.has("screens/club/club-day.tsx"));
  const said = usedTexts((place) => first.has(place));
  assert.ok(said.has("rider.title"));
  // Sentences about problems are looked up by code: which of them can come first, no compiler knows.
  assert.deepEqual([...said].filter((path) => isLater(path) && !path.startsWith("problems.w")).sort(), []);
});

/** The bundler names sources from where it was called. */
function inWeb(source) {
  return source.replace(/^(?:.*\/)?web\//, "");
}
