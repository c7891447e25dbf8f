// The splitting of tables into rows and cells against PapaParse, on tables made at random: quoted cells with separators,
// quotes and line breaks of every kind inside, lone quotes, blanks, empty cells and rows, three separators, three line
// ends. What RFC 4180 leaves open (text behind a closing quote, mixed line ends) programs read each in their own way,
// and it is left to tests of ours.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import Papa from "papaparse";
import { root } from "../../../support/built-engine.mjs";

const program = join(root, "build/native/tests/split_table");

/** The generator of make-list.mjs: the same tables on every run. */
function repeatableRandom(seed) {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

function makeTable(random, separator, lineEnd) {
  const pick = (list) => list[random(list.length)];
  const plain = ["a", "b c", "49.5", "ü", "\u{1F6B2}", " ", "'", "=", "#", ",", ";", "\t"].filter(
    (x) => x !== separator,
  );
  const inQuotes = [...plain, separator, '""', "\n", "\r\n", "\r"];
  const many = (pieces) => Array.from({ length: random(4) }, () => pick(pieces)).join("");
  const cell = () => {
    if (random(3) === 0) return `"${many(inQuotes)}"`;
    return random(6) === 0 ? `a${many([...plain, '"'])}` : many(plain);
  };
  const row = () => Array.from({ length: 1 + random(5) }, cell).join(separator);
  const rows = Array.from({ length: 1 + random(12) }, row);
  return rows.join(lineEnd) + (random(2) ? lineEnd : "");
}

const rowsThatSaySomething = (rows) => rows.filter((row) => row.some((cell) => /[^ \t\r\n]/.test(cell)));

test("5,000 tables split as PapaParse splits them", () => {
  const random = repeatableRandom(20261125);
  const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
  const file = join(folder, "table.csv");
  try {
    for (const separator of [",", ";", "\t"]) {
      for (const newline of ["\n", "\r\n", "\r"]) {
        // One long table of many, so that the program runs nine times and not thousands.
        const tables = Array.from({ length: 556 }, () => makeTable(random, separator, newline));
        const text = tables.map((table) => (table.endsWith(newline) ? table : table + newline)).join("");
        writeFileSync(file, text);
        const ours = JSON.parse(
          execFileSync(program, [file, separator], { encoding: "utf8", maxBuffer: 1 << 26 }),
        );
        const { data, errors } = Papa.parse(text, { delimiter: separator, newline });
        assert.deepEqual(
          errors.filter(({ type }) => type === "Quotes"),
          [],
        );
        assert.deepEqual(rowsThatSaySomething(ours), rowsThatSaySomething(data));
        assert.ok(ours.length > 2000);
      }
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
});
