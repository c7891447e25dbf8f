// Every screen in every theme: axe-core's rules (WCAG 2.2 A and AA), the rules for HTML of the whole rendered document, and
// what is measured in the running page: letters of 16 px, targets of 44 px, nothing that does not fit.

import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { unrolled, walkEveryScreen, walkFromFile } from "../support/every-screen.mjs";
import { markupFaults, renderedDocument } from "../support/markup.mjs";
import { launchBrowser, openPage, pageFile, screens } from "../support/open-page.mjs";
import { screenFaults } from "../support/screen-measures.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const everyRule = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
/** Names and roles are the same in every theme; these are not. */
const rulesOfColours = ["color-contrast", "link-in-text-block"];

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

async function violations(page, rules) {
  const { violations: found } = await page.evaluate(
    (runOnly) => window.axe.run(document, { runOnly, resultTypes: ["violations"] }),
    rules,
  );
  return found.map((rule) => {
    const places = rule.nodes.map((node) => `${node.target.join(" ")} ${node.any[0]?.message ?? ""}`);
    return `${rule.id}: ${places.slice(0, 3).join(", ")}`;
  });
}

/** Walks screens and gathers what `check` finds, by screen. */
async function found(page, walk, check) {
  const gathered = {};
  await walk(page, async (screen) => {
    const list = await unrolled(page, () => check(page));
    if (list.length > 0) gathered[screen] = list;
  });
  return gathered;
}

const { phone, laptop } = screens;
const forcedDark = { forcedColors: "active", colorScheme: "dark" };

/** Whose eyes and hands: the screen, what the reader's device asks for, and how much larger letters are. */
const readers = {
  "a phone": [phone, {}],
  "a phone in the dark": [phone, { colorScheme: "dark" }],
  "a laptop": [laptop, {}],
  "a phone with more contrast": [phone, { contrast: "more", reducedMotion: "reduce" }],
  "a phone in the dark with more contrast": [phone, { contrast: "more", colorScheme: "dark" }],
  "a phone with colours of its own": [phone, { forcedColors: "active" }],
  "a laptop with dark colours of its own": [laptop, forcedDark],
  "a screen of 320 px": [{ width: 320, height: 640 }, {}],
  "a phone held sideways": [{ width: 740, height: 360 }, {}],
  "a phone with letters twice as large": [phone, {}, 2],
  "a laptop with letters twice as large": [laptop, {}, 2],
};

for (const [reader, [viewport, options, letters = 1]] of Object.entries(readers)) {
  test(`every screen can be read and used on ${reader}`, async () => {
    // The page's own policy keeps strangers' scripts out; here the rules have to get in.
    const served = await openPage(browser, viewport, { ...options, served: true, bypassCSP: true });
    const file = await openPage(browser, viewport, { ...options, bypassCSP: true });
    for (const { page } of [served, file]) {
      await page.addScriptTag({ content: axe });
      await page.evaluate((times) => {
        document.documentElement.style.fontSize = `${times * 100}%`;
      }, letters);
    }
    // The rules see colours, names and roles, which are the same at every size.
    const ruled = Object.values(screens).includes(viewport) && letters === 1;
    const rules = Object.keys(options).length === 0 ? everyRule : rulesOfColours;
    const check = async (page) => [
      ...(ruled ? await violations(page, rules) : []),
      ...(await page.evaluate(screenFaults)),
    ];
    assert.deepEqual(await found(served.page, walkEveryScreen, check), {});
    assert.deepEqual(await found(file.page, walkFromFile, check), {});
    await Promise.all([served.close(), file.close()]);
  });
}

test("the file, and the document of every screen, keep to the rules of HTML", async () => {
  assert.deepEqual(await markupFaults(readFileSync(pageFile, "utf8")), []);
  const { page, close } = await openPage(browser, phone, { served: true });
  const check = async (page) => markupFaults(await renderedDocument(page));
  assert.deepEqual(await found(page, walkEveryScreen, check), {});
  await close();
});
