// Side by side: two to four ticked bikes, what differs before what is the same, on one scale.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { openBuiltEngine, sample } from "../support/built-engine.mjs";
import { goTo, launchBrowser, openList, openPage, screens } from "../support/open-page.mjs";

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

const today = "2026-11-25";
const list = sample("loan-shed.json");
const rackOf = (page) => page.getByRole("list", { name: "Bikes, best first" });
const plain = (text) => text.replaceAll("\u00a0", " ");

/** What the engine says of the rack that the page shows. */
async function judged() {
  const engine = await openBuiltEngine();
  engine.ask({ do: "load" }, readFileSync(list));
  const rider = {
    population: "gb",
    stage: "starting",
    readings: [{ on: today, inseam: "49.5", unit: "cm", shoes: true }],
  };
  return engine.ask({ do: "assess", today, rider, wants: {} }).bikes;
}

async function openRack(viewport) {
  const opened = await openPage(browser, viewport, {
    now: `${today}T10:00:00`,
  });
  const { page } = opened;
  await page.getByRole("radio", { name: "centimetres" }).check();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await page.getByText("47 to 50.5 cm", { exact: true }).waitFor();
  await openList(page, list);
  await goTo(page, "Bikes");
  await rackOf(page).getByRole("article").first().waitFor();
  return opened;
}

/** Rows come as they near the screen. */
async function tick(page, place) {
  const boxes = rackOf(page).getByRole("checkbox");
  for (let tries = 0; tries < 500 && (await boxes.count()) <= place; ++tries)
    await boxes.last().scrollIntoViewIfNeeded();
  await boxes.nth(place).check();
}
const openBeside = (page) => page.getByRole("button", { name: "Side by side", exact: true }).click();

/** The table as { fact: [a text for each bike] }. */
async function tableOn(page) {
  await page.getByRole("rowheader").or(page.locator("tbody th")).first().waitFor();
  const bodies = await page
    .locator("table.beside tbody")
    .evaluateAll((bodies) =>
      bodies.map((body) => [
        body.querySelector("th").textContent,
        [...body.querySelectorAll("td")].map((cell) => cell.textContent),
      ]),
    );
  return Object.fromEntries(bodies.map(([fact, cells]) => [fact, cells.map(plain)]));
}

for (const [name, viewport] of Object.entries(screens)) {
  test(`on a ${name}: ticked bikes side by side, what differs first and what is the same folded below`, async () => {
    const { page, faults, close } = await openRack(viewport);
    const bikes = await judged();
    // One that tells what it costs.
    const second = bikes.findIndex(({ price }, place) => place > 0 && price !== null);
    await tick(page, 0);
    await page.getByText("1 bike ticked. Tick one more.").waitFor();
    await tick(page, second);
    await openBeside(page);
    await page.getByRole("heading", { name: "Side by side", level: 2 }).waitFor();
    await page.getByRole("columnheader", { name: bikes[second].name }).waitFor();

    const table = await tableOn(page);
    for (const [fact, cells] of Object.entries(table))
      assert.ok(new Set(cells).size > 1, `${fact} differs: ${cells}`);
    assert.deepEqual(
      table.Weight,
      [bikes[0], bikes[second]].map((bike) => `${bike.mass_kg} kg`),
    );
    assert.deepEqual(
      table.Price,
      [bikes[0], bikes[second]].map(({ price }) => `€${price}`),
    );
    assert.deepEqual(
      table["Cost a month"],
      [bikes[0], bikes[second]].map((bike) => `€${bike.cost_per_month.toFixed(2)}`),
    );

    const same = page.getByText(/^The same on all/);
    assert.ok(!(await page.getByText("Saddle height fits").nth(0).isVisible()) || table.Fit === undefined);
    await same.click();
    const facts = plain(await page.locator(".screen.beside .facts").textContent());
    assert.match(facts, /FitSaddle height fits/);
    assert.match(facts, /SaddleSaddle at 49\.5 cm/);
    const drawn = await page
      .locator(".screen.beside [role=img]")
      .evaluateAll((all) => all.map((one) => one.ariaLabel));
    assert.equal(drawn.length, 3);
    assert.match(plain(drawn[0]), /^Heights above the floor, \d+ cm to \d+ cm/);
    assert.match(plain(drawn[1]), /^Saddle [\d.]+ cm to [\d.]+ cm$/);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    assert.ok(wide <= 0, `${wide} px too wide`);
    assert.deepEqual(faults, []);
    await close();
  });
}

test("checks that differ are told apart, and an unknown figure is called so", async () => {
  const { page, close } = await openRack(screens.laptop);
  const bikes = await judged();
  const priced = bikes.findIndex((bike) => bike.price !== null);
  const unpriced = bikes.findIndex((bike) => bike.price === null && bike.verdict === "fits_now");
  await tick(page, priced);
  await tick(page, unpriced);
  await openBeside(page);
  const table = await tableOn(page);
  assert.deepEqual([...table.Price].sort(), [`€${bikes[priced].price}`, "not known"].sort());
  const checks = Object.keys(table).filter((fact) => fact.startsWith("Check: "));
  const stateOf = (bike, what) => bike.checks.find((check) => check.what === what)?.state;
  const differing = bikes[priced].checks.filter(
    ({ what, state }) => stateOf(bikes[unpriced], what) !== state,
  );
  assert.ok(differing.length > 0);
  assert.equal(checks.length, differing.length);
  await close();
});

test("no more than four are ticked, and any of them is taken away or added again", async () => {
  const { page, faults, close } = await openRack(screens.phone);
  for (const place of [0, 1, 2, 3]) await tick(page, place);
  await page.getByText("4 bikes ticked.").waitFor();
  assert.ok(await rackOf(page).getByRole("checkbox").nth(4).isDisabled());
  await openBeside(page);
  const columns = page.getByRole("columnheader");
  await columns.nth(3).waitFor();
  const gone = await columns.nth(1).getByRole("button").first().textContent();
  await page.getByRole("button", { name: `Remove ${gone}`, exact: true }).click();
  await page.waitForFunction(
    () => document.querySelector("main").shadowRoot.querySelectorAll("thead th").length === 3,
  );
  assert.equal(await page.getByRole("columnheader", { name: gone }).count(), 0);
  await page.getByRole("button", { name: "Add a bike" }).click();
  await rackOf(page)
    .getByRole("checkbox", { name: `Side by side: ${gone}`, exact: true })
    .check();
  await openBeside(page);
  await page.getByRole("columnheader", { name: gone }).waitFor();
  await page.getByRole("button", { name: "Untick all" }).click();
  await rackOf(page).getByRole("article").first().waitFor();
  assert.equal(await page.getByText(/ticked\./).count(), 0);
  assert.deepEqual(faults, []);
  await close();
});

test("a bike is ticked from its own screen; one that wishes hide later is said to be missing", async () => {
  const { page, close } = await openRack(screens.phone);
  const bikes = await judged();
  await rackOf(page).getByRole("button", { name: bikes[0].name, exact: true }).click();
  await page.getByRole("button", { name: "Tick for side by side" }).click();
  await page.getByText("1 bike ticked.").waitFor();
  await page.getByRole("button", { name: "Back to the bikes" }).click();
  const dear = bikes.findIndex((bike) => bike.price > bikes[0].price && bike.verdict === "fits_now");
  await rackOf(page)
    .getByRole("checkbox", {
      name: `Side by side: ${bikes[dear].name}`,
      exact: true,
    })
    .check();
  await page.getByText("Filter and sort").click();
  await page.getByRole("textbox", { name: "Price up to" }).fill(String(bikes[0].price));
  await page.getByText(/hidden by your filters/).waitFor();
  await openBeside(page);
  await page.getByText(/1 ticked bike is not here: hidden by your filters/).waitFor();
  await page.getByRole("button", { name: "Show all bikes" }).click();
  await page.getByRole("columnheader", { name: bikes[dear].name }).waitFor();
  await close();
});

test("the columns follow the rider in hand", async () => {
  const { page, close } = await openRack(screens.laptop);
  await tick(page, 0);
  await tick(page, 1);
  await page.getByRole("button", { name: "Add a child" }).click();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("62");
  await page.getByText("2 bikes ticked.").waitFor();
  await openBeside(page);
  await page.getByText(/^The same on all/).click();
  const facts = page.locator(".screen.beside .facts");
  await facts
    .getByText(/Already too small|Saddle height fits|Borderline: try it/)
    .first()
    .waitFor();
  const grown = plain(await facts.textContent());
  await page.getByRole("radio", { name: "Child 1" }).check();
  await facts.getByText("Saddle at 49.5 cm").waitFor();
  assert.notEqual(plain(await facts.textContent()), grown);
  await close();
});
