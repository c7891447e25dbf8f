// Tables that other programs wrote read as the JSON list that they were made from. The programs and their versions are
// named in other-programs/versions.txt, the commands in other-programs/write.sh.

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";
import { openBuiltEngine } from "../support/built-engine.mjs";

const folder = new URL("other-programs/", import.meta.url);
const engine = await openBuiltEngine();

function savedAsJson(bytes, encoding) {
  const answer = engine.ask({ do: "load", ...(encoding && { encoding }) }, bytes);
  assert.equal(answer.error, undefined, answer.error?.code);
  const { text, left_out } = engine.ask({ do: "save", form: "json" });
  assert.deepEqual(left_out, []);
  return { answer, list: JSON.parse(text) };
}

const wanted = savedAsJson(readFileSync(new URL("list.json", folder)));

const tables = readdirSync(folder).filter((name) => name.endsWith(".csv"));
test("LibreOffice, Python's csv module and PapaParse have written", () => {
  for (const program of ["libreoffice-", "python-", "papaparse-"])
    assert.ok(tables.filter((name) => name.startsWith(program)).length >= 3, program);
});

for (const table of tables) {
  test(`${table} reads as the JSON list`, () => {
    const bytes = readFileSync(new URL(table, folder));
    const encoding = table.includes("windows-1252") ? "windows-1252" : undefined;
    if (encoding) assert.equal(engine.ask({ do: "load" }, bytes).error.code, "file_not_utf8");
    const { answer, list } = savedAsJson(bytes, encoding);
    assert.deepEqual(list, wanted.list);
    assert.equal(answer.list.form, "table");
    assert.deepEqual(answer, { ...wanted.answer, list: { ...wanted.answer.list, form: "table" } });
  });
}
