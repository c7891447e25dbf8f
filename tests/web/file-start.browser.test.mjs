// Where the page file cannot even unpack itself, it says so, in the reader's language.

import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { launchBrowser, pageAddress } from "../support/open-page.mjs";
import { pageModule } from "../support/page-module.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const { cannotRun } = await pageModule("texts/first-words.ts");

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

/** What browsers turn off that were asked to be as safe as can be, and what those too old do not have. */
const missing = { WebAssembly: "en-GB", DecompressionStream: "de-DE" };

async function openWithout(name, locale, colorScheme = "light") {
  const viewport = { width: 320, height: 568 };
  const context = await browser.newContext({ viewport, offline: true, locale, colorScheme, bypassCSP: true });
  await context.addInitScript(`delete window.${name};`);
  const page = await context.newPage();
  await page.goto(pageAddress);
  return page;
}

for (const [name, locale] of Object.entries(missing)) {
  test(`a browser without ${name} says that it will not do`, async () => {
    const page = await openWithout(name, locale);
    const language = locale.slice(0, 2);
    const words = page.getByText(cannotRun[language], { exact: true });
    await words.waitFor();
    assert.equal(await words.getAttribute("lang"), language);
    await page.context().close();
  });
}

test("in every language, on a small screen, light and dark", async () => {
  for (const [language, text] of Object.entries(cannotRun)) {
    for (const colorScheme of ["light", "dark"]) {
      const page = await openWithout("WebAssembly", language, colorScheme);
      await page.getByText(text, { exact: true }).waitFor();
      assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), 320, language);
      await page.evaluate(axe);
      const { violations } = await page.evaluate(() =>
        window.axe.run({ runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] }),
      );
      assert.deepEqual(
        violations.map(({ id }) => id),
        [],
        `${language} ${colorScheme}`,
      );
      await page.context().close();
    }
  }
});
