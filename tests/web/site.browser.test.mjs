// The site on a host as a club might have it, nginx under the headers that the guide gives: the main job in Chromium, Firefox and
// WebKit, with nothing requested but what the page names; and after one visit all of it with the server gone.

import assert from "node:assert/strict";
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import test, { after, before, describe } from "node:test";
import { browsers } from "../support/browsers/browsers.mjs";
import { Visit } from "../support/browsers/visit.mjs";
import { serveClub, siteBuilder } from "../support/built-site.mjs";
import { eventually, wholeTest } from "../support/eventually.mjs";
import { screens } from "../support/open-page.mjs";

const sites = siteBuilder();
const site = sites.first();
after(sites.done);

async function typesReading(visit) {
  await visit.types("Inside leg", "49.5 cm");
  await visit.sees("heading", "Saddle height to look for");
}

async function seesClubsRack(visit) {
  await visit.goTo("Bikes");
  await visit.reads("2 fit");
  await visit.reads("Loan 02, 14 in, two hand brakes");
}

/** What went wrong, requests aside: a site has some. */
async function faults(visit) {
  return (await visit.faults()).filter((fault) => !fault.startsWith("request:"));
}

/** Until this browser holds all that the page needs, and this list. */
async function isKept(visit, list) {
  await visit.goTo("Save");
  await visit.reads("it opens here with no signal");
  await eventually(async () =>
    assert.ok(await visit.run(async (list) => (await caches.match(list)) !== undefined, list)),
  );
}

/** What nginx was asked for, and what it said. */
function asked(nginx) {
  const lines = readFileSync(nginx.accessLog, "utf8").trim().split("\n");
  return lines.map((line) => {
    const [, path, status] = /"(?:GET|HEAD) (\S+) [^"]*" (\d+)/.exec(line) ?? [];
    return { path, status };
  });
}

for (const { name, launch } of browsers) {
  describe(name, { timeout: wholeTest }, () => {
    let browser;
    before(async () => (browser = await launch()));
    after(() => browser.close());

    test(`${name}: the main job under the strict policy, asking for nothing but what the page names`, async (test) => {
      const club = await serveClub(site);
      test.after(club.close);
      const visit = await Visit.to(club.address, { test, browser, size: screens.phone });
      await typesReading(visit);
      await seesClubsRack(visit);
      await visit.goTo("Your child");
      await visit.picks("Language", "Deutsch");
      await visit.sees("heading", "Gesuchte Sattelhöhe");
      await visit.picks("Sprache", "English");
      await isKept(visit, club.listAddress);
      assert.deepEqual(await faults(visit), []);

      const own = [...readdirSync(site), ...readdirSync(join(site, "files")).map((file) => `files/${file}`)];
      const named = ["/fit/", "/bikes.json", ...own.map((file) => `/fit/${file}`)];
      const requests = asked(club.nginx).filter(({ path }) => path !== "/");
      for (const { path, status } of requests) {
        assert.ok(named.includes(path), `${path} was asked for`);
        assert.match(status, /^(200|304)$/, path);
      }
      // What the page has is not fetched again to be kept, where the browser has a cache in a window like this.
      const engines = requests.filter(({ path, status }) => path.endsWith(".wasm") && status === "200");
      assert.ok(engines.length <= (name === "WebKit" ? 2 : 1), `${engines.length} times`);
    });

    test(`${name}: the policy lets nothing in and nothing out`, async (test) => {
      const club = await serveClub(site);
      test.after(club.close);
      const visit = await Visit.to(club.address, { test, browser, size: screens.phone });
      await visit.sees("textbox", "Inside leg");
      const refused = await visit.run(async () => {
        window.violations = [];
        document.addEventListener("securitypolicyviolation", (event) =>
          window.violations.push(event.effectiveDirective),
        );
        const tried = (act) => {
          try {
            act();
          } catch {
            // Some are refused with an error, some with silence.
          }
        };
        const script = document.createElement("script");
        tried(() => (script.textContent = "window.letIn = true"));
        tried(() => document.body.append(script));
        const style = document.createElement("style");
        style.textContent = "body { outline: 1px solid }";
        document.head.append(style);
        const picture = new Image();
        picture.src = "http://localhost:9/picture.png";
        await fetch("http://localhost:9/list.json").catch(() => undefined);
        return { letIn: window.letIn === true, styled: getComputedStyle(document.body).outlineStyle };
      });
      assert.equal(refused.letIn, false);
      assert.equal(refused.styled, "none");
      // A violation is reported a moment later.
      await eventually(async () => {
        const violations = await visit.run(() => window.violations);
        for (const directive of ["connect-src", "img-src", "style-src-elem"])
          assert.ok(violations.includes(directive), `${directive}: ${violations.join(", ")}`);
      });
    });

    test(`${name}: after one visit all of it opens with the server gone, the club's list with its day`, async (test) => {
      const club = await serveClub(site);
      test.after(club.close);
      const visit = await Visit.to(club.address, { test, browser, size: screens.phone });
      await typesReading(visit);
      await isKept(visit, club.listAddress);
      await club.nginx.stop();

      await visit.opens(`${club.nginx.origin}/fit/?again#list=../bikes.json`);
      await typesReading(visit);
      await seesClubsRack(visit);
      await visit.reads(/The list of (3 October|October 3,) 2026, as saved on [\w ,]+ \d{4}\./);
      await visit.goTo("Your child");
      await visit.picks("Language", "Nederlands");
      await visit.sees("heading", "Gezochte zadelhoogte");

      // The server is back, and so is what it says now.
      const list = JSON.parse(readFileSync(club.list, "utf8"));
      list.bikes = list.bikes.filter(({ id }) => id !== "H02");
      writeFileSync(club.list, JSON.stringify(list));
      await club.nginx.start();
      await visit.opens(`${club.nginx.origin}/fit/?later#list=../bikes.json&language=en`);
      await typesReading(visit);
      await visit.goTo("Bikes");
      await visit.reads(/\b1 fits\b/);
      assert.doesNotMatch(await visit.words(), /as saved on/);
    });
  });
}
