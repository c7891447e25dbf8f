// What a family waits for on a slow line: the page as a server sends it.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { relative } from "node:path";
import test from "node:test";
import { pageFile } from "../support/open-page.mjs";
import { root, pageWasmFile } from "../support/built-engine.mjs";

/** In bytes, packed by the `gzip -9` that every server has. */
const largestPage = 380_000;

test("the page with its engine and all its languages is at most 380 kB as a server sends it", () => {
  const size = execFileSync("gzip", ["-9"], { input: readFileSync(pageFile) }).length;
  assert.ok(
    size <= largestPage,
    `${relative(root, pageFile)} is ${size} bytes packed, ${size - largestPage} more than ${largestPage}. ` +
      `Its engine is ${readFileSync(pageWasmFile).length} bytes of wasm. ` +
      "`node web/build.mjs --sizes` tells where the page's bytes are.",
  );
});
