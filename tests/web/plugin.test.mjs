// The plugin's zip: what is in it, and the HTML that its PHP makes of a shortcode, with stand-ins for the system around it
// (tests/plugin/try-plugin.mjs has the real one).

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import test, { after } from "node:test";
import { elementFiles } from "../../web/building/element.mjs";
import { pluginFiles } from "../../web/building/plugin.mjs";
import { zipped } from "../../web/building/zipped.mjs";
import { pageWasmFile, root } from "../support/built-engine.mjs";

const { unzipSync } = createRequire(join(root, "web/package.json"))("fflate");
const { version } = JSON.parse(readFileSync(join(root, "web/package.json"), "utf8"));

const element = await elementFiles({ engine: pageWasmFile });
const licences = { LICENSE: "the licence", "LICENCES.txt": "of what is inside" };
const zip = unzipSync(zipped(await pluginFiles(element, licences)));

const folder = mkdtempSync(join(tmpdir(), "saddlerule-plugin-"));
after(() => rmSync(folder, { recursive: true }));
for (const [name, content] of Object.entries(zip)) {
  mkdirSync(dirname(join(folder, name)), { recursive: true });
  writeFileSync(join(folder, name), content);
}
const plugin = join(folder, "saddlerule/saddlerule.php");

/** What the plugin makes of shortcodes with these attributes. `uploads`, newest first: their address, and by whom. */
function made(given, { uploads = [], writer = 7, editors = [1] } = {}) {
  const input = JSON.stringify({ given, uploads, writer, editors });
  const php = [
    "-d",
    "error_reporting=-1",
    "-d",
    "display_errors=1",
    join(root, "tests/support/plugin-page.php"),
    plugin,
  ];
  return JSON.parse(execFileSync("php", php, { input, encoding: "utf8" }));
}

/** Python's reader of HTML: the tags in a text, each with its attributes. */
const tagsIn = (html) =>
  JSON.parse(
    execFileSync(
      "python3",
      [
        "-c",
        `import json, sys
from html.parser import HTMLParser
class Tags(HTMLParser):
    seen = []
    def handle_starttag(self, tag, attributes): self.seen.append([tag, dict(attributes)])
tags = Tags()
tags.feed(sys.stdin.read())
print(json.dumps(tags.seen))`,
      ],
      { input: html, encoding: "utf8" },
    ),
  );

function elementIn(html) {
  const [[fit, attributes], words, named, ...more] = tagsIn(html);
  assert.deepEqual([fit, words, more], ["saddlerule-fit", ["p", {}], []], html);
  const folder = "https://club.example/plugins/saddlerule/element";
  assert.deepEqual(named, ["script", { type: "text/plain", "data-saddlerule": folder }]);
  return attributes;
}

const listOf = (list, how) => elementIn(made([{ list }], how).markup[0]).list;

test("everything is in one folder, with the element's files as they are", () => {
  const names = Object.keys(zip);
  assert.ok(names.every((name) => name.startsWith("saddlerule/")));
  const own = readdirSync(join(folder, "saddlerule")).sort();
  assert.deepEqual(own, ["LICENCES.txt", "LICENSE", "block.js", "element", "readme.txt", "saddlerule.php"]);
  const served = Object.keys(element).filter((name) => /^saddlerule-.*\.(js|bin|txt)$/.test(name));
  assert.deepEqual(readdirSync(join(folder, "saddlerule/element")).sort(), served.sort());
  for (const name of served)
    assert.ok(Buffer.from(zip[`saddlerule/element/${name}`]).equals(Buffer.from(element[name])), name);
  assert.ok(served.some((name) => name.startsWith("saddlerule-engine-")));
});

test("PHP takes it, and it tells its version and what it needs", () => {
  execFileSync("php", ["-l", plugin]);
  const head = readFileSync(plugin, "utf8");
  assert.match(head, new RegExp(`^ \\* Version: ${version.replaceAll(".", "\\.")}$`, "m"));
  for (const field of ["Plugin Name: Saddlerule", "License: Apache-2.0", "Requires PHP: 7.4"])
    assert.ok(head.includes(field), field);
  assert.match(readFileSync(join(folder, "saddlerule/readme.txt"), "utf8"), /version 3 of the GPL/);
});

test("a shortcode and a block are the element, and its script comes once somebody uses it", () => {
  const seen = made([
    { list: "/bikes.json", language: "de", units: "in", currency: "EUR", view: "rack" },
    "",
  ]);
  assert.deepEqual(elementIn(seen.markup[0]), {
    list: "/bikes.json",
    language: "de",
    units: "in",
    currency: "EUR",
    view: "rack",
  });
  assert.deepEqual(elementIn(seen.markup[1]), {});
  assert.deepEqual(seen.shortcodes, ["saddlerule"]);
  assert.deepEqual(Object.keys(seen.blocks["saddlerule/fit"].attributes), [
    ...["list", "language", "units", "currency", "view"],
  ]);
  assert.ok(seen.same);
  assert.equal(
    seen.scripts["saddlerule-fit"],
    `https://club.example/plugins/saddlerule/element/saddlerule-fit.js?ver=${version}`,
  );
  assert.deepEqual([...new Set(seen.enqueued)], ["saddlerule-fit"]);
});

test("what an author writes into attributes stays there", () => {
  const evil = `"><img src=x onerror=alert(1)>`;
  const { markup } = made([{ list: evil, language: evil, view: "' onfocus='alert(1)", onclick: "alert(1)" }]);
  const attributes = elementIn(markup[0]);
  assert.deepEqual(Object.keys(attributes).sort(), ["language", "list", "view"]);
  assert.equal(attributes.language, evil);
  assert.equal(attributes.view, "' onfocus='alert(1)".trim());
  assert.equal(listOf("javascript:alert(1)"), "");
  assert.equal(listOf("data:application/json,{}"), "");
});

test("the name of an upload is the newest one of that name, by the page's author or an editor", () => {
  const at = (name) => `https://club.example/uploads/${name}`;
  const upload = (file, by) => ({ address: at(file), by });
  const uploads = [
    upload("bikes-3.csv", 99),
    upload("bikes-3.json", 7),
    upload("bikes-2.csv", 7),
    upload("bikes-1.csv", 1),
    upload("bikes.csv", 7),
    upload("our-bikes.csv", 7),
    upload("bikesXcsv", 7),
  ];
  assert.equal(listOf("bikes.csv", { uploads }), at("bikes-2.csv"));
  assert.equal(listOf("bikes.csv", { uploads, writer: 8 }), at("bikes-1.csv"));
  assert.equal(listOf("our bikes.csv", { uploads }), at("our-bikes.csv"));
  // Nobody may who is neither: the element says then that there is nothing at this address.
  assert.equal(listOf("bikes.csv", { uploads, writer: 8, editors: [] }), "bikes.csv");
  assert.equal(listOf("/bikes.csv", { uploads }), "/bikes.csv");
  assert.equal(listOf(at("bikes.csv"), { uploads }), at("bikes.csv"));
});
