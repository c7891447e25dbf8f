// What the site offers and what it bears: the home screen, a new version beside other open pages, what a webmaster may say of it,
// and a host that is slow, in trouble or set up without care. In Chromium; site.browser.test.mjs has the main job in all.

import assert from "node:assert/strict";
import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import test, { after, before } from "node:test";
import { engineIn, serveClub, siteBuilder } from "../support/built-site.mjs";
import { eventually } from "../support/eventually.mjs";
import { keepStageChosen, usualStage } from "../support/choose-stage.mjs";
import { goTo, launchBrowser, screens } from "../support/open-page.mjs";

const sites = siteBuilder();
const first = sites.first();
after(sites.done);

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

/** A page of the site, with nothing between it and nginx but the browser. */
async function visit(test, { site = first, more = "", prepare, at = "", viewport = screens.phone } = {}) {
  const club = await serveClub(site);
  test.after(club.close);
  if (more !== "") await club.nginx.start(more);
  const context = await browser.newContext({ viewport, locale: "en-GB" });
  test.after(() => context.close());
  if (prepare) await context.addInitScript(prepare);
  const page = await context.newPage();
  await context.addInitScript(keepStageChosen, usualStage);
  await page.goto(`${club.nginx.origin}/fit/${at}`);
  return { club, context, page };
}

async function judges(page) {
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5 cm");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
}

const isKept = (page) => page.getByText("it opens here with no signal").waitFor();

/** A copy of the site in which one file says something else. */
function siteWith(name, file, content) {
  const out = join(sites.folder, name);
  cpSync(first, out, { recursive: true });
  writeFileSync(join(out, file), content);
  return out;
}

test("the club's page leads to its bikes", async (test) => {
  const { club, page } = await visit(test);
  await page.goto(`${club.nginx.origin}/`);
  await page.getByRole("link", { name: "Check our bikes on your phone" }).click();
  await judges(page);
  await goTo(page, "Bikes");
  await page
    .getByText(/\b2 fit/)
    .first()
    .waitFor();
  await page.getByText("Loan 02, 14 in, two hand brakes").waitFor();
});

test("the home screen is offered where the browser offers it, and asked for once", async (test) => {
  const { page } = await visit(test);
  await goTo(page, "Save");
  await isKept(page);
  const button = page.getByRole("button", { name: "Add it to the home screen" });
  assert.equal(await button.count(), 0);
  const prevented = await page.evaluate(() => {
    const offer = new Event("beforeinstallprompt", { cancelable: true });
    offer.prompt = () => Promise.resolve((window.asked = (window.asked ?? 0) + 1));
    dispatchEvent(offer);
    return offer.defaultPrevented;
  });
  assert.equal(prevented, true);
  assert.ok((await button.boundingBox()).height >= 44);
  await button.click();
  await button.waitFor({ state: "detached" });
  assert.equal(await page.evaluate(() => window.asked), 1);
});

test("an iPhone gets a hint about its share menu, and not once the page is on its home screen", async (test) => {
  const asOn = (standalone) => `Object.defineProperty(navigator, "standalone", { value: ${standalone} })`;
  const inSafari = await visit(test, { prepare: asOn(false) });
  await goTo(inSafari.page, "Save");
  await inSafari.page.getByText("tap Share, then “Add to Home Screen”").waitFor();
  const fromHome = await visit(test, { prepare: asOn(true) });
  await goTo(fromHome.page, "Save");
  await isKept(fromHome.page);
  assert.equal(await fromHome.page.getByText("tap Share").count(), 0);
});

test("a browser without service workers says that the page takes a signal, and does all else", async (test) => {
  const { page } = await visit(test, { prepare: "delete Navigator.prototype.serviceWorker" });
  await judges(page);
  await goTo(page, "Save");
  await page.getByText("so you need a signal to open it").waitFor();
});

test("a new version opened in one page leaves another one with all files of its own", async (test) => {
  const later = sites.later();
  const { club, context, page } = await visit(test);
  await judges(page);
  await goTo(page, "Save");
  await isKept(page);
  const other = await context.newPage();
  await other.goto(page.url().replace("view=keep", "view=rider"));
  await judges(other);

  club.nginx.serves("fit", later);
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
  const saidAloud = (page) => page.getByRole("status").filter({ hasText: "A new version is ready." });
  await saidAloud(page).waitFor({ state: "attached" });
  await saidAloud(other).waitFor({ state: "attached" });
  await other.getByRole("button", { name: "Later" }).click();
  await saidAloud(other).waitFor({ state: "detached" });
  await Promise.all([page.waitForEvent("load"), page.getByRole("button", { name: "Open it" }).click()]);
  // Loaded anew, the page is at the screen that it was at.
  await goTo(page, "Your child");
  await judges(page);
  const engineOf = (page) =>
    page.evaluate(() => {
      const names = performance.getEntriesByType("resource").map(({ name }) => new URL(name).pathname);
      return [...new Set(names.filter((name) => name.endsWith(".wasm")))];
    });
  assert.deepEqual(await engineOf(page), [`/fit/${engineIn(later)}`]);

  // The host has the other page's files no more; its version is kept for as long as it may ask for them.
  const got = await other.evaluate(async (file) => (await fetch(file)).status, `/fit/${engineIn(first)}`);
  assert.equal(got, 200);
  await goTo(other, "Your child");
  await other.getByRole("combobox", { name: "Language" }).selectOption("Français");
  await other.getByRole("heading", { name: "Hauteur de selle recherchée" }).waitFor();

  await other.close();
  await page.close();
  const last = await context.newPage();
  await last.goto(`${club.nginx.origin}/fit/`);
  const kept = () =>
    last.evaluate(async () => (await caches.keys()).filter((name) => /version/.test(name)).length);
  await eventually(async () => assert.equal(await kept(), 1));
  assert.deepEqual(await engineOf(last), [`/fit/${engineIn(later)}`]);
});

test("a list and a unit that the webmaster set hold where the address says nothing else", async (test) => {
  const said = JSON.stringify({ list: "../bikes.json", units: "in", language: "", colour: 7 });
  const site = siteWith("settled", "site-settings.json", said);
  const { page } = await visit(test, { site });
  await page.getByRole("textbox", { name: "Inside leg" }).fill("19.5");
  await goTo(page, "Bikes");
  await page.getByText("Loan 03, 16 in, two hand brakes").waitFor();
  await page.getByText("Saddle at 19½ in").first().waitFor();
  const other = await visit(test, { site, at: "#units=cm" });
  await judges(other.page);
  await other.page.getByText("Best: 49.5 cm").waitFor();
});

for (const [what, said] of [
  ["half of them", '{ "list": "../club'],
  ["a list of them", '["list"]'],
  ["nothing", ""],
  ["null", "null"],
])
  test(`settings that are ${what} count as none`, async (test) => {
    const { page } = await visit(test, { site: siteWith(`said ${what.length}`, "site-settings.json", said) });
    await judges(page);
  });

test("a host that has no settings, and does not know what wasm is", async (test) => {
  const more = `location = /fit/site-settings.json { return 404; }
    location = /fit/${engineIn(first)} { types { } default_type application/octet-stream; }\n`;
  const { page } = await visit(test, { more });
  await judges(page);
  await goTo(page, "Save");
  await isKept(page);
});

test("an engine that does not come is fetched again with what is typed next", async (test) => {
  const more = `location = /fit/${engineIn(first)} { return 503; }\n`;
  const { club, page } = await visit(test, { more });
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49 cm");
  await page.getByText("Something went wrong inside Saddlerule").first().waitFor();
  await club.nginx.start();
  await judges(page);
});

test("a list that comes too slowly, as a web page, or not at all is shown as it was kept; one that is gone is not", async (test) => {
  const { club, page } = await visit(test, { at: "#list=../bikes.json" });
  await judges(page);
  await goTo(page, "Save");
  await isKept(page);
  await eventually(async () =>
    assert.ok(
      await page.evaluate(async (list) => (await caches.match(list)) !== undefined, club.listAddress),
    ),
  );
  // Another one, so that it has to come whole.
  writeFileSync(
    club.list,
    readFileSync(club.list, "utf8").replace("Village hall", "The hall in the village"),
  );
  const troubles = {
    "drop by drop": "location = /bikes.json { limit_rate 60; }\n",
    "a café's page": 'location = /bikes.json { types { } default_type text/html; return 200 "<p>Log in"; }\n',
    "the same under a wrong name": 'location = /bikes.json { return 200 "<p>Log in"; }\n',
    "in trouble": "location = /bikes.json { return 502; }\n",
    "a refusal as JSON": `location = /bikes.json { return 200 '{"error": "log in first"}'; }\n`,
    "an empty list": `location = /bikes.json { return 200 '{"bikes": []}'; }\n`,
  };
  for (const [trouble, more] of Object.entries(troubles)) {
    await club.nginx.start(more);
    await page.goto(`${club.nginx.origin}/fit/?${encodeURIComponent(trouble)}#list=../bikes.json`);
    await judges(page);
    await goTo(page, "Bikes");
    await page.getByText(/The list of 3 October 2026, as saved on/).waitFor();
    await page.getByText("Loan 03, 16 in, two hand brakes").waitFor();
  }
  await club.nginx.start("location = /bikes.json { return 410; }\n");
  await page.goto(`${club.nginx.origin}/fit/?gone#list=../bikes.json`);
  await page.getByText("There is nothing at this address any more").first().waitFor();
  await club.nginx.stop();
  await page.goto(`${club.nginx.origin}/fit/?gone-for-good#list=../bikes.json`);
  await page.getByText("The list could not be reached").first().waitFor();
});

const oneBike = '{ "units": "cm", "bikes": [{ "id": "A", "saddle_lowest": 50 }] }';

test("what a server wants kept by nobody, and what other pages of the host fetch, is not kept", async (test) => {
  const { club, page } = await visit(test, {
    more:
      `location = /secret.json { add_header cache-control no-store; return 200 '${oneBike}'; }\n` +
      `location = /mine.json { add_header cache-control private; return 200 '${oneBike}'; }\n` +
      "location = /fit/other.html { types { } default_type text/html; return 200 '<p>Other page'; }\n",
  });
  await goTo(page, "Save");
  await isKept(page);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  const get = (where, path) => where.evaluate(async (path) => (await fetch(path)).status, path);
  for (const path of ["/secret.json", "/mine.json"]) assert.equal(await get(page, path), 200);
  const other = await page.context().newPage();
  await other.goto(`${club.nginx.origin}/fit/other.html`);
  assert.equal(await get(other, "/bikes.json?other"), 200);
  // The last one is kept, and so were the others by now if they were to be.
  await get(page, "/bikes.json?own");
  const kept = () =>
    page.evaluate(async () => {
      const name = (await caches.keys()).find((name) => name.startsWith("saddlerule-lists"));
      return (await (await caches.open(name)).keys()).map(({ url }) => url.replace(/^.*\/\/[^/]*/, ""));
    });
  await eventually(async () => assert.ok((await kept()).includes("/bikes.json?own")));
  assert.deepEqual(
    (await kept()).filter((path) => !path.includes("settings")),
    ["/bikes.json?own"],
  );
});

test("as many lists are kept as somebody goes through in a season, and none that is too large", async (test) => {
  const { club, page } = await visit(test);
  await goTo(page, "Save");
  await isKept(page);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  writeFileSync(club.nginx.fileAt("huge.csv"), "name,saddle_lowest\n".padEnd(9 * 1024 * 1024, "x"));
  const kept = () =>
    page.evaluate(async () => {
      const name = (await caches.keys()).find((name) => name.startsWith("saddlerule-lists"));
      const lists = await (await caches.open(name)).keys();
      return lists
        .map(({ url }) => new URL(url))
        .map(({ pathname, search }) => pathname + search)
        .filter((path) => !path.includes("settings"));
    });
  const get = (path) => page.evaluate(async (path) => (await (await fetch(path)).text()).length, path);
  assert.equal(await get("/huge.csv"), 9 * 1024 * 1024);
  for (let club = 1; club <= 10; ++club) await get(`/bikes.json?club=${club}`);
  const newest = [3, 4, 5, 6, 7, 8, 9, 10].map((club) => `/bikes.json?club=${club}`);
  await eventually(async () => assert.deepEqual((await kept()).sort(), newest.sort()));
  // What is looked at again is not the next to go.
  await get("/bikes.json?club=3");
  await eventually(async () => assert.equal((await kept()).at(-1), "/bikes.json?club=3"));
  await get("/bikes.json?club=11");
  await eventually(async () => assert.ok((await kept()).includes("/bikes.json?club=11")));
  assert.ok((await kept()).includes("/bikes.json?club=3"));
});
