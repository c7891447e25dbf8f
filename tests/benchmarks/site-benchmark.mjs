// How soon the site gives its first verdict, from the navigation on: a club's list by its address, and a reading typed as soon
// as there is a field for it. nginx of this machine with gzip, headless Chromium as a mid-range phone: its processor slowed
// down four times, 1.6 Mbit/s, 150 ms.
//
//   node tests/benchmarks/site-benchmark.mjs
//
// Every figure is the median of several runs; the limits are the project's own, and a figure beyond one is exit 1.

import { readFileSync } from "node:fs";
import { loadavg } from "node:os";
import { pageWasmFile } from "../support/built-engine.mjs";
import { serveClub, siteBuilder } from "../support/built-site.mjs";
import { launchBrowser, screens } from "../support/open-page.mjs";
import { keepStageChosen, usualStage } from "../support/choose-stage.mjs";
import { usualSlowdown as slowdown } from "../support/slow-device.mjs";

const runs = 5;

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** The phone's line: bytes a second, and milliseconds until an answer begins. */
const line = { offline: false, downloadThroughput: 1.6e6 / 8, uploadThroughput: 0.75e6 / 8, latency: 150 };

/**
 * The browser slows the page's own thread down alone. What its other threads do is held up here for as long as it would take
 * them: each answer of the engine's thread, and the engine's compiling, which takes `compiling` ms on this machine.
 */
function slowElsewhere(slowdown, compiling) {
  const Real = Worker;
  const wait = (milliseconds, then) => setTimeout(then, (slowdown - 1) * milliseconds);
  window.Worker = class extends Real {
    #working = 0;
    set onmessage(listener) {
      this.addEventListener("message", (event) => {
        const took = event.data.started ? 0 : performance.now() - this.#working;
        this.#working = performance.now();
        wait(took, () => listener.call(this, event));
      });
    }
    postMessage(...message) {
      this.#working = performance.now();
      super.postMessage(...message);
    }
  };
  const { compileStreaming } = WebAssembly;
  WebAssembly.compileStreaming = async (response) => {
    const module = await compileStreaming.call(WebAssembly, response);
    await new Promise((resolve) => wait(compiling, resolve));
    return module;
  };
}

/** Types a reading as soon as that can be, looks at the rack, and notes by the page's own clock when a bike has its verdict. */
function hurried() {
  const page = () => document.getElementById("saddlerule")?.shadowRoot;
  const steps = [
    () => {
      const field = page()?.querySelector("input[type=text], input:not([type])");
      if (!field) return false;
      field.value = "49.5 cm";
      field.dispatchEvent(new InputEvent("input", { bubbles: true, composed: true }));
      return true;
    },
    () => {
      const toRack = page().querySelector(".to-rack");
      toRack?.click();
      return toRack !== null;
    },
    () => {
      const rack = page().querySelector(".screen.rack.current article");
      return rack !== null && rack.textContent.includes("Saddle height fits");
    },
  ];
  const times = (window.stepTimes = []);
  const go = () => {
    // What is there after a frame has been painted.
    while (steps.length > times.length && steps[times.length]()) times.push(performance.now());
    if (steps.length > times.length) requestAnimationFrame(() => setTimeout(go));
  };
  addEventListener("DOMContentLoaded", go);
}

async function compileTime(browser) {
  const page = await browser.newPage();
  const time = await page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
    const start = performance.now();
    await WebAssembly.compile(bytes);
    return performance.now() - start;
  }, readFileSync(pageWasmFile).toString("base64"));
  await page.close();
  return time;
}

async function verdictTime(page, address) {
  await page.goto(address, { waitUntil: "commit" });
  await page.waitForFunction(() => window.stepTimes?.length === 3, null, { timeout: 60_000 });
  return page.evaluate(() => window.stepTimes[2]);
}

/** A first visit, and then one with the site kept and the line as it is. */
async function visits(browser, club, compiling) {
  const context = await browser.newContext({ viewport: screens.phone, locale: "en-GB" });
  await context.addInitScript(`(${slowElsewhere})(${slowdown}, ${compiling}); (${hurried})();`);
  const page = await context.newPage();
  await page.addInitScript(keepStageChosen, usualStage);
  const session = await context.newCDPSession(page);
  await session.send("Network.enable");
  await session.send("Network.emulateNetworkConditions", line);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slowdown });
  const first = await verdictTime(page, club.address);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(async (list) => (await caches.match(list)) !== undefined, club.listAddress);
  const kept = await verdictTime(page, club.address.replace("#", "?again#"));
  await context.close();
  return { first, kept };
}

const sites = siteBuilder();
const club = await serveClub(sites.first());
const browser = await launchBrowser();
try {
  const compiling = median([
    await compileTime(browser),
    await compileTime(browser),
    await compileTime(browser),
  ]);
  console.log(`load ${loadavg()[0].toFixed(1)}; the engine compiles in ${compiling.toFixed(0)} ms here`);
  const times = [];
  for (let run = 0; run < runs; ++run) times.push(await visits(browser, club, compiling));
  const report = (what, value, limit) => {
    const within = value <= limit;
    if (!within) process.exitCode = 1;
    console.log(
      `${what.padEnd(72)} ${value.toFixed(0).padStart(8)} ms  (limit ${limit}${within ? "" : ", EXCEEDED"})`,
    );
  };
  report(
    "first verdict on a first visit, 1.6 Mbit/s, 150 ms, 4x slowdown",
    median(times.map(({ first }) => first)),
    3000,
  );
  report("first verdict from the service worker, 4x slowdown", median(times.map(({ kept }) => kept)), 1000);
} finally {
  await browser.close();
  await club.close();
  sites.done();
}
