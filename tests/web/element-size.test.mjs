// What a club's page loads for <saddlerule-fit>: its scripts as a server packs them, and the engine as it is packed already.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { gzipSync } from "node:zlib";
import { elementFolder } from "../support/club-site.mjs";

/**
 * In bytes. The aim was 260,000 before the element carried club day, years ahead, tags and spreadsheets: the engine alone is 198,000 now.
 */
const largestElement = 319_000;

/** All that is loaded for a reader of English, once. */
const loaded = /^saddlerule-(fit|app|thread|engine)\b/;

test("script and engine of the element are at most 319 kB as a server sends them", (test) => {
  const sizes = readdirSync(elementFolder)
    .filter((name) => loaded.test(name))
    .map((name) => {
      const content = readFileSync(join(elementFolder, name));
      return [name, Math.min(content.length, gzipSync(content, { level: 9 }).length)];
    });
  assert.equal(sizes.length, 4);
  const whole = sizes.reduce((sum, [, size]) => sum + size, 0);
  const list = sizes.map(([name, size]) => `${name} ${size}`).join(", ");
  test.diagnostic(`${whole} bytes: ${list}`);
  assert.ok(whole <= largestElement, `${whole} bytes, ${whole - largestElement} too many: ${list}`);
});

test("what every page loads at once is less than 1.6 kB, and what goes into a page with a frame less than 1 kB", () => {
  const packed = (name) => gzipSync(readFileSync(join(elementFolder, name)), { level: 9 }).length;
  assert.ok(packed("saddlerule-fit.js") < 1600);
  assert.ok(packed("saddlerule-frame.js") < 1000);
});
