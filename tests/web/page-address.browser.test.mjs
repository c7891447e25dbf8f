// What is behind the # of the page file's own address.

import assert from "node:assert/strict";
import test, { after, before } from "node:test";
import { launchBrowser, pageAddress, screens } from "../support/open-page.mjs";

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

async function open(hash) {
  const context = await browser.newContext({ viewport: screens.laptop, locale: "en-GB", offline: true });
  const page = await context.newPage();
  const said = [];
  page.on("console", (message) => said.push(message.text()));
  page.on("pageerror", (error) => said.push(error.message));
  await page.goto(`${pageAddress}${hash}`);
  return { page, said, close: () => context.close() };
}

test("language, unit and screen are as the address says, and follow it", async () => {
  const { page, said, close } = await open("#language=de&units=in&view=tape");
  await page.locator(".screen.tape.current").waitFor();
  assert.equal(await page.evaluate(() => document.documentElement.lang), "de");
  await page.evaluate(() => (window.location.hash = "language=en&units=in&view=rack"));
  await page.getByRole("heading", { name: "Bikes", exact: true }).waitFor();
  assert.ok(await page.getByRole("radio", { name: "inches" }).first().isChecked());
  assert.deepEqual(said, []);
  await close();
});

test("a list that it names cannot be fetched by a file that goes nowhere, which says so and tries nothing", async () => {
  const { page, said, close } = await open("#list=https://club.example/bikes.json&view=rack&colour=red");
  const requests = [];
  page.on("request", (request) => requests.push(request.url()));
  await page
    .getByRole("alert")
    .getByText("This page never goes online, so it cannot load the list.")
    .waitFor();
  await page.getByRole("alert").getByText("“https://club.example/bikes.json” could not be opened.").waitFor();
  assert.equal(await page.getByRole("button", { name: "Try again" }).count(), 0);
  assert.deepEqual(
    requests.filter((address) => !/^(blob|data):/.test(address)),
    [],
  );
  assert.equal(said.length, 2);
  assert.match(said[0], /#colour="red" is not understood/);
  assert.match(said[1], /the list https:\/\/club\.example\/bikes\.json is not opened \(address_offline\)/);
  await close();
});
