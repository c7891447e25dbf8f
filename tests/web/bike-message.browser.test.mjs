// A bike out of a message: what a seller wrote or a code carries fills in the form of a measured bike.

import assert from "node:assert/strict";
import test, { after, before } from "node:test";
import { goTo, launchBrowser, openPage, screens } from "../support/open-page.mjs";

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

async function openMessages() {
  const opened = await openPage(browser, screens.phone);
  await opened.page.getByRole("textbox", { name: "Inside leg", exact: true }).fill("49.5");
  await goTo(opened.page, "Measure");
  await opened.page.getByText("From a message or a tag’s code").click();
  return opened;
}

async function read(page, text) {
  await page.getByRole("textbox", { name: "What the seller wrote, or the text of the code" }).fill(text);
  await page.getByRole("button", { name: "Fill in" }).click();
}

const field = (page, name) => page.getByRole("textbox", { name, exact: false });

test("the text of a code fills in the form, and the verdict is there", async () => {
  const { page, faults, close } = await openMessages();
  await read(page, "#L07: Sattel 45 cm bis 58 cm, Rad 16 Zoll, 80 €");
  await page.getByText("Filled in. Please check the numbers above.").waitFor();
  assert.equal(await field(page, "Saddle at its lowest").inputValue(), "45 cm");
  assert.equal(await field(page, "Saddle at its highest").inputValue(), "58 cm");
  await page.locator(".screen.tape section.told").getByText("Saddle height fits").waitFor();
  await page.getByText("More about this bike").click();
  assert.equal(await field(page, "Name for this bike").inputValue(), "L07");
  assert.equal(await field(page, "Wheel size").inputValue(), "16");
  assert.equal(await field(page, "Price").inputValue(), "80");
  await page.getByRole("button", { name: "Add it to the bikes" }).click();
  await page.getByText("Added to the bikes").waitFor();
  assert.equal(await page.getByText("Filled in. Please check").count(), 0, "about the bike before");
  assert.deepEqual(faults, []);
  await close();
});

test("a seller's answer in another unit counts in that unit, and leaves what it does not say", async () => {
  const { page, faults, close } = await openMessages();
  await page.getByText("More about this bike").click();
  await field(page, "Name for this bike").fill("Green one");
  await read(page, "Hi! It goes from 19 1/2 in up to 24 in.");
  await page.getByText("Filled in.").waitFor();
  assert.equal(await field(page, "Saddle at its lowest").inputValue(), "19 1/2 in");
  assert.equal(await field(page, "Saddle at its highest").inputValue(), "24 in");
  assert.equal(await field(page, "Name for this bike").inputValue(), "Green one");
  await page.locator(".screen.tape section.told").getByText("Saddle height fits").waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("a text without clear heights is refused in words, and what was typed stays", async () => {
  const { page, faults, close } = await openMessages();
  await field(page, "Saddle at its lowest").fill("47");
  for (const text of ["", "No idea, sorry!", "48 cm, 52 cm or 60 cm", "<b>52</b>".repeat(20000)]) {
    await read(page, text);
    await page
      .getByText("The two saddle heights cannot be made out in this text. Please type them.")
      .waitFor();
    assert.equal(await field(page, "Saddle at its lowest").inputValue(), "47");
  }
  await read(page, "48 cm to 60 cm");
  await page.getByText("Filled in.").waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("the question for the seller is copied, or there to copy by hand", async () => {
  const { page, close } = await openMessages();
  await page.getByRole("button", { name: "Copy as text" }).click();
  await page
    .getByText(/Copied|Copy this/i)
    .first()
    .waitFor();
  const byHand = await page.locator(".screen.tape pre").allTextContents();
  for (const text of byHand) assert.match(text, /two heights/);
  await close();
});
