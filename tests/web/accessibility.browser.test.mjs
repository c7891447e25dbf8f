// axe-core's rules (WCAG 2.2 A and AA) on every screen, in light and dark.

import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { sample } from "../support/built-engine.mjs";
import {
  goTo,
  launchBrowser,
  openList,
  openPage,
  screens,
} from "../support/open-page.mjs";

const axe = readFileSync(
  createRequire(import.meta.url).resolve("axe-core/axe.min.js"),
  "utf8",
);
const rules = [
  "wcag2a",
  "wcag2aa",
  "wcag21a",
  "wcag21aa",
  "wcag22aa",
  "best-practice",
];

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

/**
 * Shows the whole screen at once. What lies under the bar at the foot of a phone can be scrolled out from under it, but the
 * rules look at one moment and would call it too small to press.
 */
async function unrolled(page, check) {
  const { width, height } = page.viewportSize();
  // More rows may be drawn as there is more room.
  for (let turn = 0; turn < 3; ++turn) {
    const whole = await page.evaluate(
      () => document.documentElement.scrollHeight,
    );
    await page.setViewportSize({ width, height: Math.max(height, whole) });
    await page.waitForTimeout(100);
  }
  const result = await check();
  await page.setViewportSize({ width, height });
  return result;
}

async function violations(page) {
  const { violations: found } = await page.evaluate(
    (tags) => window.axe.run(document, { runOnly: tags }),
    rules,
  );
  return found.map(
    (rule) =>
      `${rule.id}: ${rule.nodes
        .map((node) => node.target.join(" "))
        .slice(0, 3)
        .join(", ")}`,
  );
}

for (const colorScheme of ["light", "dark"]) {
  for (const [name, viewport] of Object.entries(screens)) {
    test(`no violations on any screen: ${name}, ${colorScheme}`, async () => {
      // The page's own policy keeps strangers' scripts out; here the rules have to get in.
      const { page, close } = await openPage(browser, viewport, {
        colorScheme,
        bypassCSP: true,
      });
      await page.addScriptTag({ content: axe });
      const found = {};
      const check = async (screen) => {
        const list = await unrolled(page, () => violations(page));
        if (list.length > 0) found[screen] = list;
      };
      await check("first visit");
      await page.getByRole("textbox", { name: "Inside leg" }).fill("19 1/2");
      await page
        .getByRole("heading", { name: "Saddle height to look for" })
        .waitFor();
      await check("rider");
      await openList(page, sample("every-mistake.json"));
      await page
        .getByText(/set aside/)
        .first()
        .waitFor();
      await check("list");
      await openList(page, sample("loan-shed.json"));
      await page.getByRole("button", { name: "See the bikes" }).first().click();
      const first = page
        .getByRole("list", { name: "Bikes, best first" })
        .getByRole("article")
        .first();
      await first.waitFor();
      await check("rack");
      await first.getByRole("button").first().click();
      await page.getByRole("img", { name: /Side view/ }).waitFor();
      await check("one bike");
      await goTo(page, "Tape one");
      await page
        .getByRole("textbox", { name: "Saddle at its lowest" })
        .fill("19");
      await check("tape one");
      await goTo(page, name === "phone" ? "Rider" : "Rack");
      await page.getByRole("button", { name: "Add a rider" }).click();
      await page.getByRole("textbox", { name: "Inside leg" }).fill("20");
      await page
        .getByRole("heading", { name: "Saddle height to look for" })
        .waitFor();
      await check("two riders");
      await goTo(page, "Rack");
      for (const place of [0, 1, 2])
        await page
          .getByRole("checkbox", { name: /^Side by side/ })
          .nth(place)
          .check();
      await check("ticked bikes");
      await page
        .getByRole("button", { name: "Side by side", exact: true })
        .click();
      await page.getByRole("columnheader").nth(2).waitFor();
      await check("side by side");
      await page
        .getByRole("columnheader")
        .first()
        .getByRole("button")
        .first()
        .click();
      await page.getByRole("button", { name: "Card for the fridge" }).click();
      await page.getByRole("article", { name: "Saddle card" }).waitFor();
      await page.getByRole("button", { name: "Copy as text" }).click();
      await check("card");
      await goTo(page, "Keep");
      await check("keep, off");
      await page.getByRole("checkbox", { name: "Keep on this device" }).check();
      await page.getByText("Kept as you type.").waitFor();
      await page.getByRole("button", { name: "Wipe everything" }).click();
      await check("keep, on");
      await page.evaluate(() => {
        IDBFactory.prototype.open = () => {
          throw new DOMException("not here", "SecurityError");
        };
      });
      await goTo(page, name === "phone" ? "Rider" : "Rack");
      await page.getByRole("textbox", { name: "Inside leg" }).fill("21");
      await page
        .getByRole("alert")
        .getByText(/does not let the page keep/)
        .waitFor();
      await check("nothing is kept");
      assert.deepEqual(found, {});
      await close();
    });
  }
}
