// The site from one version to the next, on nginx: the old one goes on until its reader wants the new one or has closed the
// page, versions never mix, and an update that does not come whole changes nothing.

import assert from "node:assert/strict";
import test, { after, before, describe } from "node:test";
import { browsers } from "../support/browsers/browsers.mjs";
import { Visit } from "../support/browsers/visit.mjs";
import { engineIn, serveClub, siteBuilder } from "../support/built-site.mjs";
import { eventually, wholeTest } from "../support/eventually.mjs";
import { screens } from "../support/open-page.mjs";

const sites = siteBuilder();
const first = sites.first();
const later = sites.later();
const cut = sites.cut(later);
after(sites.done);
assert.notEqual(engineIn(first), engineIn(later));

/** The files of engines that this page was given: those of one version, if versions do not mix. */
const enginesOf = (visit) =>
  visit.run(() =>
    performance
      .getEntriesByType("resource")
      .map(({ name }) => new URL(name).pathname.replace("/fit/", ""))
      .filter((name) => name.endsWith(".wasm")),
  );

/** The engines that this browser holds. */
const enginesKept = (visit) =>
  visit.run(async () => {
    const names = (await caches.keys()).filter((name) => name.startsWith("saddlerule-version"));
    const kept = await Promise.all(
      names.map(async (name) =>
        (await (await caches.open(name)).keys()).map(({ url }) => new URL(url).pathname),
      ),
    );
    return kept
      .flat()
      .map((path) => path.replace("/fit/", ""))
      .filter((path) => path.endsWith(".wasm"));
  });

async function firstVisit(test, browser) {
  const club = await serveClub(first);
  test.after(club.close);
  const address = `${club.nginx.origin}/fit/`;
  const visit = await Visit.to(address, { test, browser, size: screens.phone });
  await judges(visit);
  await visit.goTo("Save");
  await visit.reads("it opens here with no signal");
  return { club, address, visit };
}

async function judges(visit) {
  await visit.types("Inside leg", "49.5 cm");
  await visit.sees("heading", "Saddle height to look for");
}

/** Has the browser look for a newer version, and tells what became of it. */
function update(visit) {
  return visit.run(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration.update().catch(() => undefined);
    const { installing } = registration;
    if (installing !== null)
      await new Promise((resolve) => {
        const looked = () => installing.state !== "installing" && resolve();
        installing.addEventListener("statechange", looked);
        looked();
      });
    return registration.waiting ? "ready" : "nothing new";
  });
}

for (const { name, launch } of browsers) {
  describe(name, { timeout: wholeTest }, () => {
    let browser;
    before(async () => (browser = await launch()));
    after(() => browser.close());

    test(`${name}: the old version goes on until its reader opens the new one`, async (test) => {
      const { club, address, visit } = await firstVisit(test, browser);
      club.nginx.serves("fit", later);
      await visit.opens(`${address}?again`);
      assert.equal(await update(visit), "ready");
      await visit.reads("A new version is ready.");
      await judges(visit);
      assert.deepEqual([...new Set(await enginesOf(visit))], [engineIn(first)]);

      await visit.press("button", "Open it");
      await eventually(async () =>
        assert.deepEqual(
          await visit.run(() => [typeof window.inPage, navigator.serviceWorker.controller !== null]),
          ["undefined", true],
        ),
      );
      await visit.opens(`${address}?new`);
      await judges(visit);
      assert.deepEqual([...new Set(await enginesOf(visit))], [engineIn(later)]);
      assert.ok((await enginesKept(visit)).includes(engineIn(later)));
    });

    test(`${name}: an update that is interrupted leaves the old version whole, with the server gone too`, async (test) => {
      const { club, address, visit } = await firstVisit(test, browser);
      // The host is in trouble half-way, and then hands out a file without its end.
      club.nginx.serves("fit", later);
      await club.nginx.start(`location = /fit/${engineIn(later)} { return 503; }\n`);
      assert.equal(await update(visit), "nothing new");
      assert.deepEqual(await enginesKept(visit), [engineIn(first)]);
      club.nginx.serves("fit", cut);
      await club.nginx.start();
      assert.equal(await update(visit), "nothing new");
      assert.deepEqual(await enginesKept(visit), [engineIn(first)]);
      await club.nginx.stop();
      await visit.opens(`${address}?offline`);
      await judges(visit);
      assert.deepEqual([...new Set(await enginesOf(visit))], [engineIn(first)]);

      // Neither does what is left where a browser was closed on the way.
      await visit.run(async () => void (await caches.open("saddlerule-version /fit/ left over")));
      club.nginx.serves("fit", later);
      await club.nginx.start();
      await visit.opens(`${address}?whole`);
      assert.equal(await update(visit), "ready");
      assert.deepEqual((await enginesKept(visit)).sort(), [engineIn(first), engineIn(later)].sort());
      assert.equal(await visit.run(() => caches.has("saddlerule-version /fit/ left over")), false);
    });
  });
}
