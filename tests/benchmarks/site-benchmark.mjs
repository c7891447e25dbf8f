// How soon the site gives its first verdict, from the navigation on: a club's list by its address, and a reading typed as soon
// as there is a field for it. nginx of this machine with gzip, headless Chromium as a mid-range phone: its processor slowed
// down four times, 1.6 Mbit/s, 150 ms. And the same of the element in the club's page.
//
//   node tests/benchmarks/site-benchmark.mjs
//
// Every figure is the median of several runs; the limits are the project's own, and a figure beyond one is exit 1.

import { loadavg } from "node:os";
import { serveClub, siteBuilder } from "../support/built-site.mjs";
import { elementFolder } from "../support/club-site.mjs";
import { launchBrowser } from "../support/open-page.mjs";
import { compileTime, median, report, slowPhone, verdictTime } from "./slow-phone.mjs";

const runs = 5;

/** A first visit, and then one with the site kept and the line as it is. */
async function visits(browser, club, compiling) {
  const { page, close } = await slowPhone(browser, compiling);
  const first = await verdictTime(page, club.address);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(async (list) => (await caches.match(list)) !== undefined, club.listAddress);
  const kept = await verdictTime(page, club.address.replace("#", "?again#"));
  await close();
  return { first, kept };
}

/** A first visit to the club's page with the element in it, in the same run. */
async function elementVisit(browser, club, compiling) {
  const { page, close } = await slowPhone(browser, compiling);
  const time = await verdictTime(page, `${club.nginx.origin}/element.html`);
  await close();
  return time;
}

const sites = siteBuilder();
const club = await serveClub(sites.first(), { element: elementFolder });
const browser = await launchBrowser();
try {
  const compiling = await compileTime(browser);
  console.log(`load ${loadavg()[0].toFixed(1)}; the engine compiles in ${compiling.toFixed(0)} ms here`);
  const times = [];
  for (let run = 0; run < runs; ++run)
    times.push({
      ...(await visits(browser, club, compiling)),
      element: await elementVisit(browser, club, compiling),
    });
  const of = (name) => median(times.map((time) => time[name]));
  report("first verdict on a first visit, 1.6 Mbit/s, 150 ms, 4x slowdown", of("first"), 3000);
  report("first verdict from the service worker, 4x slowdown", of("kept"), 1000);
  report("first verdict of the element in a club's page, the same line and phone", of("element"), 2500);
  console.log(`the element by the site, in this run: ${(of("element") / of("first")).toFixed(2)}`);
} finally {
  await browser.close();
  await club.close();
  sites.done();
}
