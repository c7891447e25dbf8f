// In Chromium, Firefox and WebKit the engine answers from a thread of its own, in the one file and under its own policy.

import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import test, { after, before, describe } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { browsers } from "../support/browsers/browsers.mjs";
import { Visit } from "../support/browsers/visit.mjs";
import { eventually, wholeTest } from "../support/eventually.mjs";
import { fileFolder } from "../support/list-desk.mjs";
import { pageFile, screens } from "../support/open-page.mjs";

const folder = fileFolder();
after(folder.done);

/** Counts what the page is answered from other threads. */
const counter = `const Real = Worker;
window.answered = 0;
window.Worker = function (address) {
  const worker = new Real(address);
  worker.addEventListener("message", ({ data }) => { if ("answer" in data) ++window.answered; });
  return worker;
};`;

function watchedPage() {
  const hash = createHash("sha256").update(counter).digest("base64");
  const html = readFileSync(pageFile, "utf8")
    .replace("script-src ", `script-src 'sha256-${hash}' `)
    .replace("<style>", `<script>${counter}</script><style>`);
  return pathToFileURL(folder.file("watched.html", html)).href;
}

for (const { name, launch } of browsers) {
  describe(name, { timeout: wholeTest }, () => {
    let browser;
    before(async () => (browser = await launch()));
    after(() => browser.close());

    test(`${name}: answers come from the engine's own thread`, async (test) => {
      const visit = await Visit.to(watchedPage(), { test, browser, size: screens.phone });
      await visit.types("Inside leg", "49.5 cm");
      await visit.sees("heading", "Saddle height to look for");
      const answered = () => visit.run(() => window.answered);
      const before = await answered();
      assert.ok(before > 0);
      await visit.goTo("List");
      await visit.opensFile(sample("loan-shed.json"));
      await visit.sees("heading", "Loan shed, autumn list");
      await eventually(async () => assert.ok((await answered()) > before));
    });
  });
}
