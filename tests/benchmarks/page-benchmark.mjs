// Size and speed of the built page, as README quotes them: headless Chromium, CPU slowed down four times.
//
//   node tests/benchmarks/page-benchmark.mjs [--against FILE] [--opening] [--club]
//
// --against FILE opens a page that was built earlier in turn with this one, and tells how long this one takes by that;
// --opening measures nothing else, --club the club's screens alone.
// Every figure is the median of several runs; the limits are the project's own, and a figure beyond one is exit 1.

import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { gzipSync } from "node:zlib";
import { openBareEngine, root } from "../support/built-engine.mjs";
import { openingTimes } from "./opening-times.mjs";
import { goTo, launchBrowser, openList, pageFile, screens } from "../support/open-page.mjs";
import { openSlowly } from "../support/slow-device.mjs";
import { latecomerTime, turnedRoundTimes } from "./club-times.mjs";
import { untilDrawn } from "./until-drawn.mjs";
import { pressingTimes, slowestControls } from "./control-times.mjs";

const {
  against,
  opening: openingOnly,
  club: clubOnly,
} = parseArgs({
  options: {
    against: { type: "string" },
    opening: { type: "boolean", default: false },
    club: { type: "boolean", default: false },
  },
}).values;

const runs = 5;

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const makeList = (bikes) =>
  execFileSync(process.execPath, [join(root, "tests/support/make-list.mjs"), String(bikes)], {
    maxBuffer: 1 << 26,
  });

const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
const thousand = join(folder, "thousand.json");
writeFileSync(thousand, makeList(1000));
const hundred = join(folder, "hundred.json");
writeFileSync(hundred, makeList(100));
const twentyThousand = join(folder, "twenty-thousand.json");
writeFileSync(twentyThousand, makeList(20000));

let failed = false;
function report(what, value, limit, unit) {
  const within = value <= limit;
  failed ||= !within;
  console.log(
    `${what.padEnd(72)} ${value.toFixed(0).padStart(8)} ${unit}  (limit ${limit}${within ? "" : ", EXCEEDED"})`,
  );
}

/** How busy the machine is, to hold runs against each other. */
function fixedLoop() {
  const start = performance.now();
  let sum = 0;
  for (let i = 0; i < 5e7; ++i) sum = (sum + i) % 1009;
  return sum < 0 ? 0 : performance.now() - start;
}

const browser = await launchBrowser();

/** A list chosen and a reading changed: on a phone with the rack behind the rider, on a laptop with the rack beside it. */
async function listAndReadingTimes(viewport) {
  const { page, close } = await openSlowly(browser, viewport);
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5 cm");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  const before = Date.now();
  await openList(page, thousand);
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  const firstBike = page.getByRole("list", { name: "Bikes, best first" }).getByRole("article").first();
  await firstBike.waitFor();
  const list = Date.now() - before;

  const beside = viewport === screens.laptop;
  if (!beside) await goTo(page, "Your child");
  await page.getByText("Best: 49.5 cm").waitFor();
  const redraws = [];
  for (const figure of ["51.5", "53.5", "55.5", "57.5", "59.5"]) {
    const act = `(root) => {
      root.windowBefore = root.querySelector(".rack-rows .band").style.left;
      const field = root.querySelector("input[type=text], input:not([type])");
      field.value = "${figure} cm";
      field.dispatchEvent(new InputEvent("input", { bubbles: true, composed: true }));
    }`;
    const drawn = `(root) =>
      root.textContent.replaceAll("\\u00a0", " ").includes("Best: ${figure} cm") &&
      (!${beside} || root.querySelector(".rack-rows .band").style.left !== root.windowBefore)`;
    redraws.push(await untilDrawn(page, act, drawn));
  }
  await close();
  return { list, redraw: median(redraws) };
}

const most = (values) => Math.max(0, ...values);

/** A file of 20,000 bikes: until its first rows are on the rack, the longest the page was held up meanwhile, and then scrolled. */
async function bigFileTimes() {
  const { page, noticed, close } = await openSlowly(browser);
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5 cm");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  await goTo(page, "List");
  await page.waitForTimeout(500);
  await noticed();
  const before = Date.now();
  await openList(page, twentyThousand);
  await page.getByRole("heading", { name: "20000 invented bikes" }).waitFor();
  const held = most((await noticed()).tasks);
  await goTo(page, "Bikes");
  const firstBike = page.getByRole("list", { name: "Bikes, best first" }).getByRole("article").first();
  await firstBike.waitFor();
  const shown = Date.now() - before;
  await page.waitForTimeout(500);
  await noticed();
  await page.mouse.move(200, 400);
  for (let turn = 0; turn < 40; ++turn) {
    await page.mouse.wheel(0, 400);
    await page.waitForTimeout(50);
  }
  for (let turn = 0; turn < 10; ++turn) {
    await page.mouse.wheel(0, 100000);
    await page.waitForTimeout(200);
  }
  await page.waitForTimeout(500);
  const scrolled = await noticed();
  await close();
  return { shown, held, frame: most(scrolled.frames), slow: scrolled.frames.length };
}

/** What moves by itself from the opening of the page to one bike of a list and back. */
async function shiftOverTheMainJob(viewport) {
  const { page, noticed, close } = await openSlowly(browser, viewport);
  const settled = () => page.waitForTimeout(1000);
  await settled();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5 cm");
  await settled();
  await openList(page, thousand);
  await page.getByRole("button", { name: "See the bikes" }).first().waitFor();
  await settled();
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  await settled();
  await page.mouse.move(viewport.width - 100, 400);
  for (let turn = 0; turn < 10; ++turn) {
    await page.mouse.wheel(0, 400);
    await page.waitForTimeout(100);
  }
  await settled();
  await page.getByRole("list", { name: "Bikes, best first" }).getByRole("button").nth(3).click();
  await settled();
  await page.getByRole("button", { name: "Back to the bikes" }).click();
  await settled();
  const { shifts } = await noticed();
  await close();
  return shifts;
}

async function heapForTwentyThousand() {
  const engine = await openBareEngine();
  const loaded = engine.ask({ do: "load" }, makeList(20000));
  if (loaded.list?.bikes !== 20000) throw new Error("the list of 20,000 bikes was not loaded");
  const rider = { stage: "starting", readings: [{ on: "2026-11-20", inseam_mm: 495 }] };
  const answer = engine.ask({ do: "assess", today: "2026-11-25", detail: "brief", rider });
  if (answer.bikes.length !== 20000) throw new Error("not every bike was judged");
  return engine.heapBytes() / 1024 / 1024;
}

async function reportOpening() {
  for (const slowdown of [4, 1]) {
    const { now, before } = await openingTimes(browser, { runs, slowdown, against });
    const what = "opening the file to a usable page";
    report(`${what}, ${slowdown === 1 ? "not slowed down" : `${slowdown}x slowdown`}`, now, 800, "ms");
    if (before !== null)
      report(`  in hundredths of the other page's ${before} ms`, (100 * now) / before, 60, "  ");
  }
}

async function reportClub() {
  const late = [];
  const turned = [];
  for (let run = 0; run < runs; ++run) {
    late.push(await latecomerTime(browser));
    turned.push(await turnedRoundTimes(browser, { thousand, hundred }));
  }
  const turnedMedian = (name) => median(turned.map((times) => times[name]));
  report("a latecomer among 200 children redrawn, 4x slowdown", median(late), 100, "ms");
  report("the chart of 1,000 bikes, 4x slowdown", turnedMedian("thousand"), 1000, "ms");
  report("100 tags, 4x slowdown", turnedMedian("tags"), 2000, "ms");
}

async function reportAllElse() {
  const page = readFileSync(pageFile);
  report("page, one file, gzip -9", gzipSync(page, { level: 9 }).length / 1000, 380, "kB");
  const times = { phone: [], laptop: [] };
  for (let run = 0; run < runs; ++run) {
    for (const name of ["phone", "laptop"]) times[name].push(await listAndReadingTimes(screens[name]));
  }
  for (const [name, measured] of Object.entries(times)) {
    report(
      `choosing a list of 1,000 bikes to a ranked rack, ${name}, 4x slowdown`,
      median(measured.map(({ list }) => list)),
      1000,
      "ms",
    );
    const redraw = median(measured.map((times) => times.redraw));
    report(`changing the reading to a redrawn rack of 1,000, ${name}, 4x slowdown`, redraw, 80, "ms");
  }
  const big = [];
  for (let run = 0; run < runs; ++run) big.push(await bigFileTimes());
  const bigMedian = (name) => median(big.map((times) => times[name]));
  report("choosing a file of 20,000 bikes to a ranked rack, 4x slowdown", bigMedian("shown"), 3000, "ms");
  report("  longest task of the page while it is read and judged", bigMedian("held"), 100, "ms");
  report("  longest frame while its rack is scrolled", bigMedian("frame"), 50, "ms");
  for (const name of ["phone", "laptop"]) {
    const shifts = await shiftOverTheMainJob(screens[name]);
    const shift = shifts.reduce((sum, { value }) => sum + value, 0);
    report(`layout shift over the main job, ${name}, in thousandths`, shift * 1000, 0, "  ");
    for (const { value, what } of shifts) console.log(`    ${value.toFixed(4)} ${what}`);
  }
  const presses = [
    ...(await pressingTimes(browser, thousand, runs)),
    ...(await slowestControls(browser, thousand)),
  ];
  for (const { control, time } of presses) {
    report(`next paint after ${control}, 1,000 bikes, 4x slowdown`, time, 100, "ms");
  }
  report(
    "memory of the engine after loading and judging 20,000 bikes",
    await heapForTwentyThousand(),
    64,
    "MiB",
  );
}

console.log(`load ${loadavg()[0].toFixed(1)}; a fixed loop takes ${fixedLoop().toFixed(0)} ms here`);
try {
  if (!clubOnly) await reportOpening();
  if (!openingOnly) await reportClub();
  if (!openingOnly && !clubOnly) await reportAllElse();
} finally {
  await browser.close();
  rmSync(folder, { recursive: true });
}
process.exitCode = failed ? 1 : 0;
