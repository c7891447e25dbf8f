// The whole job in a real browser, from a file, offline: type a reading, open a list, read verdicts, look at a bike, tape one.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { openBuiltEngine, sample } from "../support/built-engine.mjs";
import { goTo, launchBrowser, openList, openPage, screens } from "../support/open-page.mjs";

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

/** The first element with these words that can be seen: other screens stay in the page, hidden. */
const shown = (page, words) => page.getByText(words).filter({ visible: true }).first();

async function typeReading(page, figure, unit) {
  await page.getByRole("radio", { name: unit }).check();
  await page.getByRole("textbox", { name: "Inside leg" }).fill(figure);
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
}

/** What the engine itself answers to the question that the page asks. */
async function expectedVerdicts(list) {
  const engine = await openBuiltEngine();
  engine.ask({ do: "load" }, readFileSync(list));
  const on = await today();
  const rider = {
    population: "gb",
    stage: "starting",
    readings: [{ on, inseam: "19 1/2", unit: "in", shoes: true }],
  };
  return engine.ask({ do: "assess", today: on, rider }).bikes;
}

const today = async () => {
  const now = new Date();
  const part = (number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${part(now.getMonth() + 1)}-${part(now.getDate())}`;
};

for (const [name, viewport] of Object.entries(screens)) {
  test(`on a ${name}: from a reading to a ranked rack, one bike and a taped one`, async () => {
    const { page, faults, close } = await openPage(browser, viewport);

    await typeReading(page, "19 1/2", "inches");
    await page.getByText("Best: 19½ in").waitFor();
    await page.getByText("Start with 16 inch wheels").waitFor();

    await openList(page, sample("loan-shed.json"));
    await page.getByRole("heading", { name: "Loan shed, autumn list" }).waitFor();
    await page.getByRole("button", { name: "See the bikes" }).first().click();

    const bikes = await expectedVerdicts(sample("loan-shed.json"));
    const fitting = bikes.filter((bike) => bike.verdict === "fits_now" && bike.suits_stage);
    const first = page.getByRole("list", { name: "Bikes, best first" }).getByRole("article").first();
    await first.getByRole("heading", { name: bikes[0].name }).waitFor();
    const said = (await first.textContent()).replaceAll("\u00a0", " ");
    assert.match(said, /Saddle height fits/);
    assert.match(said, /Saddle at 19½ in/);
    assert.ok(fitting.length > 3);
    const counted = Number(
      /(\d+) fits?\b/.exec(
        await page
          .getByText(/\d+ fits?\b/)
          .first()
          .textContent(),
      )[1],
    );
    assert.equal(counted, bikes.filter((bike) => bike.verdict === "fits_now").length);

    await first.getByRole("button", { name: bikes[0].name }).click();
    await page.getByRole("heading", { name: bikes[0].name, level: 2 }).waitFor();
    await page.getByRole("img", { name: /Side view of the bike, to scale/ }).waitFor();
    await shown(page, "Both feet are flat on the ground.").waitFor();

    await goTo(page, "Measure");
    await page.getByRole("textbox", { name: "Saddle at its lowest" }).fill("21 in");
    await page.getByRole("textbox", { name: "Saddle at its highest" }).fill("26 1/2 in");
    await shown(page, "Still too big").waitFor();
    await page.getByRole("textbox", { name: "Saddle at its lowest" }).fill("19 in");
    await shown(page, "Saddle at 19½ in").waitFor();
    await page.getByRole("button", { name: "Add it to the bikes" }).click();
    await goTo(page, "Bikes");
    await shown(page, "measured by you").waitFor();

    assert.deepEqual(faults, []);
    await close();
  });
}

test("changing the way a child rides changes window and verdicts, and says so aloud", async () => {
  const { page, close } = await openPage(browser, screens.laptop);
  await typeReading(page, "49.5", "centimetres");
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  const status = page.getByRole("status").filter({ hasText: "Bikes: " });
  await status.filter({ hasText: /\d+ fits?\b/ }).waitFor();
  const spoken = await status.textContent();
  await page.getByRole("radio", { name: "Rides well" }).check();
  await page.getByText("54.6 to 59.7 cm", { exact: true }).waitFor();
  await status.filter({ hasNotText: spoken }).waitFor();
  assert.match(await status.textContent(), /\d+ fits?\b/);
  await close();
});

test("a reading in the wrong unit is questioned and not refused", async () => {
  const { page, faults, close } = await openPage(browser, screens.phone);
  await typeReading(page, "495", "centimetres");
  await page
    .getByText(/hard to believe|millimetres/i)
    .first()
    .waitFor();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("forty");
  await page.getByText(/forty/).first().waitFor();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49,5");
  await page.getByText("47 to 50.5 cm", { exact: true }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("nothing is shown twice as wide as the screen, from 320 px up", async () => {
  const { page, close } = await openPage(browser, { width: 320, height: 640 });
  await typeReading(page, "19 1/2", "inches");
  await openList(page, sample("loan-shed.json"));
  for (const screen of ["Your child", "Bikes", "Measure", "List"]) {
    await goTo(page, screen);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    assert.ok(overflow <= 0, `${screen} is ${overflow} px too wide`);
  }
  await close();
});
