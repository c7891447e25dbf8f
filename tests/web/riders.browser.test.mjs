// Several riders: a tap from one to the other, and each keeps readings, stage and wishes apart.

import assert from "node:assert/strict";
import test, { after, before } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { goTo, launchBrowser, openList, openPage, screens } from "../support/open-page.mjs";

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

const inseam = (page) => page.getByRole("textbox", { name: "Inside leg" });
const rackOf = (page) => page.getByRole("list", { name: "Bikes, best first" });

/** Two riders: 49.5 cm, starting; and Wim, 58 cm, riding with confidence. */
async function openWithTwo(viewport) {
  const opened = await openPage(browser, viewport, {
    now: "2026-11-25T10:00:00",
  });
  const { page } = opened;
  await page.getByRole("radio", { name: "centimetres" }).check();
  await inseam(page).fill("49.5");
  await page.getByText("47 to 50.5 cm", { exact: true }).waitFor();
  assert.equal(await page.getByRole("radio", { name: "Child 1" }).count(), 0, "one rider needs no switch");
  await page.getByRole("button", { name: "Add a child" }).click();
  await page.getByRole("textbox", { name: "Name or nickname" }).fill("Wim");
  await inseam(page).fill("58");
  await page.getByRole("radio", { name: "Rides well" }).check();
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  return opened;
}

for (const [name, viewport] of Object.entries(screens)) {
  test(`on a ${name}: from rider, rack and bike another rider is one tap away, with answers of its own`, async () => {
    const { page, faults, close } = await openWithTwo(viewport);
    await page.getByRole("radio", { name: "Child 1" }).check();
    await page.getByText("47 to 50.5 cm", { exact: true }).waitFor();
    assert.equal(await inseam(page).inputValue(), "49.5");
    assert.ok(await page.getByRole("radio", { name: "No training wheels, still new to it" }).isChecked());

    await openList(page, sample("loan-shed.json"));
    await goTo(page, "Bikes");
    const first = rackOf(page).getByRole("article").first();
    await first.getByText("Saddle at 49.5 cm").waitFor();
    const bikeOfOne = await first.getByRole("heading").textContent();
    await page.getByRole("radio", { name: "Wim" }).check();
    await page
      .getByRole("status")
      .filter({ hasText: /^Wim\. .*Bikes: / })
      .waitFor();
    const bikeOfWim = await first.getByRole("heading").textContent();
    assert.notEqual(bikeOfWim, bikeOfOne);

    await first.getByRole("button").first().click();
    await page.getByRole("heading", { name: bikeOfWim, level: 2 }).waitFor();
    const verdict = page.locator(".verdict-sheet .verdict");
    await verdict.filter({ hasText: "Saddle height fits" }).waitFor();
    await page.getByRole("radio", { name: "Child 1" }).check();
    await verdict.filter({ hasText: "Still too big" }).waitFor();
    await page.getByRole("heading", { name: bikeOfWim, level: 2 }).waitFor();
    assert.deepEqual(faults, []);
    await close();
  });
}

test("wishes are each rider's own", async () => {
  const { page, close } = await openWithTwo(screens.phone);
  await openList(page, sample("loan-shed.json"));
  await goTo(page, "Bikes");
  await rackOf(page).getByRole("article").first().waitFor();
  await page.getByText("Filter and sort").click();
  await page.getByRole("textbox", { name: "Price up to" }).fill("100");
  await page.getByText(/hidden by your filters/).waitFor();
  await page.getByRole("radio", { name: "Child 1" }).check();
  await page.getByText(/hidden by your filters/).waitFor({ state: "detached" });
  assert.equal(await page.getByRole("textbox", { name: "Price up to" }).inputValue(), "");
  await page.getByRole("radio", { name: "Wim" }).check();
  await page.getByText(/hidden by your filters/).waitFor();
  assert.equal(await page.getByRole("textbox", { name: "Price up to" }).inputValue(), "100");
  await close();
});

test("a rider is removed and brought back with everything that was typed", async () => {
  const { page, faults, close } = await openWithTwo(screens.phone);
  await page.getByRole("button", { name: "Remove Wim" }).click();
  await page.getByRole("status").getByText("Wim was removed.").waitFor();
  assert.equal(await inseam(page).inputValue(), "49.5");
  assert.equal(await page.getByRole("radio", { name: "Wim" }).count(), 0);
  await page.getByRole("button", { name: "Undo" }).click();
  assert.equal(await inseam(page).inputValue(), "58");
  assert.ok(await page.getByRole("radio", { name: "Wim" }).isChecked());
  assert.ok(await page.getByRole("radio", { name: "Rides well" }).isChecked());
  await page.getByRole("button", { name: "Remove Wim" }).click();
  await page.getByText("47 to 50.5 cm", { exact: true }).waitFor();
  assert.equal(await page.getByRole("button", { name: /^Remove/ }).count(), 0, "the last rider stays");
  assert.deepEqual(faults, []);
  await close();
});

test("a rider who has no reading yet is not shown the answers of another", async () => {
  const { page, close } = await openWithTwo(screens.laptop);
  await page.getByRole("button", { name: "Add a child" }).click();
  await page.getByRole("heading", { name: "How to measure" }).waitFor();
  assert.equal(await page.getByRole("heading", { name: "Saddle height to look for" }).count(), 0);
  await inseam(page).fill("forty");
  await page.getByText(/“forty” is not a number/).waitFor();
  assert.equal(await page.getByRole("heading", { name: "Saddle height to look for" }).count(), 0);
  await close();
});

test("six riders with long names fit a narrow phone, each target 44 px high", async () => {
  const { page, close } = await openPage(browser, { width: 320, height: 640 });
  for (let number = 2; number <= 6; ++number) {
    await page.getByRole("button", { name: "Add a child" }).click();
    await page.getByRole("textbox", { name: "Name or nickname" }).fill(`Maximiliane the ${number}th`);
  }
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  assert.ok(wide <= 0, `${wide} px too wide`);
  const low = await page
    .locator(".rider-switch label")
    .evaluateAll((labels) =>
      labels.map((label) => label.getBoundingClientRect().height).filter((height) => height < 44),
    );
  assert.deepEqual(low, []);
  await page.getByRole("radio", { name: "Child 1" }).check();
  await page.getByRole("button", { name: "Remove Child 1" }).waitFor();
  await close();
});
