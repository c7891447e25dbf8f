// Size and speed of the built page, as README quotes them: headless Chromium, CPU slowed down four times.
//
//   node tests/benchmarks/page-benchmark.mjs
//
// Every figure is the median of several runs; the limits are the project's own, and a figure beyond one is exit 1.

import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { openBuiltEngine, root } from "../support/built-engine.mjs";
import { goTo, launchBrowser, openList, openPage, pageFile, screens } from "../support/open-page.mjs";

const runs = 5;
const slowdown = 4;

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const makeList = (bikes) =>
  execFileSync(process.execPath, [join(root, "tests/support/make-list.mjs"), String(bikes)], { maxBuffer: 1 << 26 });

const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
const thousand = join(folder, "thousand.json");
writeFileSync(thousand, makeList(1000));

let failed = false;
function report(what, value, limit, unit) {
  const within = value <= limit;
  failed ||= !within;
  console.log(`${what.padEnd(64)} ${value.toFixed(0).padStart(8)} ${unit}  (limit ${limit}${within ? "" : ", EXCEEDED"})`);
}

/** From a change made in the page to the frame that shows it, by the page's own clock. */
async function untilDrawn(page, act, isDrawn) {
  return page.evaluate(
    async ([actText, drawnText]) => {
      const host = [...document.querySelectorAll("*")].find((element) => element.shadowRoot);
      const root = host.shadowRoot;
      const run = (text) => new Function("root", `return (${text})(root)`)(root);
      const start = performance.now();
      run(actText);
      while (!run(drawnText)) {
        await new Promise((resolve) => requestAnimationFrame(resolve));
        if (performance.now() - start > 20000) throw new Error("never drawn");
      }
      await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
      return performance.now() - start;
    },
    [act.toString(), isDrawn.toString()],
  );
}

const browser = await launchBrowser();

async function slowPage() {
  const opened = await openPage(browser, screens.phone, { bypassCSP: true });
  const session = await opened.page.context().newCDPSession(opened.page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slowdown });
  return opened;
}

async function openingTime() {
  const { page, close } = await slowPage();
  // Usable: the field for the inside leg is there and the engine has answered its first question.
  const before = Date.now();
  await page.reload();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  const elapsed = Date.now() - before;
  await close();
  return elapsed;
}

async function listAndReadingTimes() {
  const { page, close } = await slowPage();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5 cm");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  const before = Date.now();
  await openList(page, thousand);
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  await page.getByRole("list", { name: "Bikes, best first" }).getByRole("article").first().waitFor();
  const list = Date.now() - before;

  await goTo(page, "Rider");
  await page.getByText("Best: 49.5 cm").waitFor();
  const redraws = [];
  for (const figure of ["51.5", "53.5", "55.5", "57.5", "59.5"]) {
    const act = `(root) => {
      const field = root.querySelector("input[type=text], input:not([type])");
      field.value = "${figure} cm";
      field.dispatchEvent(new InputEvent("input", { bubbles: true, composed: true }));
    }`;
    const drawn = `(root) => root.textContent.replaceAll("\\u00a0", " ").includes("Best: ${figure} cm")`;
    redraws.push(await untilDrawn(page, act, drawn));
  }
  await close();
  return { list, redraw: median(redraws) };
}

async function heapForTwentyThousand() {
  const engine = await openBuiltEngine();
  const loaded = engine.ask({ do: "load" }, makeList(20000));
  if (loaded.list?.bikes !== 20000) throw new Error("the list of 20,000 bikes was not loaded");
  const rider = { stage: "starting", readings: [{ on: "2026-11-20", inseam_mm: 495 }] };
  const answer = engine.ask({ do: "assess", today: "2026-11-25", detail: "brief", rider });
  if (answer.bikes.length !== 20000) throw new Error("not every bike was judged");
  return engine.heapBytes() / 1024 / 1024;
}

try {
  const page = readFileSync(pageFile);
  report("page, one file, gzip -9", gzipSync(page, { level: 9 }).length / 1000, 220, "kB");
  const openings = [];
  const lists = [];
  const redraws = [];
  for (let run = 0; run < runs; ++run) {
    openings.push(await openingTime());
    const { list, redraw } = await listAndReadingTimes();
    lists.push(list);
    redraws.push(redraw);
  }
  report("opening the file to a usable page, 4x slowdown", median(openings), 1500, "ms");
  report("choosing a list of 1,000 bikes to a ranked rack, 4x slowdown", median(lists), 1000, "ms");
  report("changing the reading to a redrawn rack of 1,000, 4x slowdown", median(redraws), 100, "ms");
  report("memory of the engine after loading and judging 20,000 bikes", await heapForTwentyThousand(), 64, "MiB");
} finally {
  await browser.close();
  rmSync(folder, { recursive: true });
}
process.exitCode = failed ? 1 : 0;
