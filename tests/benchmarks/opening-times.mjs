// From opening the page file to a usable page, and the same for a page that was built earlier, in turn in one run: this
// machine may be busier than the next, but it is as busy for both.

import { pathToFileURL } from "node:url";
import { pageFile } from "../support/open-page.mjs";
import { openSlowly } from "../support/slow-device.mjs";

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/**
 * Runs in the page: a reader who types an inside leg as soon as there is a field for it, and notes by the page's own clock when what
 * it gives is drawn. Whoever does that from outside keeps the page's thread busy with looking for the field.
 */
function hurried(heading) {
  const room = () => document.querySelector("#saddlerule")?.shadowRoot;
  const look = () => {
    const field = room()?.querySelector("input[type=text]");
    if (field && field.value === "") {
      field.value = "49.5 cm";
      field.dispatchEvent(new InputEvent("input", { bubbles: true }));
    }
    if (room()?.textContent.includes(heading)) window.shownAt = performance.now();
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}

/** Usable: the field for the inside leg is there, was filled in, and the engine has answered its first question. */
async function openingTime(browser, file, slowdown) {
  const { page, close } = await openSlowly(browser, undefined, {
    address: pathToFileURL(file).href,
    slowdown,
  });
  await page.addInitScript(hurried, "Saddle height to look for");
  await page.reload();
  await page.waitForFunction(() => window.shownAt !== undefined, null, { polling: 200 });
  const elapsed = await page.evaluate(() => window.shownAt);
  await close();
  return elapsed;
}

/**
 * Medians in milliseconds.
 * @param {{ runs: number, slowdown?: number, against?: string }} how `against`: the file of another page, opened in turn with this one
 */
export async function openingTimes(browser, { runs, slowdown, against }) {
  const times = { now: [], before: [] };
  for (let run = 0; run < runs; ++run) {
    times.now.push(await openingTime(browser, pageFile, slowdown));
    if (against !== undefined) times.before.push(await openingTime(browser, against, slowdown));
  }
  return { now: median(times.now), before: against === undefined ? null : median(times.before) };
}
