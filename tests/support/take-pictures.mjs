// Takes the pictures of README and of the guides from the built page: node tests/support/take-pictures.mjs
// They go to web/pictures. The day is fixed, so that a picture changes only when the page does.

import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { root, sample } from "./built-engine.mjs";
import { drawn } from "./eventually.mjs";
import { goTo, launchBrowser, openList, openPage, screens } from "./open-page.mjs";

const folder = process.env.PICTURES ?? join(root, "web/pictures");
mkdirSync(folder, { recursive: true });

const browser = await launchBrowser();

async function opened(viewport) {
  const now = "2026-11-25T10:00:00";
  const page = await openPage(browser, viewport, { deviceScaleFactor: 1.5, reducedMotion: "reduce", now });
  await page.page.getByRole("radio", { name: "inches" }).check();
  await page.page.getByRole("textbox", { name: "Inside leg" }).fill("19 1/2");
  await page.page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  return page;
}

async function take(page, name) {
  // Nothing blinks, nothing is half-way.
  await page.evaluate(() => document.activeElement?.shadowRoot?.activeElement?.blur());
  await drawn(page);
  await page.screenshot({ path: join(folder, `${name}.png`) });
}

/** The best bike of the shed, opened from the rack. */
async function openBest(page) {
  const best = page.getByRole("list", { name: "Bikes, best first" }).getByRole("article").first();
  await best.waitFor();
  await best.getByRole("button").first().click();
  await page.getByRole("img", { name: /Side view/ }).waitFor();
}

async function openRack(page) {
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  await page.getByRole("list", { name: "Bikes, best first" }).getByRole("article").first().waitFor();
}

try {
  const phone = await opened(screens.phone);
  await take(phone.page, "rider-phone");
  await openRack(phone.page);
  await openBest(phone.page);
  await take(phone.page, "bike-phone");
  await phone.page.getByRole("button", { name: "Card for the fridge" }).click();
  await phone.page.getByRole("article", { name: "Saddle card" }).waitFor();
  await take(phone.page, "card-phone");
  await goTo(phone.page, "Bikes");
  const ticks = phone.page.getByRole("checkbox", { name: /^Side by side/ });
  for (const place of [0, 2]) await ticks.nth(place).check();
  await phone.page.getByRole("button", { name: "Side by side", exact: true }).click();
  await phone.page.getByRole("columnheader").nth(1).waitFor();
  await take(phone.page, "side-by-side-phone");
  await openList(phone.page, sample("every-mistake.json"));
  await phone.page
    .getByText(/left out/)
    .first()
    .waitFor();
  await phone.page.getByRole("button", { name: "Measure bikes" }).click();
  await phone.page.getByRole("textbox", { name: "Saddle at its lowest" }).fill("49.5");
  await phone.page.evaluate(() => {
    window.scrollTo(0, 0);
  });
  await take(phone.page, "measure-phone");
  await phone.close();

  const laptop = await opened(screens.laptop);
  await openRack(laptop.page);
  await take(laptop.page, "rack-laptop");
  await laptop.close();
} finally {
  await browser.close();
}
