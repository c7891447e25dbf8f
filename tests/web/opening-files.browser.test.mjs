// Opening files while the page goes on: progress and a stop button for big ones, the list in use until the new one is there, and
// the engine in its own thread, without one, and after a breakdown.

import assert from "node:assert/strict";
import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import test, { after, before } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { canBreakDown, inEveryThread, readsSlowly } from "../support/engine-thread.mjs";
import { eventually } from "../support/eventually.mjs";
import { field, fileFolder, jsonList, press } from "../support/list-desk.mjs";
import { makeList } from "../support/make-list.mjs";
import { keepStageChosen, usualStage } from "../support/choose-stage.mjs";
import { goTo, launchBrowser, openList, openPage, pageFile, screens } from "../support/open-page.mjs";

const folder = fileFolder();
let browser;
before(async () => (browser = await launchBrowser()));
after(async () => {
  await browser.close();
  folder.done();
});

const big = folder.file("big.json", JSON.stringify(makeList(20000)));
const nothing = folder.file("nothing.json", jsonList([]));

const slowly = (context) => inEveryThread(context, readsSlowly);
const strip = (page) => page.locator(".opening-strip");
const stop = (page) => page.getByRole("button", { name: "Stop", exact: true });
const rackRows = (page) => page.getByRole("list", { name: "Bikes, best first" }).getByRole("listitem");

/** The page with the shed's bikes judged for a rider. */
async function openShed(options = {}, viewport = screens.phone) {
  const opened = await openPage(browser, viewport, options);
  const { page } = opened;
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5 cm");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("heading", { name: "Loan shed, autumn list" }).waitFor();
  return opened;
}

/** All that a screen reader is told, in its order. */
async function heard(page) {
  await page.evaluate(() => {
    window.heard = [];
    const host = [...document.querySelectorAll("*")].find((element) => element.shadowRoot);
    const { shadowRoot } = host;
    new MutationObserver(() => {
      for (const status of shadowRoot.querySelectorAll("[role=status]")) {
        const words = status.textContent.replaceAll("\u00a0", " ");
        if (words !== "" && window.heard.at(-1) !== words) window.heard.push(words);
      }
    }).observe(shadowRoot, { subtree: true, childList: true, characterData: true });
  });
  return () => page.evaluate(() => window.heard);
}

test("a big file shows how far it is, the list in use is used meanwhile, and the new one takes its place", async () => {
  const { page, faults, close } = await openShed({ prepare: slowly });
  const words = await heard(page);
  const [first] = page.workers();
  await openList(page, big);
  const bar = page.getByRole("progressbar", { name: "Reading “big.json”" });
  await bar.waitFor();
  const done = () => bar.evaluate((element) => element.value);
  const earlier = await done();
  await goTo(page, "Bikes");
  await rackRows(page).first().waitFor();
  await goTo(page, "Your child");
  await page.getByRole("textbox", { name: "Inside leg" }).fill("55.5 cm");
  await page.getByText("Best: 55.5 cm").waitFor();
  assert.ok(await bar.isVisible(), "typing is answered while the file is read");
  await eventually(async () => assert.ok((await done()) > earlier));
  await goTo(page, "Bikes");
  await page.locator('[aria-setsize="20000"]').first().waitFor();
  await strip(page).waitFor({ state: "detached" });
  const said = await words();
  assert.ok(said.includes("Reading “big.json” 25%"), said.join("; "));
  await eventually(() => assert.ok(!page.workers().includes(first), "the first engine's thread is ended"));
  assert.equal(page.workers().length, 1);
  assert.deepEqual(faults, []);
  await close();
});

test("stopped, a file leaves the list, its verdicts and its engine as they were", async () => {
  const { page, faults, close } = await openShed({ prepare: slowly });
  const words = await heard(page);
  const [engine, ...others] = page.workers();
  assert.deepEqual(others, [], "no second engine before a file is chosen");
  await openList(page, big);
  await stop(page).waitFor();
  assert.equal(page.workers().length, 2);
  await stop(page).click();
  await strip(page).waitFor({ state: "detached" });
  await eventually(() => assert.deepEqual(page.workers(), [engine], "what reads it is ended"));
  await page.getByRole("heading", { name: "Loan shed, autumn list" }).waitFor();
  assert.ok((await words()).includes("Stopped. Your list has not changed."));
  await goTo(page, "Your child");
  await page.getByRole("textbox", { name: "Inside leg" }).fill("55.5 cm");
  await page.getByText("Best: 55.5 cm").waitFor();
  await goTo(page, "Bikes");
  await rackRows(page).first().waitFor();
  assert.equal(await page.locator('[aria-setsize="20000"]').count(), 0);
  assert.deepEqual(faults, []);
  await close();
});

test("another file chosen meanwhile is the one that is opened", async () => {
  const { page, faults, close } = await openShed({ prepare: slowly });
  await openList(page, big);
  await strip(page).waitFor();
  await openList(page, sample("swap-morning.json"));
  await page.getByRole("heading", { name: /Swap morning/ }).waitFor();
  await strip(page).waitFor({ state: "detached" });
  await eventually(() => assert.equal(page.workers().length, 2));
  assert.deepEqual(faults, []);
  await close();
});

test("a file that is refused leaves the list and its engine", async () => {
  const { page, faults, close } = await openShed();
  const [engine] = page.workers();
  await openList(page, nothing);
  await page.getByText("“nothing.json” could not be opened.").waitFor();
  await page.getByText("“Loan shed, autumn list” is still open.").waitFor();
  await eventually(() => assert.deepEqual(page.workers(), [engine]));
  await goTo(page, "Bikes");
  await rackRows(page).first().waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("a small file is there without a word about progress", async () => {
  const { page, close } = await openPage(browser, screens.phone);
  const words = await heard(page);
  const began = await page.evaluate(() => performance.now());
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("heading", { name: "Loan shed, autumn list" }).waitFor();
  const took = (await page.evaluate(() => performance.now())) - began;
  // On a busy machine even this may take longer than a reader should wait without a word.
  if (took < 300)
    assert.deepEqual(
      (await words()).filter((said) => said.includes("Reading")),
      [],
    );
  await close();
});

/** The page as a host with a policy of its own would serve it. */
function withoutWorkersInPolicy() {
  const html = readFileSync(pageFile, "utf8");
  assert.match(html, /worker-src blob:; /);
  const path = join(dirname(big), "no-worker.html");
  writeFileSync(path, html.replace("worker-src blob:; ", ""));
  return pathToFileURL(path).href;
}

/** Whatever it is told, it never says a word, not even that something went wrong. */
function workersNeverStart() {
  window.Worker = class {
    postMessage() {}
    terminate() {}
  };
}

const denials = {
  "the policy forbids them": async () => {
    const context = await browser.newContext({ viewport: screens.phone, offline: true, locale: "en-GB" });
    await context.addInitScript(() => (window.showOpenFilePicker = undefined));
    const page = await context.newPage();
    await page.addInitScript(keepStageChosen, usualStage);
    await page.goto(withoutWorkersInPolicy());
    return { page, close: () => context.close() };
  },
  "the browser has none": () =>
    openPage(browser, screens.phone, {
      prepare: (context) => context.addInitScript(() => delete window.Worker),
    }),
  "they never start": () =>
    openPage(browser, screens.phone, { prepare: (context) => context.addInitScript(workersNeverStart) }),
};

for (const [why, open] of Object.entries(denials)) {
  test(`without workers, because ${why}, everything is answered on the page itself`, async () => {
    const { page, close } = await open();
    await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5 cm");
    await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
    await openList(page, sample("loan-shed.json"));
    await page.getByRole("heading", { name: "Loan shed, autumn list" }).waitFor();
    await openList(page, nothing);
    await page.getByText("“Loan shed, autumn list” is still open.").waitFor();
    await goTo(page, "Bikes");
    await rackRows(page).first().waitFor();
    assert.equal(page.workers().length, 0);
    await close();
  });
}

test("after a breakdown a fresh engine has the list, with what was changed in it", async () => {
  // Tall enough to have the whole rack on it.
  const { page, faults, close } = await openShed(
    { prepare: (context) => inEveryThread(context, canBreakDown) },
    { width: 390, height: 12000 },
  );
  await press(page, "Add a bike");
  await field(page, "Name").fill("Late arrival");
  await field(page, "Saddle at its lowest (cm)").fill("48");
  await field(page, "Saddle at its highest (cm)").fill("60");
  await press(page, "Save this bike");
  await page.getByText("Added Late arrival.").waitFor();
  await goTo(page, "Your child");
  const [engine] = page.workers();
  await engine.evaluate(() => (self.breakDown = true));
  await page.getByRole("textbox", { name: "Inside leg" }).fill("55.5 cm");
  await eventually(() => assert.ok(!page.workers().includes(engine), "the broken one is ended"));
  await page.getByRole("textbox", { name: "Inside leg" }).fill("56.5 cm");
  await page.getByText("Best: 56.5 cm").waitFor();
  await goTo(page, "Bikes");
  await page.getByRole("button", { name: "Late arrival", exact: true }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});
