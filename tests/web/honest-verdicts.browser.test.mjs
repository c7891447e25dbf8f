// That a verdict claims no more than was judged: for which way of riding, by what was measured, and with its warnings.

import assert from "node:assert/strict";
import { test, after, before } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { goTo, launchBrowser, openList, openPage, screens, shownText } from "../support/open-page.mjs";

const now = "2026-11-25T10:00:00";

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

const inseam = (page) => page.getByRole("textbox", { name: "Inside leg" });
const ways = (page) => page.locator('input[name="stage"]');
const way = (page, stage) => page.locator(`input[name="stage"][value="${stage}"]`);
const result = (page) => page.getByRole("heading", { name: "Saddle height to look for" });
const rows = (page) => page.getByRole("list", { name: "Bikes, best first" }).getByRole("article");
const fontSize = (locator) => locator.evaluate((element) => parseFloat(getComputedStyle(element).fontSize));

async function open(test, options = {}, viewport = screens.phone) {
  const opened = await openPage(browser, viewport, { now, ...options });
  test.after(opened.close);
  return opened.page;
}

async function openShed(page) {
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("heading", { name: "Loan shed, autumn list" }).waitFor();
  await goTo(page, "Bikes");
  await rows(page).first().waitFor();
}

test("how a child rides is not chosen for anybody, and nothing is judged before it is said", async (test) => {
  const page = await open(test, { stage: null });
  assert.equal(await ways(page).count(), 4);
  assert.deepEqual(await ways(page).evaluateAll((all) => all.map((one) => one.checked)), [
    false,
    false,
    false,
    false,
  ]);
  await inseam(page).fill("49.5");
  await page.locator(".estimate").getByText("the saddle height depends on it").waitFor();
  assert.equal(await result(page).count(), 0);

  await openShed(page);
  await page.getByText("Choose how your child rides to see which of these fit.").waitFor();
  assert.equal(await page.locator(".verdict").count(), 0);
  await page.getByRole("button", { name: "Choose how your child rides" }).click();
  await way(page, "riding").check();
  await result(page).waitFor();
  await page.getByText("For a child who starts, brakes and stops without help.").waitFor();
});

test("a figure that cannot be read is said before the way of riding is", async (test) => {
  const page = await open(test, { stage: null });
  await inseam(page).fill("forty");
  await page.getByText(/forty/).first().waitFor();
  await inseam(page).fill("49.5");
  await page.locator(".estimate").getByText("the saddle height depends on it").waitFor();
  assert.equal(await page.locator('[aria-invalid="true"]').count(), 0);
});

test("a second rider is asked anew", async (test) => {
  const page = await open(test, { stage: null });
  await inseam(page).fill("49.5");
  await way(page, "riding").check();
  await result(page).waitFor();
  await page.getByRole("button", { name: "Add a child" }).click();
  await inseam(page).fill("56");
  await page.locator(".estimate").getByText("the saddle height depends on it").waitFor();
  assert.equal(await page.locator('input[name="stage"]:checked').count(), 0);
});

for (const [stage, words] of [
  ["gliding", "For a child who pushes along with both feet."],
  ["side_wheels", "For a child who rides with training wheels."],
  ["starting", "For a child who rides without training wheels, still new to it."],
]) {
  test(`every screen with a verdict says that it is for ${stage}`, async (test) => {
    const page = await open(test, { stage });
    await inseam(page).fill("49.5");
    const said = () => page.locator(".screen.current").getByText(words).first().waitFor();
    await said();
    await goTo(page, "Measure");
    await page.getByRole("textbox", { name: "Saddle at its lowest" }).fill("48");
    await page.locator(".verdict-head").waitFor();
    await said();
    await openShed(page);
    await said();
    await rows(page).first().getByRole("button").first().click();
    await page.getByRole("img", { name: /years/i }).waitFor();
    await said();
    await page.getByRole("button", { name: "Card for the fridge" }).click();
    await page.getByRole("article", { name: "Saddle card" }).waitFor();
    await said();
  });
}

/** A bike that fits and has no brakes, and one that fits and has them. */
const two = JSON.stringify({
  format: "saddlerule-catalogue",
  version: 1,
  units: "cm",
  bikes: [
    { id: "N1", name: "Without brakes", kind: "pedal", saddle_lowest: 46, saddle_highest: 60, brakes: [] },
    {
      id: "N2",
      name: "With brakes",
      kind: "pedal",
      saddle_lowest: 46,
      saddle_highest: 60,
      brakes: ["front hand", "rear hand"],
    },
  ],
});

for (const [device, viewport] of Object.entries({ ...screens, narrow: { width: 320, height: 568 } })) {
  test(`a warning is as large as the verdict beside it, ${device}`, async (test) => {
    const page = await open(test, {}, viewport);
    await inseam(page).fill("49.5");
    await result(page).waitFor();
    await openList(page, { name: "two.json", mimeType: "application/json", buffer: Buffer.from(two) });
    await goTo(page, "Bikes");
    const warned = rows(page).filter({ hasText: "Without brakes" });
    await warned.waitFor();
    assert.equal(await rows(page).filter({ hasText: "With brakes" }).locator(".warning").count(), 0);

    const largest = async (place) => {
      const verdict = place.locator(".verdict:not(.warning)").first();
      const warning = place.locator(".warning").first();
      await warning.waitFor();
      assert.match(await verdict.innerText(), /^Saddle height fits/);
      assert.match(await warning.innerText(), /1 warning/);
      assert.ok((await fontSize(warning)) >= (await fontSize(verdict)));
      const [one, other] = [await verdict.boundingBox(), await warning.boundingBox()];
      assert.ok(Math.abs(one.y - other.y) < 2 * one.height, "far from the verdict");
      return place.page().viewportSize().width >= other.x + other.width;
    };
    assert.ok(await largest(warned), "beyond the screen");
    await warned.getByRole("button").first().click();
    await page.getByRole("img", { name: /years/i }).waitFor();
    const bike = page.locator(".screen.bike");
    assert.ok(await largest(bike), "beyond the screen");
    await bike.locator(".warning-why").getByText("Do not ride it like this.").waitFor();
    await page.getByRole("button", { name: "Card for the fridge" }).click();
    const card = page.getByRole("article", { name: "Saddle card" });
    await card.waitFor();
    assert.ok(await largest(card), "beyond the screen");
    await card.locator(".warning-why").getByText("Do not ride it like this.").waitFor();
  });
}

test("a guess from the height has a range, a band as wide as the doubt, and says so on every screen", async (test) => {
  const page = await open(test);
  await page.getByText("Age, height and weight").first().click();
  await page.getByRole("textbox", { name: /^Height/ }).fill("110");
  await result(page).waitFor();
  const caveat = () =>
    page.locator(".screen.current").getByText("Measure it before you buy.").first().waitFor();
  await caveat();
  assert.doesNotMatch(await shownText(page), /Best:/);
  const guessed = (await page.locator(".window-figures strong").innerText()).replace(/[^\d.]+/g, " ").trim();
  const [low, high] = guessed.split(" ").map(Number);
  assert.ok(high - low > 5, `no wider than a measured leg: ${guessed}`);

  await openShed(page);
  await caveat();
  await rows(page).first().locator(".guess-mark").waitFor();
  assert.equal(await page.locator(".rack .peg").count(), 0);
  assert.equal(await page.locator(".band.guess").count(), 1);
  const band = (await page.locator(".band").boundingBox()).width;

  const fitting = rows(page)
    .filter({ hasText: /Saddle at \d+(\.\d)?–\d/ })
    .first();
  await fitting.getByRole("button").first().click();
  await page.getByRole("img", { name: /years/i }).waitFor();
  await caveat();
  const bike = await page.locator(".screen.bike").innerText();
  assert.doesNotMatch(bike, /Saddle at \d/);
  assert.match(bike, /Measure the inside leg to find out when to move the saddle\./);
  for (const figure of await page.locator(".screen.bike .settings dd").allInnerTexts())
    assert.match(figure, / to /);
  assert.equal(await page.locator(".drawing-figure").count(), 0);
  await page.getByRole("button", { name: "Card for the fridge" }).click();
  await page.getByRole("article", { name: "Saddle card" }).waitFor();
  await caveat();
  assert.equal(await page.locator(".card-setting").count(), 0);

  await goTo(page, "Your child");
  await inseam(page).fill(String((low + high) / 2));
  await page.getByText(/^Best:/).waitFor();
  await goTo(page, "Bikes");
  await page.locator(".band:not(.guess)").waitFor();
  assert.ok((await page.locator(".band").boundingBox()).width < band);
});

test("a bike that pauses says so on its line, in its chart, on its card", async (test) => {
  const page = await open(test, { stage: "side_wheels" });
  await way(page, "side_wheels").waitFor({ state: "attached" });
  await page.getByRole("radio", { name: "Bold" }).check();
  await inseam(page).fill("47");
  await result(page).waitFor();
  const list = {
    format: "saddlerule-catalogue",
    version: 1,
    units: "mm",
    bikes: [{ id: "P1", name: "Pauses", kind: "pedal", saddle_lowest: 530, saddle_highest: 640 }],
  };
  await openList(page, {
    name: "one.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(list)),
  });
  await goTo(page, "Bikes");
  const told = /Too high (from \w+( \d{4})? to|in) \w+ 202[78], when the training wheels come off\./;
  await rows(page)
    .first()
    .getByText(/^Fits until about \w+ 202[78]$/)
    .waitFor();
  await page.getByRole("checkbox", { name: "More detail" }).check();
  await rows(page).first().getByText(told).waitFor();
  await rows(page).first().getByRole("button").first().click();
  const chart = page.getByRole("img", { name: told });
  await chart.waitFor();
  await chart.locator(".pause-stripes").waitFor({ state: "attached" });
  assert.equal(await chart.locator(".pause-name").textContent(), "too high");
  await page.getByRole("button", { name: "Card for the fridge" }).click();
  const card = page.getByRole("article", { name: "Saddle card" });
  await card.getByText(told).waitFor();
  assert.match(await card.innerText(), /Once your child starts, brakes and stops without help/);
  assert.doesNotMatch(await card.innerText(), /\d{1,2} [A-Z][a-z]+ 20(27|28|29)/);
});
