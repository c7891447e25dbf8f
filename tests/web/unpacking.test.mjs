// What 7-Zip packs with PPMd, the page unpacks: the format is judged by the program that is known for it.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { builtUnpacker } from "../../web/building/places.mjs";
import { packedPiece, packedText } from "../../web/building/packing.mjs";
import { root, wasmFile } from "../support/built-engine.mjs";
import { pageModule } from "../support/page-module.mjs";

const { unpack, unpackText } = await pageModule("page/unpacking.ts");
const wasm = readFileSync(builtUnpacker);
const { instance } = await WebAssembly.instantiate(wasm);

const headerBytes = 9;

function comesBack(bytes, order) {
  const packed = Uint8Array.from(packedPiece(Buffer.from(bytes), order));
  const [unpacked, ...more] = unpack(instance, packed);
  assert.ok(Buffer.from(unpacked).equals(bytes));
  assert.equal(more.length, 0);
  return packed;
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

test("text comes back at every order, in a third of its room", () => {
  for (const order of [2, 3, 4, 5, 6, 8]) {
    const packed = comesBack(words, order);
    assert.equal(packed[0], order, "at the order that was asked for");
    assert.ok(packed.length < words.length / 3, `order ${order}: ${packed.length} of ${words.length}`);
  }
});

test("the engine comes back as it is, too", () => comesBack(readFileSync(wasmFile), 6));

test("bytes without order come back, and so do none and one", () => {
  for (const count of [0, 1, 2, 300, 20_000]) for (const order of [2, 4]) comesBack(disorder(count), order);
});

test("a byte that goes on repeating comes back, and so do two and many in turn", () => {
  comesBack(new Uint8Array(100_000).fill(7), 16);
  comesBack(
    Uint8Array.from({ length: 100_000 }, (_, i) => i % 2),
    16,
  );
  comesBack(
    Uint8Array.from({ length: 100_000 }, (_, i) => (i * i) >> 7),
    16,
  );
});

test("counts that grow until they are halved come back", () => {
  // Few bytes, of which now one and now another is frequent: each context meets its own hundreds of times.
  const chances = disorder(200_000, 7);
  const bytes = chances.map((chance, i) => (chance < 200 ? (i >> 12) & 15 : chance & 15));
  for (const order of [2, 3, 5]) comesBack(bytes, order);
});

test("where 7-Zip forgets what it learnt, it packs at a lower order", () => {
  // It gives itself a megabyte for so little, which fills up at high orders.
  const bytes = Buffer.concat([disorder(9000), disorder(9000), words]);
  const packed = comesBack(bytes, 32);
  assert.ok(packed[0] < 32, `order ${packed[0]}`);
});

test("pieces come back in turn, each for itself", () => {
  const pieces = [words, Buffer.alloc(0), Buffer.from("Sattel")];
  const packed = Buffer.concat(pieces.map((piece, place) => packedPiece(piece, 4 + place)));
  const unpacked = unpack(instance, Uint8Array.from(packed));
  assert.deepEqual(
    unpacked.map((piece) => Buffer.from(piece).toString()),
    pieces.map(String),
  );
});

test("a text comes back with letters of any alphabet", async () => {
  const text = "Schrittlänge 49,5 cm – entrejambe – 鞍 🚲\0";
  assert.equal(await unpackText(wasm, Uint8Array.from(packedText(text))), text);
});

test("what is plainly damaged is refused, and the next one comes back", () => {
  assert.throws(() => unpack(instance, new Uint8Array(5)), RangeError);

  const packed = Uint8Array.from(packedPiece(words, 6));
  const longerThanRoom = packed.slice();
  new DataView(longerThanRoom.buffer).setUint32(1, 1 << 20, true);
  assert.throws(() => unpack(instance, longerThanRoom), /damaged/);

  const allSet = packed.slice();
  allSet.fill(0xff, headerBytes);
  assert.throws(() => unpack(instance, allSet), /damaged/);

  comesBack(words, 6);
});
