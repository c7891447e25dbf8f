// Several lists open at once, two of them merged, taped bikes put into one; and a list of a thousand entries.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import test, { after, before } from "node:test";
import { root } from "../support/built-engine.mjs";
import { eventually } from "../support/eventually.mjs";
import {
  entries,
  entry,
  field,
  fileFolder,
  focused,
  jsonList,
  openDesk,
  press,
  saved,
  tall,
} from "../support/list-desk.mjs";
import { goTo, launchBrowser, openPage, screens } from "../support/open-page.mjs";

const folder = fileFolder();
let browser;
before(async () => (browser = await launchBrowser()));
after(async () => {
  await browser.close();
  folder.done();
});

const shed = folder.file(
  "shed.json",
  jsonList(
    [
      { id: "L07", name: "Loan 07", saddle_lowest: 49.5, saddle_highest: 63, price: 120 },
      { id: "L08", name: "Loan 08", saddle_lowest: 52, saddle_highest: 66 },
      { id: "L09", name: "Loan 09", saddle_lowest: 47, saddle_highest: 60 },
    ],
    { title: "Loan shed", currency: "EUR" },
  ),
);
const trailer = folder.file(
  "trailer.json",
  jsonList(
    [
      { id: "L07", name: "Loan 07", saddle_lowest: "19 1/2 in", saddle_highest: "25 in", price: 90 },
      { id: "L08", name: "Loan 08", saddle_lowest: 20.5, saddle_highest: 26, condition: "new tyre" },
      { id: "T01", name: "Trailer 01", saddle_lowest: 18 },
    ],
    { title: "Trailer", units: "in", currency: "GBP" },
  ),
);

const switchTo = (page, name) =>
  page
    .getByRole("list", { name: "Open lists" })
    .getByRole("button", { name: new RegExp(`^${name}`) })
    .click();

test("each of several lists keeps its changes and their undo, and none is closed unsaved without a word", async () => {
  const { page, faults, close } = await openDesk(browser, tall, [shed, trailer]);
  await page.getByRole("heading", { name: "Trailer" }).waitFor();
  await switchTo(page, "Loan shed");
  await entry(page, "Loan 09").getByRole("button").first().click();
  await press(page, "Remove this bike");
  await page.getByText("Removed Loan 09.").waitFor();
  await switchTo(page, "Trailer");
  await entry(page, "Trailer 01").waitFor();
  assert.equal(await page.getByText("Removed Loan 09.").count(), 0);
  const lists = page.getByRole("list", { name: "Open lists" });
  await lists.getByText("not saved").waitFor();
  await lists.getByRole("button", { name: "Close Loan shed" }).click();
  await page.getByText("“Loan shed” has changes that are not saved.").waitFor();
  await eventually(async () => assert.equal((await focused(page)).text, "Keep it open"));
  await press(page, "Keep it open");
  await switchTo(page, "Loan shed");
  await entry(page, "Loan 09").waitFor({ state: "detached" });
  await press(page, "Undo");
  await entry(page, "Loan 09").waitFor();
  await page.getByText("not saved").first().waitFor({ state: "detached" });
  await lists.getByRole("button", { name: "Close Loan shed" }).click();
  await page.getByRole("heading", { name: "Trailer" }).waitFor();
  await goTo(page, "Bikes");
  await page.getByText("Trailer 01").first().waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("two lists are merged: the same in other units is alike, the rest is chosen side by side, all is taken back", async () => {
  const { page, faults, close } = await openDesk(browser, tall, [trailer, shed]);
  await press(page, "Merge with another list");
  await page.getByRole("button", { name: /^Trailer/ }).click();
  await page.getByText("1 only in the other. 2 in both, but different.", { exact: false }).waitFor();
  const second = page.getByRole("article", { name: "Loan 08" });
  const cells = await second.getByRole("row").allTextContents();
  assert.ok(
    cells.some((row) => /Saddle at its lowest/.test(row) && /52/.test(row) && /20.5/.test(row)),
    cells.join("; "),
  );
  await second.getByRole("radio", { name: "The other" }).check();
  await page.getByRole("article", { name: "Loan 07" }).getByRole("radio", { name: "Take both" }).check();
  await press(page, "Merge them");
  await page.getByText("Merged with Trailer.").waitFor();
  await entry(page, "Trailer 01").waitFor();
  const { bikes } = JSON.parse((await saved(page)).text);
  assert.equal(bikes.length, 5);
  const taken = bikes.find(({ id }) => id === "L08");
  assert.match(String(taken.saddle_lowest), /20[.,]5 ?in/, "a bare figure of the other list got its unit");
  assert.equal(taken.condition, "new tyre");
  await press(page, "Undo");
  await entry(page, "Trailer 01").waitFor({ state: "detached" });
  await page.getByRole("radio", { name: "All 3" }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("all that differ are taken from one side by one tap, and the others are left out", async () => {
  const { page, close } = await openDesk(browser, screens.laptop, [shed]);
  await press(page, "Merge with another list");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Choose a file" }).click(),
  ]);
  await chooser.setFiles(trailer);
  await page.getByRole("checkbox", { name: "Add the one bike that is only in the other list" }).uncheck();
  await page
    .getByRole("group", { name: "For all that differ" })
    .getByRole("radio", { name: "The other" })
    .check();
  assert.ok(
    await page
      .getByRole("article", { name: "Loan 08" })
      .getByRole("radio", { name: "The other" })
      .isChecked(),
  );
  await press(page, "Merge them");
  await page.getByText("Merged with trailer.json.").waitFor();
  const { bikes } = JSON.parse((await saved(page)).text);
  assert.equal(bikes.length, 3);
  assert.equal(bikes[0].price, undefined, "pounds are not taken for euros");
  await close();
});

const spring = folder.file(
  "spring.json",
  jsonList(
    [
      { id: "M1", name: "Meadow 1", saddle_lowest: 19.5, notes: "bell" },
      { id: "M2", name: "Meadow 2", saddle_lowest: 20, condition: "used", measured_on: "2026-11-20" },
      { id: "M3", name: "Meadow 3", saddle_lowest: 21, measured_on: "in spring" },
    ],
    { title: "Spring list", units: "in", measured_on: "2026-03-01" },
  ),
);
const autumn = folder.file(
  "autumn.json",
  jsonList(
    [
      { id: "M1", saddle_lowest: 51, saddle_highest: 62, price: 80 },
      { id: "M2", saddle_lowest: 53, price: 70 },
      { id: "M3", saddle_lowest: 54 },
    ],
    { title: "Autumn list", currency: "GBP", measured_on: "2026-10-03" },
  ),
);

test("of two lists the newer bikes win, the gaps of others are filled, and nothing is offered that nobody knows", async () => {
  const { page, faults, close } = await openDesk(browser, tall, [autumn, spring]);
  const list = async () => JSON.parse((await saved(page)).text);
  const before = await list();
  await press(page, "Merge with another list");
  await page.getByRole("button", { name: /^Autumn list/ }).click();
  const all = page.getByRole("group", { name: "For all that differ" });
  const bike = (number) => page.getByRole("article", { name: `Meadow ${number}` });
  const chosen = (number, side) => bike(number).getByRole("radio", { name: side, exact: true }).isChecked();
  await bike(3).getByRole("radio", { name: "Take both" }).check();
  await all.getByRole("radio", { name: "Newer wins" }).check();
  await page.getByText("Which is newer is not known for 1 bike", { exact: false }).waitFor();
  await bike(1).getByText("Measured on 3 Oct", { exact: false }).first().waitFor();
  assert.ok((await chosen(1, "Newer wins")) && (await chosen(2, "Newer wins")));
  assert.ok(await chosen(3, "Take both"), "what was chosen stays where nobody knows which is newer");
  assert.equal(await bike(3).getByRole("radio", { name: "Newer wins" }).count(), 0);
  assert.equal(await bike(3).getByRole("radio", { name: "Fill the gaps" }).count(), 0);
  assert.ok(await all.getByRole("radio", { name: "Newer wins" }).isChecked());
  await bike(3).getByRole("radio", { name: "This list" }).check();
  await bike(2).getByRole("radio", { name: "Fill the gaps" }).check();
  await bike(2).getByText("Adds: price_gbp.").waitFor();
  await press(page, "Merge them");
  await page.getByText("Merged with Autumn list.").waitFor();
  const merged = await list();
  assert.equal(merged.measured_on, "2026-10-03");
  const [first, ...others] = before.bikes;
  assert.deepEqual(merged.bikes, [
    { ...first, saddle_lowest: "51 cm", saddle_highest: "62 cm", price_gbp: 80 },
    { ...others[0], price_gbp: 70 },
    others[1],
  ]);
  await press(page, "Undo");
  await page.getByText("Undone: Merged with Autumn list.").waitFor();
  assert.deepEqual(await list(), before);

  await press(page, "Merge with another list");
  await page.getByRole("button", { name: /^Autumn list/ }).click();
  await all.getByRole("radio", { name: "Fill the gaps" }).check();
  assert.ok(await chosen(3, "This list"), "nothing is missing there");
  await bike(1).getByText("Adds: Saddle at its highest and price_gbp.").waitFor();
  await press(page, "Merge them");
  await page.getByText("Merged with Autumn list.").waitFor();
  const filled = await list();
  assert.equal(filled.measured_on, "2026-03-01");
  assert.deepEqual(filled.bikes[0], { ...first, saddle_highest: "62 cm", price_gbp: 80 });
  assert.deepEqual(faults, []);
  await close();
});

test("two lists without a name are both there again after the page was left", async () => {
  const { page, close } = await openDesk(browser, tall, [], { served: true });
  for (const mark of ["A1", "B1"]) {
    if (mark === "B1") await page.getByText("New list, or made-up bikes").click();
    await press(page, "Start a new list");
    await press(page, "Discard changes");
    await press(page, "Add a bike");
    await field(page, "Number on its tag").fill(mark);
    await field(page, "Saddle at its lowest (cm)").fill("48");
    await press(page, "Save this bike");
    await entry(page, mark).waitFor();
  }
  await goTo(page, "Save");
  await page.getByRole("checkbox", { name: "Save on this device" }).check();
  await page.getByText("Saved as you type.").waitFor();
  await page.reload();
  await page.getByRole("heading", { name: "Save and print", exact: true }).waitFor();
  await goTo(page, "List");
  await entry(page, "B1").waitFor();
  const lists = page.getByRole("list", { name: "Open lists" }).getByRole("listitem");
  assert.equal(await lists.count(), 2);
  await lists.first().getByRole("button").first().click();
  await entry(page, "A1").waitFor();
  await close();
});

test("a taped bike goes from the rack into the list, a list begins where there is none, and undo brings it back", async () => {
  const { page, faults, close } = await openPage(browser, screens.phone);
  await page.getByRole("radio", { name: "centimetres" }).check();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await goTo(page, "Measure");
  await field(page, "Saddle at its lowest (cm)").fill("48");
  await press(page, "Add it to the bikes");
  await page.getByRole("button", { name: "Add to the list: Measured bike 1" }).click();
  await page.getByText("Added to the bikes").waitFor({ state: "detached" });
  await goTo(page, "List");
  await entry(page, "Measured bike 1")
    .getByText(/Saddle from 48.cm/)
    .waitFor();
  await press(page, "Undo");
  await entry(page, "Measured bike 1").waitFor({ state: "detached" });
  await goTo(page, "Measure");
  await page.getByRole("button", { name: "Add to the list: Measured bike 1" }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("a thousand entries: few are in the page, the last one is reached, changed, and found again", async () => {
  const program = join(root, "tests/support/make-list.mjs");
  const list = folder.file(
    "thousand.json",
    execFileSync(process.execPath, [program, "1000"], { maxBuffer: 1 << 26 }),
  );
  const { page, faults, close } = await openDesk(browser, screens.phone, [list]);
  const last = entries(page).locator('[aria-posinset="1000"]');
  await eventually(async () => {
    await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
    assert.ok(await last.isVisible());
  });
  await last.getByRole("button").first().waitFor();
  assert.ok((await entries(page).getByRole("listitem").count()) < 120);
  await last.getByRole("button").first().click();
  await field(page, "Notes").fill("the very last");
  await press(page, "Save this bike");
  await page.getByText(/^Changed /).waitFor();
  await eventually(async () => {
    assert.ok(
      await last
        .getByRole("button")
        .first()
        .evaluate((button) => button === button.getRootNode().activeElement),
    );
  });
  await field(page, "Find a bike").fill("the very last");
  // Rows are drawn a piece a frame.
  await eventually(async () => assert.equal(await page.getByRole("article").count(), 1));
  assert.deepEqual(faults, []);
  await close();
});
