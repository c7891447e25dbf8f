// Takes the pictures of README from the built page: node tests/support/take-pictures.mjs
// They go to web/pictures. The day is fixed, so that a picture changes only when the page does.

import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { root, sample } from "./built-engine.mjs";
import { launchBrowser, openList, openPage, screens } from "./open-page.mjs";

const folder = join(root, "web/pictures");
mkdirSync(folder, { recursive: true });

const browser = await launchBrowser();

async function opened(viewport) {
  const page = await openPage(browser, viewport, { deviceScaleFactor: 1.5, now: "2026-11-25T10:00:00" });
  await page.page.getByRole("radio", { name: "inches" }).check();
  await page.page.getByRole("textbox", { name: "Inside leg" }).fill("19 1/2");
  await page.page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  return page;
}

async function take(page, name) {
  // Nothing blinks, nothing is half-way.
  await page.evaluate(() => document.activeElement?.shadowRoot?.activeElement?.blur());
  await page.waitForTimeout(300);
  await page.screenshot({ path: join(folder, `${name}.png`) });
}

try {
  const phone = await opened(screens.phone);
  await take(phone.page, "rider-phone");
  await openList(phone.page, sample("loan-shed.json"));
  await phone.page.getByRole("button", { name: "See the bikes" }).first().click();
  const bikes = phone.page.getByRole("list", { name: "Bikes, best first" }).getByRole("article");
  await bikes.first().waitFor();
  await take(phone.page, "rack-phone");
  await bikes.first().getByRole("button").first().click();
  await phone.page.getByRole("img", { name: /Side view/ }).waitFor();
  await take(phone.page, "bike-phone");
  await phone.close();

  const laptop = await opened(screens.laptop);
  await openList(laptop.page, sample("loan-shed.json"));
  await laptop.page.getByRole("button", { name: "See the bikes" }).first().click();
  await laptop.page.getByRole("list", { name: "Bikes, best first" }).getByRole("article").first().waitFor();
  await take(laptop.page, "rack-laptop");
  await laptop.close();
} finally {
  await browser.close();
}
