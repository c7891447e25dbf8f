// A phone on a slow line, for what is measured from the navigation to the first verdict: the line, what the browser does not slow down by
// itself, and a hurried reader.

import { readFileSync } from "node:fs";
import { pageWasmFile } from "../support/built-engine.mjs";
import { keepStageChosen, usualStage } from "../support/choose-stage.mjs";
import { screens } from "../support/open-page.mjs";
import { usualSlowdown as slowdown } from "../support/slow-device.mjs";

export const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

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
  for (const name of ["compile", "compileStreaming"]) {
    const real = WebAssembly[name];
    WebAssembly[name] = async (source) => {
      const module = await real.call(WebAssembly, source);
      await new Promise((resolve) => wait(compiling, resolve));
      return module;
    };
  }
}

/** Types a reading as soon as that can be, looks at the rack, and notes by the page's own clock when a bike has its verdict. */
function hurried() {
  const page = () => document.querySelector("#saddlerule, saddlerule-fit")?.shadowRoot;
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

/** In ms on this machine: the median of three. */
export async function compileTime(browser) {
  const wasm = readFileSync(pageWasmFile).toString("base64");
  const times = [];
  for (let run = 0; run < 3; ++run) {
    const page = await browser.newPage();
    const time = await page.evaluate(async (base64) => {
      const bytes = Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
      const start = performance.now();
      await WebAssembly.compile(bytes);
      return performance.now() - start;
    }, wasm);
    await page.close();
    times.push(time);
  }
  return median(times);
}

/** @param compiling how long the engine's compiling takes here, in ms */
export async function slowPhone(browser, compiling) {
  const context = await browser.newContext({ viewport: screens.phone, locale: "en-GB" });
  await context.addInitScript(`(${slowElsewhere})(${slowdown}, ${compiling}); (${hurried})();`);
  const page = await context.newPage();
  await page.addInitScript(keepStageChosen, usualStage);
  const session = await context.newCDPSession(page);
  await session.send("Network.enable");
  await session.send("Network.emulateNetworkConditions", line);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slowdown });
  return { page, close: () => context.close() };
}

export async function verdictTime(page, address) {
  await page.goto(address, { waitUntil: "commit" });
  await page.waitForFunction(() => window.stepTimes?.length === 3, null, { timeout: 60_000 });
  return page.evaluate(() => window.stepTimes[2]);
}

/** Says a figure, and whether it is within its limit. */
export function report(what, value, limit) {
  const within = value <= limit;
  if (!within) process.exitCode = 1;
  const said = `(limit ${limit}${within ? "" : ", EXCEEDED"})`;
  console.log(`${what.padEnd(72)} ${value.toFixed(0).padStart(8)} ms  ${said}`);
}
