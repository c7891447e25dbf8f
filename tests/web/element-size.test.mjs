// What a club's page loads for <saddlerule-fit>: its scripts as a server packs them, and the engine as it is packed already.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { gzipSync } from "node:zlib";
import { elementFolder } from "../support/club-site.mjs";

/** In bytes. */
const largestElement = 200_000;

/** All that is loaded for a reader of English, once. */
const loaded = /^saddlerule-(fit|app|thread|unpacker|engine)\b/;
/** What is loaded besides for readers who come to the list, to Keep, to a card or to bikes side by side. */
const later = /^saddlerule-later\b/;

/** The element's files that match, each with its size as a server sends it. */
function sent(which) {
  return readdirSync(elementFolder)
    .filter((name) => which.test(name))
    .map((name) => {
      const content = readFileSync(join(elementFolder, name));
      return [name, Math.min(content.length, gzipSync(content, { level: 9 }).length)];
    });
}

test("script and engine of the element are at most 200 kB as a server sends them", (test) => {
  const sizes = sent(loaded);
  const postponed = sent(later);
  assert.equal(sizes.length, 5);
  assert.equal(postponed.length, 1);
  const whole = sizes.reduce((sum, [, size]) => sum + size, 0);
  const list = (files) => files.map(([name, size]) => `${name} ${size}`).join(", ");
  test.diagnostic(`${whole} bytes: ${list(sizes)}; when it is wanted: ${list(postponed)}`);
  assert.ok(whole <= largestElement, `${whole} bytes, ${whole - largestElement} too many: ${list(sizes)}`);
});

test("what every page loads at once is less than 1.5 kB, and what goes into a page with a frame less than 1 kB", () => {
  const packed = (name) => gzipSync(readFileSync(join(elementFolder, name)), { level: 9 }).length;
  assert.ok(packed("saddlerule-fit.js") < 1500);
  assert.ok(packed("saddlerule-frame.js") < 1000);
});
