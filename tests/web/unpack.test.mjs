// What xz packs, the page unpacks: the format is judged by the program that is known for it.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import test, { after } from "node:test";
import { wasmFile, root } from "../support/built-engine.mjs";

const { build } = createRequire(join(root, "web/package.json"))("esbuild");
const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
after(() => rmSync(folder, { recursive: true }));
const outfile = join(folder, "unpack.mjs");
await build({ entryPoints: [join(root, "web/page/unpack.ts")], bundle: true, format: "esm", outfile });
const { unpack } = await import(pathToFileURL(outfile).href);

function packed(bytes, filter = "preset=9e") {
  const options = ["--format=lzma", `--lzma1=${filter}`, "--stdout"];
  const result = execFileSync("xz", options, { input: bytes, maxBuffer: 64 * 1024 * 1024 });
  result.writeBigUInt64LE(BigInt(bytes.length), 5); // xz leaves the length open
  return result;
}

function comesBack(bytes, filter) {
  assert.ok(Buffer.from(bytes).equals(unpack(packed(bytes, filter))));
}

/** Bytes without any order, the same in every run (xorshift32, Marsaglia 2003). */
function disorder(count, seed = 2463534242) {
  let state = seed;
  return Uint8Array.from({ length: count }, () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return state & 0xff;
  });
}

const words = readFileSync(join(root, "web/texts/en.ts"));

test("the engine comes back as it was packed", () => comesBack(readFileSync(wasmFile)));

test("text comes back however it was packed", () => {
  for (const filter of [
    "lc=0,lp=0,pb=0",
    "lc=3,lp=0,pb=2",
    "lc=0,lp=4,pb=4",
    "lc=4,lp=0,pb=0",
    "lc=1,lp=2,pb=1",
  ])
    comesBack(words, `preset=6,${filter}`);
});

test("bytes without order come back, and so do none and one", () => {
  for (const count of [0, 1, 2, 300, 70_000]) comesBack(disorder(count));
});

test("a byte that goes on repeating comes back", () => comesBack(new Uint8Array(100_000).fill(7)));

test("what repeats from near and far comes back", () => {
  // Every size of distance that has a form of its own in the format, and pieces of every form of length.
  const far = disorder(600_000);
  const pieces = [far];
  for (const distance of [1, 2, 3, 4, 7, 60, 127, 128, 500, 20_000, 70_000, 300_000, 590_000]) {
    for (const length of [2, 3, 9, 17, 18, 100, 273, 274, 1000])
      pieces.push(far.slice(far.length - distance, far.length - distance + length));
  }
  comesBack(Buffer.concat(pieces));
});

test("what is no packed text is refused", () => {
  assert.throws(() => unpack(new Uint8Array(5)));
  const damaged = packed(words);
  damaged.fill(0xff, 13, 18);
  assert.throws(() => unpack(damaged), /damaged/);
});
