// <saddlerule-fit> in Chromium, Firefox and WebKit: the main job in a page with a strict policy, and lists that are gone, of
// another site, forbidden by the page's own policy, slow, huge or no lists at all. Whatever comes, nothing that was there is
// lost, and a sentence says what to do.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test, { after, before, describe } from "node:test";
import { launchChromium } from "../support/chromium.mjs";
import { sample } from "../support/built-engine.mjs";
import { browsers } from "../support/browsers/browsers.mjs";
import { Visit } from "../support/browsers/visit.mjs";
import { clubPage, clubSite, strictPolicy } from "../support/club-site.mjs";
import { jsonList } from "../support/list-desk.mjs";
import { spreadsheet } from "../support/make-spreadsheet.mjs";
import { eventually as soon, wholeTest } from "../support/eventually.mjs";
import { screens } from "../support/open-page.mjs";

/** Browsers of a busy machine take their time. */
const eventually = (check) => soon(check, { tries: 200 });

const script = '<script src="/saddlerule/saddlerule-fit.js" defer></script><script src="/tells.js"></script>';
const shed = readFileSync(sample("loan-shed.json"));
const hall = spreadsheet([
  ["Nr", "Name", "Saddle min (cm)", "Saddle max (cm)"],
  ["K01", "Blue", 47.5, 61],
  ["K02", "Red", 58.3, 74],
]);

/** Events, where a page under a policy can gather them. */
const tells = `window.told = [];
for (const what of ["list", "problem", "verdict"])
  addEventListener("saddlerule-" + what, ({ detail }) => window.told.push({ what, ...detail }));`;

const withElement = (attributes) =>
  clubPage(
    `<p>Above it</p><saddlerule-fit ${attributes}><p>Our bikes hang in the hall.</p></saddlerule-fit>`,
    {
      head: script,
    },
  );

let club;
let stranger;
before(async () => {
  stranger = await clubSite({
    "/private.json": shed,
    "/shared.json": (request, response) =>
      response
        .writeHead(200, { "access-control-allow-origin": "*", "content-type": "application/json" })
        .end(shed),
  });
  const pages = {
    "/club.css": "body { margin: 0 }",
    "/tells.js": tells,
    "/bikes.json": shed,
    "/page.json": (request, response) =>
      response.writeHead(200, { "content-type": "text/html" }).end("<!doctype html><p>Please log in</p>"),
    "/picture.json": readFileSync(new URL("../../web/pictures/rider-phone.png", import.meta.url)),
    "/main": withElement('list="bikes.json" units="cm"'),
    "/gone": withElement('list="/nowhere.json" view="rack"'),
    "/web-page": withElement('list="page.json" view="rack"'),
    "/picture": withElement('list="picture.json" view="rack"'),
    "/private": withElement(`list="${stranger.address}/private.json" view="rack"`),
    "/hall.xlsx": (request, response) =>
      response.writeHead(200, { "content-type": "application/octet-stream" }).end(hall),
    "/sheet": withElement('list="hall.xlsx" view="list"'),
    "/autumn.json": jsonList([{ id: "A1", name: "Autumn 1", saddle_lowest: 48 }], {
      measured_on: "2024-10-03",
    }),
    "/old": withElement('list="autumn.json" view="rack"'),
    "/shared": withElement(`list="${stranger.address}/shared.json" view="rack"`),
    "/nobody": withElement('list="http://127.0.0.1:9/bikes.json" view="rack"'),
  };
  const openPolicy = strictPolicy.replace("connect-src 'self'", "connect-src 'self' http://127.0.0.1:*");
  club = { strict: await clubSite(pages), open: await clubSite(pages, { policy: openPolicy }) };
});
after(() => [stranger, club.strict, club.open].forEach((site) => site.close()));

for (const { name, launch } of browsers) {
  describe(name, { timeout: wholeTest }, () => {
    let browser;
    before(async () => (browser = await launch()));
    after(() => browser.close());

    const told = async (visit, what) =>
      (await visit.run(() => window.told)).filter((one) => one.what === what);

    test(`${name}: from the inside leg to the saddle setting, in a club's page under a strict policy`, async (test) => {
      const earlier = club.strict.requests.length;
      const visit = await Visit.to(`${club.strict.address}/main`, { test, browser, size: screens.laptop });
      await visit.types("Inside leg", "49.5");
      await visit.reads(/14 fit/);
      await eventually(async () => assert.equal((await told(visit, "verdict")).at(-1)?.verdict, "fits_now"));
      await visit.press("button", /^Loan \d/);
      await visit.sees("img", /^Side view of the bike, to scale/);
      await eventually(async () => assert.equal((await told(visit, "verdict")).at(-1).screen, "bike"));
      await visit.goTo("Save");
      await visit.reads("nothing is saved on this device");
      // Moved, it is as it was.
      await visit.run(() => document.body.prepend(document.querySelector("saddlerule-fit")));
      await visit.reads("nothing is saved on this device");
      assert.equal((await visit.sees("textbox", "Inside leg")).value, "49.5");
      assert.deepEqual(await told(visit, "problem"), []);
      const faults = (await visit.faults()).filter(
        (fault) => !fault.startsWith(`request: ${club.strict.address}/`),
      );
      assert.deepEqual(faults, []);
      assert.equal((await told(visit, "list")).length, 1);
      // What was fetched ahead is what the scripts use.
      const requests = club.strict.requests.slice(earlier);
      assert.equal(requests.filter((path) => path.includes("saddlerule-engine")).length, 1);
    });

    test(`${name}: a spreadsheet by its address is opened, and of an old list its readers are told so`, async (test) => {
      const visit = await Visit.to(`${club.strict.address}/sheet`, { test, browser, size: screens.phone });
      await visit.reads("2 bikes");
      assert.equal((await told(visit, "list"))[0].bikes, 2);
      await visit.opens(`${club.strict.address}/old`);
      await visit.reads("This list is over a year old. Some of its bikes may be gone.");
      assert.deepEqual(await told(visit, "problem"), []);
    });

    const refusals = {
      "/gone": [
        "strict",
        "address_gone",
        /There is nothing at this address any more \(the server said 404\)/,
      ],
      "/web-page": ["strict", "address_web_page", /A web page came instead of a list/],
      "/picture": ["strict", "file_is_other", /“picture.json” could not be opened|“picture” could not/],
      "/private": [
        "open",
        "address_not_allowed",
        /has to answer with “Access-Control-Allow-Origin: http:\/\/127/,
      ],
      "/nobody": ["open", "address_no_signal", /The list could not be reached/],
    };
    test(`${name}: what is wrong with a list's address is said in words, and in an event`, async (test) => {
      let visit;
      for (const [path, [site, code, words]] of Object.entries(refusals)) {
        const address = club[site].address + path;
        if (visit === undefined) visit = await Visit.to(address, { test, browser, size: screens.phone });
        else await visit.opens(address);
        await visit.sees("alert");
        await visit.reads(words);
        await visit.reads("No list is open.");
        await eventually(async () => assert.equal((await told(visit, "problem"))[0]?.code, code));
      }
      // Forbidden by the page itself: the sentence names what its webmaster has to write.
      await visit.opens(`${club.strict.address}/private`);
      await visit.reads(`has to name ${stranger.address} under connect-src`);
      assert.equal((await told(visit, "problem"))[0].code, "address_policy");
      await visit.opens(`${club.open.address}/shared`);
      await eventually(async () => assert.equal((await told(visit, "list"))[0]?.bikes, 40));
    });
  });
}

describe("slow servers and large lists", () => {
  let browser;
  before(async () => {
    browser = await launchChromium();
  });
  after(() => browser.close());

  /** The club's page with a list in use, then another address in the attribute. */
  async function another(test, answer) {
    const site = await clubSite({
      "/": withElement('list="/bikes.json" view="rack"'),
      "/club.css": "",
      "/tells.js": tells,
      "/bikes.json": shed,
      "/other.json": answer,
    });
    const page = await browser.newPage({ viewport: screens.laptop, locale: "en-GB" });
    test.after(async () => {
      await page.close();
      site.close();
    });
    await page.clock.install();
    await page.goto(`${site.address}/`);
    await page.getByRole("button", { name: "Loan 01, 20 in, two hand brakes" }).waitFor();
    await page.evaluate(() => document.querySelector("saddlerule-fit").setAttribute("list", "/other.json"));
    return page;
  }

  const bikesAreStillThere = (page) =>
    page.getByRole("button", { name: "Loan 01, 20 in, two hand brakes" }).waitFor();

  test("a server that says nothing for 15 seconds is given up, and tried again when the reader says so", async (test) => {
    let asked = 0;
    const page = await another(test, (request, response) => {
      if (++asked > 1) response.writeHead(200, { "content-type": "application/json" }).end(shed);
    });
    await page.clock.runFor(1000);
    await page.getByText("Reading “other.json”").first().waitFor();
    await page.clock.runFor(15_000);
    await page.getByText("The list did not arrive within 15 seconds").first().waitFor();
    await bikesAreStillThere(page);
    await page.getByRole("button", { name: "Try again" }).click();
    await eventually(async () =>
      assert.equal((await page.evaluate(() => window.told)).filter(({ what }) => what === "list").length, 2),
    );
    await page.locator(".refused").waitFor({ state: "detached" });
  });

  test("a slow list can be stopped, and a huge one is read no further than 8 MiB", async (test) => {
    const page = await another(test, (request, response) => {
      response.writeHead(200);
      response.write("{");
    });
    await page.clock.runFor(1000);
    await page.getByRole("button", { name: "Stop" }).click();
    await page.getByText("Stopped. Your list has not changed.").waitFor({ state: "attached" });
    await bikesAreStillThere(page);

    let sent = 0;
    const huge = await another(test, async (request, response) => {
      let open = true;
      response.on("close", () => (open = false));
      for (; open && sent < 200; ++sent) {
        if (response.write(Buffer.alloc(1024 * 1024, 32))) continue;
        await new Promise((resolve) => response.once("drain", resolve).once("close", resolve));
      }
    });
    await huge.getByText("This is more than 8\u00a0MB, too much for a list of bikes.").first().waitFor();
    await bikesAreStillThere(huge);
    assert.ok(sent < 100, `${sent} MiB were sent`);
  });
});
