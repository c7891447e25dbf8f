// Club day on a phone: children typed and pasted, a bike for each, what happens while the morning runs, and the way back.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { launchBrowser, openList, openPage, screens } from "../support/open-page.mjs";

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

async function openMorning(viewport = screens.phone) {
  const opened = await openPage(browser, viewport, { now: "2026-11-28T09:00:00" });
  const { page } = opened;
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("button", { name: "Club day: a bike for each child" }).click();
  await page.getByRole("heading", { name: "Club day", exact: true }).waitFor();
  return opened;
}

async function paste(page, text) {
  await page.getByText("Paste or open a table").click();
  await page.getByRole("textbox", { name: "Table" }).fill(text);
  await page.getByRole("button", { name: "Read the table" }).click();
}

const pairs = (page) => page.locator(".club-pairs .club-row");

test("children typed one after another each get a bike", async () => {
  const { page, faults, close } = await openMorning();
  const name = page.getByRole("textbox", { name: "Name or number" });
  const inseam = page.getByRole("textbox", { name: /Inside leg/ });
  await name.fill("Anna");
  await inseam.fill("49.5");
  await inseam.press("Enter");
  await page.getByText("1 of 1 have a bike").waitFor();
  assert.equal(await name.inputValue(), "", "the next one can be typed");
  await inseam.fill("52");
  await inseam.press("Enter");
  await page.getByText("2 of 2 have a bike").waitFor();
  assert.equal(await pairs(page).count(), 2);
  await page.getByText(/Saddle at 49\.5.cm/).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("a pasted table with a title and a total; who is left hears why", async () => {
  const { page, faults, close } = await openMorning(screens.laptop);
  await paste(
    page,
    "Saturday\t\nName\tInside leg (cm)\tRides\nAnna\t49.5\tnew\nBen\t58\tconfident\nCem\t20\tnew\nDana\t\t\nTotal\t127.5\t\n",
  );
  await page.getByText("4 children read.").waitFor();
  await page.getByText("2 of 4 have a bike").waitFor();
  await page
    .getByText("Row 7, Name: “Total” looks like a row of totals.")
    .or(page.getByText(/looks like a row of totals/))
    .waitFor();
  await page.getByText("More to measure.").waitFor();
  await page.getByRole("heading", { name: "What to get" }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("out, broken, gone and the way back", async () => {
  const { page, faults, close } = await openMorning();
  await paste(page, "Name\tInside leg\nAnna\t49.5\nBen\t50\n");
  await page.getByText("2 of 2 have a bike").waitFor();
  const anna = pairs(page).filter({ hasText: "Anna" });
  const bikeOf = async (row) => (await row.locator(".club-names > span").textContent()).trim();
  const first = await bikeOf(anna);
  const act = async (row, what) => {
    const button = row.getByRole("button", { name: what });
    if (!(await button.isVisible())) await row.getByText("Change", { exact: true }).click();
    await button.click();
  };
  await act(anna, "Out riding");
  await anna.getByText("out riding", { exact: true }).waitFor();
  // A latecomer moves nobody who is out.
  await page.getByRole("textbox", { name: /Inside leg/ }).fill("49.5");
  await page.getByRole("textbox", { name: /Inside leg/ }).press("Enter");
  await page.getByText(/of 3 have a bike/).waitFor();
  assert.equal(await bikeOf(anna), first);
  await act(anna, "Back again");
  await anna.getByText("out riding", { exact: true }).waitFor({ state: "detached" });
  await act(anna, "Bike is broken");
  await page.getByRole("heading", { name: "Not here" }).waitFor();
  await page.waitForFunction(
    (before) =>
      ![...document.querySelectorAll("*")]
        .find((element) => element.shadowRoot)
        .shadowRoot.querySelector(".club-pairs")
        .textContent.includes(before),
    first,
  );
  await page.getByRole("button", { name: "Take the last step back" }).click();
  await page.getByRole("heading", { name: "Not here" }).waitFor({ state: "detached" });
  await act(anna, "Child has left");
  await page.getByText(/of 2 have a bike/).waitFor();
  await page.getByRole("button", { name: "Anna is back" }).click();
  await page.getByText(/of 3 have a bike/).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("a saddle that turned out wrong: the child is measured again, and keeps what the table said", async () => {
  const { page, faults, close } = await openMorning();
  await paste(page, "Name\tInside leg (in)\tAge\tRides\nAnna\t19 1/2\t5\tconfident\nBen\t20\t6\tnew\n");
  await page.getByText("2 of 2 have a bike").waitFor();
  const anna = pairs(page).filter({ hasText: "Anna" });
  const before = await anna.locator(".club-setting").textContent();
  await anna.getByText("Change", { exact: true }).click();
  await anna.getByRole("button", { name: "Too low or too high? Measure again" }).click();
  const inseam = page.getByRole("textbox", { name: /Inside leg/ });
  assert.ok(await inseam.evaluate((field) => field.getRootNode().activeElement === field), "ready to type");
  await inseam.fill("46 cm");
  await inseam.press("Enter");
  await anna.locator(".club-setting").filter({ hasNotText: before }).waitFor();
  await page.getByText("2 of 2 have a bike").waitFor();
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the children as CSV" }).click(),
  ]);
  const table = readFileSync(await saved.path(), "utf8");
  assert.match(table, /Anna,46 cm,.*confident,5/);
  assert.match(table, /Ben,20 in,.*new,6/);
  assert.deepEqual(faults, []);
  await close();
});

test("two hundred children: those on the screen are drawn, and all of them on paper", async () => {
  const { page, faults, close } = await openMorning();
  const rows = Array.from({ length: 200 }, (_, place) => `Child ${place + 1}\t${44 + (place % 30)}`);
  await paste(page, `Name\tInside leg (cm)\n${rows.join("\n")}\n`);
  await page.getByText("200 children read.").waitFor();
  const all = Number((await page.getByText(/of 200 have a bike/).textContent()).split(" ")[0]);
  assert.ok(all > 20);
  assert.ok((await pairs(page).count()) < all);
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  await pairs(page)
    .nth(all - 1)
    .waitFor({ state: "attached" });
  assert.equal(await pairs(page).count(), all);
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await pairs(page)
    .nth(all - 1)
    .waitFor({ state: "detached" });
  assert.deepEqual(faults, []);
  await close();
});

test("numbers instead of names", async () => {
  const { page, faults, close } = await openMorning();
  await paste(page, "Name\tInside leg\nAnna\t49.5\n");
  await page.getByText("Anna", { exact: true }).first().waitFor();
  await page.getByLabel("Numbers instead of names").check();
  await pairs(page).getByText("1", { exact: true }).waitFor();
  assert.equal(await pairs(page).getByText("Anna").count(), 0);
  assert.deepEqual(faults, []);
  await close();
});

test("the children are saved as CSV, and the file brings them back on another morning", async () => {
  const { page, faults, close } = await openMorning();
  await paste(page, "name\tinside leg\trides\nAnna\t49.5\tstarting\n=Ben\t19 1/2 in\t\n");
  await page.getByText("2 of 2 have a bike").waitFor();
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the children as CSV" }).click(),
  ]);
  assert.equal(saved.suggestedFilename(), "club-day-2026-11-28.csv");
  const file = await saved.path();
  const [head, anna, ben] = readFileSync(file, "utf8").replace("\ufeff", "").split("\r\n");
  assert.deepEqual([head, anna], ["name,inseam,stage", "Anna,49.5 cm,starting"]);
  assert.match(ben, /^'=Ben,/, "no spreadsheet takes a name for a formula");
  await page.getByRole("button", { name: "Remove all children" }).click();
  await page.getByLabel("Open a file (xlsx, CSV)").setInputFiles(file);
  await page.getByText("2 of 2 have a bike").waitFor();
  await page.getByText("=Ben", { exact: true }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});
