// What <saddlerule-fit> loads after its first verdict, or when somebody asks for it: what is said while it is on its way, and where it does
// not come.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import test, { after, before } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { keepStageChosen, usualStage } from "../support/choose-stage.mjs";
import { clubPage, clubSite, elementFolder } from "../support/club-site.mjs";
import { eventually } from "../support/eventually.mjs";
import { launchBrowser } from "../support/open-page.mjs";

const shed = readFileSync(sample("loan-shed.json"));
const fileOf = (pattern) => readdirSync(elementFolder).find((name) => pattern.test(name));
const script = fileOf(/^saddlerule-later-[0-9a-f]+\.js$/);
const german = fileOf(/^saddlerule-later-words-de/);

let browser;
before(async () => {
  browser = await launchBrowser();
});
after(() => browser.close());

/** A club's page on a phone. `held`: the files that do not come before `give` is called with what is to come of them. */
async function visit(test, { held = [], locale = "en-GB" } = {}) {
  const site = await clubSite({
    "/": clubPage('<saddlerule-fit list="/bikes.json"></saddlerule-fit>', {
      head: '<script src="/saddlerule/saddlerule-fit.js" async></script>',
    }),
    "/bikes.json": shed,
    "/club.css": "",
  });
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, locale });
  test.after(async () => {
    await context.close();
    site.close();
  });
  const page = await context.newPage();
  await context.addInitScript(keepStageChosen, usualStage);
  const problems = [];
  page.on("pageerror", (error) => problems.push(error.message));
  await page.addInitScript(() => {
    window.told = [];
    document.addEventListener("saddlerule-problem", ({ detail }) => window.told.push(detail.code));
  });
  let comes = null;
  const waiting = [];
  const answer = (route) => (comes ? route.continue() : route.abort());
  await page.route(
    (url) => held.some((name) => url.pathname.endsWith(name)),
    (route) => (comes === null ? waiting.push(route) : answer(route)),
  );
  const give = (is) => {
    comes = is;
    for (const route of waiting.splice(0)) void answer(route);
  };
  await page.goto(`${site.address}/`);
  const asked = (name) => site.requests.filter((path) => path.endsWith(name)).length;
  return { page, problems, asked, give, waiting };
}

const measureInseam = (page, name = "Inside leg") => page.getByRole("textbox", { name }).first().fill("52");

test("the rest comes by itself after the first verdict, and not before", async (test) => {
  const { page, asked, problems } = await visit(test);
  await page.getByRole("heading", { name: "Your child", exact: true }).waitFor();
  await eventually(() => assert.equal(asked("/bikes.json"), 1));
  assert.equal(asked(script), 0);
  await measureInseam(page);
  await eventually(() => assert.equal(asked(script), 1));
  await page.getByRole("button", { name: "Measure", exact: true }).click();
  await page.getByRole("heading", { name: "Measure a bike" }).waitFor();
  assert.deepEqual(problems, []);
});

test("a screen says that it is on its way; nothing that was typed is lost, and the focus goes to its heading", async (test) => {
  const { page, give, problems } = await visit(test, { held: [script] });
  await measureInseam(page);
  await page.getByRole("button", { name: "List", exact: true }).click();
  await page.getByRole("heading", { name: "Loading" }).waitFor();
  give(true);
  const heading = page.getByRole("heading", { name: "List", exact: true });
  await heading.waitFor();
  await eventually(async () => assert.ok(await heading.evaluate((one) => one.matches(":focus"))));
  await page.getByRole("button", { name: "Your child", exact: true }).click();
  assert.equal(await page.getByRole("textbox", { name: "Inside leg" }).first().inputValue(), "52");
  assert.deepEqual(problems, []);
});

test("where it does not come, that is said and told, and it can be asked for again", async (test) => {
  const { page, give, problems } = await visit(test, { held: [script] });
  let lost = 0;
  page.on("requestfailed", () => ++lost);
  await measureInseam(page);
  await page.getByRole("button", { name: "List", exact: true }).click();
  await page.getByRole("heading", { name: "Loading" }).waitFor();
  give(false);
  await page.getByRole("heading", { name: "This did not load" }).waitFor();
  await page.getByText("What you typed is still here").waitFor();
  assert.deepEqual(await page.evaluate(() => window.told), ["files_not_loaded"]);
  // The first screens go on.
  await page.getByRole("button", { name: "Your child", exact: true }).click();
  assert.equal(await page.getByRole("textbox", { name: "Inside leg" }).first().inputValue(), "52");
  // Whoever comes anew has it asked for anew.
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await eventually(() => assert.equal(lost, 2));
  await page.getByRole("heading", { name: "This did not load" }).waitFor();
  give(true);
  await page.getByRole("button", { name: "Try again" }).click();
  await page.getByRole("heading", { name: "Save and print" }).waitFor();
  assert.deepEqual(problems, []);
});

test("in another language its words come with it, and are asked for again as well", async (test) => {
  const { page, give, asked, problems } = await visit(test, { held: [german], locale: "de-DE" });
  await page.getByRole("heading", { name: "Das Kind" }).waitFor();
  assert.equal(asked(german), 0);
  await page.locator("nav .to-list").click();
  await page.getByRole("heading", { name: "Wird geladen" }).waitFor();
  give(false);
  const again = page.getByRole("button", { name: "Noch einmal versuchen" });
  await again.waitFor();
  give(true);
  await again.click();
  await page.getByRole("heading", { name: "Die Liste", exact: true }).waitFor();
  assert.deepEqual(problems, []);
});
