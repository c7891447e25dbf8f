// Lists and family files that strangers wrote, one after the other through one open page: whatever is in them, no script runs,
// nothing is sent, what was typed stays, and the page does not stall. tests/web/hostile has the cases.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { fedAll, stranger, watched } from "../support/hostile.mjs";
import { launchBrowser, openPage, screens } from "../support/open-page.mjs";
import { hostileFamilyFiles } from "./hostile/family-files.mjs";
import { hostileLists } from "./hostile/lists.mjs";

let browser;
let server;
before(async () => {
  browser = await launchBrowser();
  server = await stranger();
});
after(async () => {
  await browser.close();
  server.close();
});

/** The page with a figure typed and a list open, on a screen as it is. */
async function opened() {
  const own = await openPage(browser, screens.phone);
  const { page } = own;
  const faults = await watched(page);
  await page.reload();
  await page.evaluate(
    async (shed) => {
      const { find, give, goTo, type, until } = window.drive;
      await until("the page", () => find(".screen-title"));
      find(".screen.rider input[type=radio][value=cm]").click();
      type(".screen.rider input[id^=reading-]", "49.5");
      await goTo("list");
      give(find(".screen.list input[type=file]"), "shed.json", shed);
      await until("the list", () => find(".screen.list [data-entry]"));
    },
    readFileSync(sample("loan-shed.json"), "utf8"),
  );
  return { page, faults, close: own.close, console: own.faults };
}

/** Runs in the page: opens a list; what is opened is looked at on every screen that it comes to, and closed again. */
async function lookAtList({ name, content }) {
  const { find, give, goTo, press, room, stands, until } = window.drive;
  await goTo("list");
  const lists = () => room().querySelectorAll(".open-lists li").length;
  const before = lists();
  give(find(".screen.list input[type=file]"), name, content);
  const refused = () => find(".refused strong")?.textContent.includes(name);
  await until("an answer", () => lists() > before || refused());
  if (lists() === before) {
    await press(".navigation .to-rack");
    return false;
  }
  const entry = find(".screen.list [data-entry]");
  entry?.click();
  if (entry !== null) {
    await until("the entry", () => find("#desk-id, #desk-name"));
    await press(".screen.list .at-hand .button:not(.main)");
  }
  await goTo("rack");
  const bike = find(".screen.rack .row-name");
  if (bike !== null) {
    (bike.closest("button") ?? bike).click();
    await stands("bike");
  }
  await goTo("list");
  find(".open-lists li:last-child .plain-link").click();
  await until("the end of the list", () => lists() === before);
  return true;
}

test("hostile lists run nothing, send nothing, lose nothing and stall nothing", async (test) => {
  const { page, faults, console, close } = await opened();
  const cases = hostileLists(server.address);
  assert.ok(cases.length >= 140);
  let looked = 0;
  const longest = await fedAll({ page, faults, cases, typed: "49.5", server }, async (one) => {
    const name = one.name.replace(".", `-${cases.indexOf(one)}.`);
    if (await page.evaluate(lookAtList, { ...one, name })) ++looked;
  });
  test.diagnostic(`${cases.length} lists, ${looked} of them opened; longest task ${Math.round(longest)} ms`);
  assert.ok(looked > 90);
  assert.deepEqual(console, []);
  await close();
});

/** Runs in the page: opens a family file; what is opened is looked at and taken back. */
async function lookAtFamily({ name, content }) {
  const { find, give, goTo, press, until } = window.drive;
  await goTo("keep");
  give(find(".screen.keep input[type=file]"), name, content);
  const said = () => find(".screen.keep .stack > [role=status] p")?.textContent ?? "";
  await until("an answer", () => said().includes(name));
  if (find(".screen.keep .problem.at-once") !== null) return false;
  const hasLists = !content.includes('"lists":[]');
  for (const tab of ["rider", "rack", ...(hasLists ? ["list"] : []), "keep"]) await goTo(tab);
  await press(".screen.keep [role=status] .plain-link");
  await until("what was there before", () => !said().includes(name));
  await goTo("rider");
  return true;
}

test("hostile family files run nothing, send nothing, lose nothing and stall nothing", async (test) => {
  const { page, faults, console, close } = await opened();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.evaluate(async () => {
      await window.drive.goTo("keep");
      await window.drive.press(".screen.keep .button.main");
    }),
  ]);
  const whole = JSON.parse(readFileSync(await download.path(), "utf8"));
  const cases = hostileFamilyFiles(server.address, whole);
  assert.ok(cases.length >= 120);
  let looked = 0;
  const longest = await fedAll({ page, faults, cases, typed: "49.5", server }, async (one) => {
    if (await page.evaluate(lookAtFamily, { ...one, name: `family-${cases.indexOf(one)}.json` })) ++looked;
  });
  test.diagnostic(
    `${cases.length} family files, ${looked} of them opened; longest task ${Math.round(longest)} ms`,
  );
  assert.ok(looked > 80);
  assert.deepEqual(console, []);
  await close();
});
