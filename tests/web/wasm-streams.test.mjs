// The engine travels taken to pieces: put together it is the module that it was, byte for byte. The module made here by hand has
// what the binary format knows of immediates (https://www.w3.org/TR/wasm-core-2/#binary-instructions) and the engine may lack.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test from "node:test";
import { wasmFile } from "../support/built-engine.mjs";
import { pageModule } from "../support/page-module.mjs";

const { inStreams, fromStreams } = await pageModule("engine/wasm-streams.ts");

function comesBack(wasm) {
  const streams = inStreams(wasm);
  assert.ok(streams.filter(({ length }) => length > 0).length > 4, "was taken to pieces");
  assert.ok(Buffer.from(wasm).equals(fromStreams(streams)));
}

const number = (value) => (value < 0x80 ? [value] : [(value & 0x7f) | 0x80, ...number(value >> 7)]);
const sized = (bytes) => [...number(bytes.length), ...bytes];
const section = (id, bytes) => [id, ...sized(bytes)];

/** One function type () -> (), one function of `body`, a table, a memory and a global. */
function module(body) {
  return Uint8Array.of(
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, [1, 0x60, 0, 0]),
    ...section(3, [1, 0]),
    ...section(4, [1, 0x70, 0, 1]),
    ...section(5, [1, 0, 1]),
    ...section(6, [1, 0x7f, 1, 0x41, 0, 0x0b]),
    ...section(10, [1, ...sized(body)]),
    ...section(0, [...sized([0x61]), 1, 2, 3]),
  );
}

/** Locals 0 to 2 are i32, 3 is i64, 4 is f64. */
const variables = [3, 3, 0x7f, 1, 0x7e, 1, 0x7c];

test("the engine comes back as it was taken to pieces", () => {
  const wasm = readFileSync(wasmFile);
  comesBack(wasm);
});

test("every immediate comes back, and locals in any order", () => {
  const wasm = module([
    ...variables,
    ...[0x02, 0x40, 0x03, 0x40, 0x41, 0x00, 0x04, 0x40, 0x0c, 0x02, 0x05, 0x0b], // block, loop, if, br 2, else, end
    ...[0x41, 0xc0, 0xbb, 0x78, 0x0d, 0x01, 0x41, 0x01, 0x0e, 0x02, 0x00, 0x01, 0x00, 0x0b, 0x0b], // -123456, br_if, br_table
    ...[0x42, 0x80, 0x80, 0x80, 0x80, 0x80, 0x80, 0x80, 0x80, 0x80, 0x7f, 0x21, 0x03], // the lowest i64
    ...[0x43, 0x0b, 0x0b, 0x0b, 0x0b, 0x1a], // an f32 whose bytes are those of `end`
    ...[0x44, 0x0b, 0x10, 0x20, 0x41, 0x0b, 0x0e, 0x02, 0x03, 0x22, 0x04, 0x1a],
    ...[0x20, 0x02, 0x21, 0x00, 0x20, 0x00, 0x22, 0x01, 0x1a, 0x20, 0x03, 0x1a],
    ...[0x41, 0x00, 0x28, 0x02, 0x90, 0xce, 0x00, 0x1a, 0x41, 0x00, 0x41, 0x01, 0x3a, 0x00, 0x07], // load and store
    ...[0x3f, 0x00, 0x40, 0x00, 0x1a, 0x23, 0x00, 0x24, 0x00], // memory, global
    ...[0x41, 0, 0x41, 0, 0x41, 0, 0xfc, 0x0a, 0, 0, 0x41, 0, 0x41, 0, 0x41, 0, 0xfc, 0x0b, 0], // memory.copy, memory.fill
    ...[0x20, 0x04, 0xfc, 0x02, 0xc0, 0x1a], // i32.trunc_sat_f64_s, i32.extend8_s
    ...[0x10, 0x00, 0x41, 0x00, 0x11, 0x00, 0x00, 0x0b], // call, call_indirect
  ]);
  assert.ok(WebAssembly.validate(wasm), "as a browser sees it");
  comesBack(wasm);
});

test("what the walk does not know is refused, and not packed wrongly", () => {
  const nothing = [0xd0, 0x70, 0x1a]; // ref.null, drop
  assert.throws(() => inStreams(module([0, ...nothing, 0x0b])), /instruction .* 208/);
  const size = [0xfc, 0x10, 0x00, 0x1a]; // table.size, drop
  assert.throws(() => inStreams(module([0, ...size, 0x0b])), /instruction .* 252 16/);
  assert.throws(() => inStreams(module(variables).subarray(0, 60)), /too early/);
});
