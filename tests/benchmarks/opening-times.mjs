// From opening the page file to a usable page, and the same for a page that was built earlier, in turn in one run: this
// machine may be busier than the next, but it is as busy for both.

import { pathToFileURL } from "node:url";
import { pageFile } from "../support/open-page.mjs";
import { openSlowly } from "../support/slow-device.mjs";

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** Notes when the first text of a kind has been drawn. Whoever asks the page from outside asks it every half a second at times. */
function watchFor(text) {
  const shown = () =>
    [...document.querySelectorAll("*")].some(({ shadowRoot }) => shadowRoot?.textContent.includes(text));
  const look = () => {
    if (shown()) window.shownAt = Date.now();
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
  const heading = "Saddle height to look for";
  await page.addInitScript(watchFor, heading);
  const before = Date.now();
  await page.reload();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await page.getByRole("heading", { name: heading }).waitFor();
  const elapsed = (await page.evaluate(() => window.shownAt)) - before;
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
