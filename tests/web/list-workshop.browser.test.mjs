// Measuring bike after bike in a hall: the keyboard goes from field to field, marks count on, every figure is checked at once.

import assert from "node:assert/strict";
import test, { after, before } from "node:test";
import { eventually } from "../support/eventually.mjs";
import {
  entry,
  field,
  fileFolder,
  focused,
  jsonList,
  openDesk,
  press,
  saved,
} from "../support/list-desk.mjs";
import { launchBrowser, screens } from "../support/open-page.mjs";

const folder = fileFolder();
let browser;
before(async () => (browser = await launchBrowser()));
after(async () => {
  await browser.close();
  folder.done();
});

const shed = folder.file(
  "shed.json",
  jsonList([
    { id: "L07", name: "Loan 07", saddle_lowest: 49.5, saddle_highest: 63 },
    { id: "L09", name: "Loan 09", saddle_lowest: 52, saddle_highest: 66 },
    { id: "L06", name: "Loan 06", saddle_lowest: 47, saddle_highest: 61 },
  ]),
);

test("three bikes are measured with the keyboard alone; marks that are taken are passed over", async () => {
  const { page, faults, close } = await openDesk(browser, screens.phone, [shed]);
  await press(page, "Measure bikes");
  const mark = field(page, "Number on its tag");
  await eventually(async () =>
    assert.equal(await mark.inputValue(), "L08", "after L06 come L07, which is taken, and L08"),
  );
  await eventually(async () => assert.equal((await focused(page)).id, "desk-saddle_lowest"));
  for (const [lowest, highest, next] of [
    ["48,5", "62", "L10"],
    ["50", "64.5", "L11"],
    ["51", "65", "L12"],
  ]) {
    await page.keyboard.type(lowest);
    await page.keyboard.press("Enter");
    assert.equal((await focused(page)).id, "desk-saddle_highest");
    await page.keyboard.type(highest);
    await page.keyboard.press("Enter");
    assert.equal((await focused(page)).text, "Next bike");
    await page.getByText("Looks right.").waitFor();
    await page.keyboard.press("Enter");
    await eventually(async () => assert.equal(await mark.inputValue(), next));
    await eventually(async () => assert.equal((await focused(page)).id, "desk-saddle_lowest"));
  }
  await press(page, "Done measuring");
  const { bikes } = JSON.parse((await saved(page)).text);
  assert.deepEqual(
    bikes.map(({ id }) => id),
    ["L07", "L09", "L06", "L08", "L10", "L11"],
  );
  assert.equal(bikes[3].saddle_lowest, 48.5);
  assert.deepEqual(faults, []);
  await close();
});

test("a tape in inches on a list in centimetres says its unit with each figure", async () => {
  const { page, close } = await openDesk(browser, screens.phone, [shed]);
  await press(page, "Measure bikes");
  await page.getByRole("radio", { name: "in", exact: true }).check();
  await field(page, "Saddle at its lowest (in)").fill("19 1/2");
  await press(page, "Next bike");
  await page.getByText("Added L08.").waitFor();
  await field(page, "Saddle at its lowest (in)").waitFor();
  await press(page, "Done measuring");
  await entry(page, "L08")
    .getByText(/Saddle from 49.5.cm/)
    .waitFor();
  await close();
});

test("a mark that is taken, swapped heights and a figure in another unit are said while they are typed", async () => {
  const { page, close } = await openDesk(browser, screens.laptop, [shed]);
  await press(page, "Measure bikes");
  await field(page, "Number on its tag").fill("L07");
  await field(page, "Saddle at its lowest (cm)").fill("50");
  await page.getByText("Two bikes have the tag “L07”.").waitFor();
  await page.getByRole("button", { name: /Call this one/ }).click();
  await page.getByText("Two bikes have the tag “L07”.").waitFor({ state: "detached" });
  await field(page, "Saddle at its highest (cm)").fill("41");
  await press(page, "Swap them");
  assert.equal(await field(page, "Saddle at its lowest (cm)").inputValue(), "41");
  await field(page, "Saddle at its lowest (cm)").fill("17.5");
  await page.getByRole("button", { name: /^Read .* 17.5 in$/ }).waitFor();
  await field(page, "Saddle at its lowest (cm)").fill("41 horses");
  await page.getByText("As it is, this bike is left out until it is fixed.").waitFor();
  await close();
});

test("nothing goes in before there is a height, and a half-filled bike is not lost on the way", async () => {
  const { page, close } = await openDesk(browser, screens.phone, [shed]);
  await press(page, "Measure bikes");
  const next = page.getByRole("button", { name: "Next bike" });
  await eventually(async () => assert.equal(await next.getAttribute("aria-disabled"), "true"));
  await next.click({ force: true });
  await page.getByText("A bike needs a tag number or a name, and one saddle height.").waitFor();
  await field(page, "Saddle at its highest (cm)").fill("60");
  await page.getByRole("navigation").getByRole("button", { name: "Bikes" }).click();
  await page.getByRole("heading", { name: "Bikes", exact: true }).waitFor();
  await page.getByRole("navigation").getByRole("button", { name: "List" }).click();
  assert.equal(await field(page, "Saddle at its highest (cm)").inputValue(), "60");
  await press(page, "Done measuring");
  await entry(page, "L08").waitFor();
  await close();
});

test("the drawing shows the measure in hand, in words too", async () => {
  const { page, close } = await openDesk(browser, screens.phone, [shed]);
  await press(page, "Measure bikes");
  await page.getByRole("img", { name: /Saddle all the way down/ }).waitFor();
  await field(page, "Saddle at its highest (cm)").focus();
  await page.getByRole("img", { name: /minimum-insertion mark, never past it/ }).waitFor();
  await page.getByText("More measurements").click();
  for (const [name, words] of [
    ["Frame height (standover) (cm)", /top of the frame/],
    ["Brake lever reach (cm)", /outside of the grip/],
    ["Bottom bracket height (cm)", /middle of the crank/],
  ]) {
    await field(page, name).focus();
    await page.getByRole("img", { name: words }).waitFor();
  }
  await close();
});
