// The list turned round: the chart's edges against the engine's verdicts, what is saved and printed of it, the tags with their
// codes, and the strip for the wall as a printer gets it.

import assert from "node:assert/strict";
import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test, { after, before } from "node:test";
import { openBuiltEngine, sample } from "../support/built-engine.mjs";
import { keepStageChosen, usualStage } from "../support/choose-stage.mjs";
import { serveClub, siteBuilder } from "../support/built-site.mjs";
import { clubPage, clubSite } from "../support/club-site.mjs";
import { goTo, launchBrowser, openList, openPage, pageAddress, screens } from "../support/open-page.mjs";

const title = "Who each bike fits";

let browser;
let engine;
let turned;
before(async () => {
  browser = await launchBrowser();
  engine = await openBuiltEngine();
  engine.ask({ do: "load", rows: { from: 0, count: 1 } }, readFileSync(sample("loan-shed.json")));
  turned = engine.ask({ do: "suits" });
});
after(() => browser.close());

async function openSuits({ list = sample("loan-shed.json"), viewport = screens.laptop, ...options } = {}) {
  const opened = await openPage(browser, viewport, options);
  await openList(opened.page, list);
  await opened.page.getByRole("button", { name: title }).click();
  await opened.page.locator(".suits-rows").first().waitFor();
  return opened;
}

async function saved(page, name) {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name, exact: true }).click(),
  ]);
  return readFileSync(await download.path(), "utf8");
}

const stageNames = {
  gliding: "Pushes along with both feet",
  side_wheels: "Training wheels (stabilisers)",
  starting: "No training wheels, still new to it",
  riding: "Rides well",
};

/** The verdict on one bike for a leg that was measured once, today. */
function verdictAt(id, stage, mm) {
  const rider = { readings: [{ on: "2026-11-29", inseam_mm: mm, shoes: true }], stage };
  const { bikes } = engine.ask({ do: "assess", today: "2026-11-29", rider, only: [id] });
  return bikes.find((bike) => bike.id === id).verdict;
}

test("every bar of every way of riding is where the engine has it, and its ends are the edges of the verdict", async () => {
  const { page, faults, close } = await openSuits();
  for (const [stage, name] of Object.entries(stageNames)) {
    await page.locator(".suits select").selectOption(name);
    const told = turned.bikes.filter(({ stages }) => stages[stage]);
    const rows = page.locator(".suits-rows > li");
    await page.waitForFunction(
      (many) =>
        document.querySelector("#saddlerule").shadowRoot.querySelectorAll(".suits-rows > li").length === many,
      told.length,
    );
    const drawn = await rows.evaluateAll((all) =>
      all.map((row) => ({
        id: row.querySelector("strong").textContent,
        left: parseFloat(row.querySelector(".span-bar").style.left),
        width: parseFloat(row.querySelector(".span-bar").style.width),
      })),
    );
    assert.deepEqual(
      drawn.map(({ id }) => id),
      told.map(({ id }) => id),
    );
    // Two known places give the scale; all others have to agree with it.
    const ends = told.map(({ stages }) => {
      const {
        inseam_mm: [from, to],
        surely_mm: surely,
      } = stages[stage];
      return [from ?? surely[0], to ?? surely[1]];
    });
    const first = drawn[0];
    const perMm = first.width / (ends[0][1] - ends[0][0]);
    for (const [place, { left, width }] of drawn.entries()) {
      const [from, to] = ends[place];
      assert.ok(Math.abs(left - (first.left + (from - ends[0][0]) * perMm)) < 0.01);
      assert.ok(Math.abs(width - (to - from) * perMm) < 0.01);
    }
    for (const { id, stages } of told) {
      const [from, to] = stages[stage].inseam_mm;
      for (const [edge, out] of [
        [from, -0.1],
        [to, 0.1],
      ]) {
        if (edge === null) continue;
        assert.equal(verdictAt(id, stage, edge), "fits_now", `${id} ${stage} ${edge}`);
        assert.notEqual(verdictAt(id, stage, edge + out), "fits_now", `${id} ${stage} beyond ${edge}`);
      }
    }
  }
  assert.deepEqual(faults, []);
  await close();
});

test("the saved table has the engine's figures, and no name in it is a formula", async () => {
  const { page, close } = await openSuits();
  const [heads, ...rows] = (await saved(page, "Save as CSV")).replace("\ufeff", "").trim().split("\r\n");
  assert.ok(heads.startsWith("id,name,wheel_in,saddle_lowest_mm,saddle_highest_mm,gliding_from_mm,"));
  assert.equal(rows.length, turned.count);
  const column = heads.split(",").indexOf("starting_from_mm") - heads.split(",").length;
  for (const [place, row] of rows.entries()) {
    const from = turned.bikes[place].stages.starting?.inseam_mm[0] ?? "";
    assert.equal(row.split(",").at(column), String(from));
  }
  await close();
  const list = {
    bikes: [{ id: "=1+1", name: "A;@SUM(1)", saddle_lowest: "40 cm", saddle_highest: "55 cm" }],
  };
  const other = await openSuits({
    list: { name: "odd.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(list)) },
  });
  const [, odd] = (await saved(other.page, "Save as CSV")).split("\r\n");
  assert.ok(odd.startsWith("'=1+1,A;'@SUM(1),,400,550,"), odd);
  await other.close();
});

test("the chart is saved as a drawing by itself, and printed on one page", async () => {
  const { page, faults, close } = await openSuits();
  const drawing = await saved(page, "Save as SVG");
  assert.ok(drawing.startsWith("<svg"));
  assert.equal(
    drawing.match(/<rect /g).length - 1,
    turned.bikes.filter(({ stages }) => stages.starting).length,
  );
  assert.ok(!/class="[^"]*span|var\(/.test(drawing));
  for (const paper of ["A4", "US Letter"]) {
    await page.getByRole("radio", { name: paper }).check();
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    assert.equal(pdf.match(/\/Type \/Page\b/g).length, 1, paper);
  }
  assert.deepEqual(faults, []);
  await close();
});

test("the address opens the chart; without a list it says what is missing", async () => {
  const { page, close } = await openPage(browser, screens.phone, { address: `${pageAddress}#view=suits` });
  await page.getByRole("heading", { name: title }).waitFor();
  await page.getByText("Open a list of bikes first.").waitFor();
  await close();
});

/** A folder of its own for `work`, gone afterwards. */
async function inFolder(work) {
  const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const mmInPoint = 25.4 / 72;

/** What poppler finds drawn on each page of a PDF: lines and areas, in millimetres from the upper left corner of the sheet. */
function drawnOn(pdf) {
  return inFolder((folder) => {
    const file = join(folder, "strip.pdf");
    writeFileSync(file, pdf);
    const pages = Number(/Pages:\s+(\d+)/.exec(execFileSync("pdfinfo", [file], { encoding: "utf8" }))[1]);
    return Array.from({ length: pages }, (_, page) => {
      const number = String(page + 1);
      const svg = execFileSync("pdftocairo", ["-svg", "-f", number, "-l", number, file, "-"], {
        encoding: "utf8",
        maxBuffer: 1 << 26,
      });
      return [...svg.matchAll(/<path style="([^"]+)" d="([^"]+)"(?: transform="matrix\(([^)]+)\)")?/g)].map(
        ([, style, path, matrix = "1,0,0,1,0,0"]) => {
          const [a, , , d, e, f] = matrix.split(",").map(Number);
          const points = [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({
            x: (x * a + e) * mmInPoint,
            y: (y * d + f) * mmInPoint,
          }));
          return { style, points };
        },
      );
    });
  });
}

const span = (values) => [Math.min(...values), Math.max(...values)];

for (const [unit, paper, length] of [
  ["cm", "A4", 250],
  ["in", "US Letter", 228.6],
]) {
  test(`the strip for the wall on ${paper}, in ${unit}, is true to half a millimetre as it is printed`, async () => {
    const { page, faults, close } = await openSuits();
    const units = page
      .locator(".suits")
      .getByRole("radio", { name: unit === "in" ? "in" : "cm", exact: true });
    await units.check();
    await page.getByRole("radio", { name: paper }).check();
    await page.getByRole("radio", { name: "Wall strip" }).check();
    await page.locator(".strip-sheet").first().waitFor();
    const sheets = await drawnOn(await page.pdf({ preferCSSPageSize: true }));
    assert.deepEqual(faults, []);
    await close();

    const legs = turned.bikes.flatMap(({ stages: { starting } }) => starting ?? []);
    const ends = legs.map(({ inseam_mm: [from, to], surely_mm: surely }) => [
      from ?? surely[0],
      to ?? surely[1],
    ]);
    assert.equal(sheets.length, Math.ceil(Math.max(...ends.map(([, to]) => to + 1)) / length));
    for (const [number, shapes] of sheets.entries()) {
      const lines = shapes.filter(({ style }) => style.includes("fill:none"));
      const checks = lines.filter(({ points }) => {
        const [left, right] = span(points.map(({ x }) => x));
        return points.length === 6 && right - left > 80;
      });
      assert.equal(checks.length, 1, `check lines of sheet ${number + 1}`);
      const [left, right] = span(checks[0].points.map(({ x }) => x));
      assert.ok(Math.abs(right - left - 100) < 0.5, `the check line is ${right - left} mm long`);

      // Each dash comes as an area of its own.
      const cuts = shapes
        .map(({ points }) => ({ dashes: points.length / 5, y: span(points.map(({ y }) => y)) }))
        .filter(({ dashes, y: [top, bottom] }) => dashes > 10 && bottom - top < 0.5)
        .map(({ y: [top, bottom] }) => (top + bottom) / 2);
      const [upper, lower] = span(cuts);
      assert.ok(Math.abs(lower - upper - length) < 0.5, `${lower - upper} mm between the cuts`);

      const base = number * length;
      const bars = shapes
        .filter(({ style }) => /fill:rgb\(9[68]\.\d+%,/.test(style))
        .map(({ points }) => span(points.map(({ y }) => base + lower - y)))
        .sort((a, b) => a[0] - b[0] || a[1] - b[1]);
      const expected = ends
        .map(([from, to]) => [Math.max(from, base), Math.min(to, base + length)])
        .filter(([from, to]) => from < to)
        .sort((a, b) => a[0] - b[0] || a[1] - b[1]);
      assert.equal(bars.length, expected.length);
      for (const [place, bar] of bars.entries())
        for (const end of [0, 1])
          assert.ok(Math.abs(bar[end] - expected[place][end]) < 0.5, `${bar} for ${expected[place]}`);
    }
  });
}

/** The element in a club's page, open at `at`. */
async function visitClub(test, at, { element = "", viewport = screens.phone } = {}) {
  const site = await clubSite({
    "/": clubPage(`<saddlerule-fit list="/bikes.json" ${element}></saddlerule-fit>`, {
      head: '<script src="/saddlerule/saddlerule-fit.js" async></script>',
    }),
    "/club.css": "body { margin: 0 } @media print { header { display: none } }",
    "/bikes.json": readFileSync(sample("loan-shed.json")),
  });
  const context = await browser.newContext({ viewport, locale: "en-GB" });
  test.after(async () => {
    await context.close();
    site.close();
  });
  await context.addInitScript(keepStageChosen, usualStage);
  const page = await context.newPage();
  await page.goto(`${site.address}/${at}`);
  return { site, page };
}

const dotsPerInch = 300;

/** A piece of a grey picture (https://netpbm.sourceforge.net/doc/pgm.html), in millimetres from its upper left corner. */
function cutOut(picture, ...millimetres) {
  const [left, top, width, height] = millimetres.map((mm) => Math.floor((mm / 25.4) * dotsPerInch));
  const [head, across] = /^P5\s+(\d+)\s+\d+\s+\d+\s/.exec(picture.subarray(0, 60).toString("latin1"));
  const rows = Array.from({ length: height }, (_, row) => {
    const from = head.length + (top + row) * Number(across) + left;
    return picture.subarray(from, from + width);
  });
  return Buffer.concat([Buffer.from(`P5\n${width} ${height}\n255\n`), ...rows]);
}

/** What a scanner reads on the sheets of tags as they are printed: of each size that is offered, one code a tag. */
async function codesOnTags(page, size) {
  const [width, height] = size.match(/\d+/g).map(Number);
  await page.locator(".suits select").selectOption(size);
  const pdf = await page.pdf({ preferCSSPageSize: true });
  return inFolder((folder) => {
    const file = join(folder, "tags.pdf");
    writeFileSync(file, pdf);
    execFileSync("pdftoppm", ["-r", String(dotsPerInch), "-gray", file, join(folder, "sheet")]);
    // Like a phone, it looks at one tag at a time.
    const sheets = readdirSync(folder).filter((name) => name.endsWith(".pgm"));
    const across = Math.floor(190 / width);
    const down = Math.floor(277 / height);
    const tags = sheets.flatMap((sheet) => {
      const picture = readFileSync(join(folder, sheet));
      return Array.from({ length: across * down }, (_, place) => {
        const name = `${sheet}-${place}.pgm`;
        const left = 10 + (place % across) * width;
        const top = 10 + Math.floor(place / across) * height;
        writeFileSync(join(folder, name), cutOut(picture, left, top, width, height));
        return name;
      });
    });
    const how = ["--quiet", "--raw", "--nodbus", "-Sdisable", "-Sqrcode.enable"];
    // The last places may be empty, which it counts as a failure.
    const { stdout } = spawnSync("zbarimg", [...how, ...tags], { cwd: folder, encoding: "utf8" });
    return stdout.trim().split("\n");
  });
}

const tagSizes = ["60 × 45 mm", "90 × 60 mm", "95 × 85 mm"];

test("the codes on printed tags lead to the club's page at their bikes, in every size", async (test) => {
  const { site, page } = await visitClub(test, "", { element: 'view="suits"', viewport: screens.laptop });
  await page.getByRole("radio", { name: "Tags" }).check();
  for (const size of tagSizes) {
    const codes = await codesOnTags(page, size);
    assert.deepEqual(codes.sort(), turned.bikes.map(({ id }) => `${site.address}/#bike=${id}`).sort(), size);
  }
});

test("without an address of the page the codes carry the bikes as text, which the engine reads in every language", async () => {
  const { page, faults, close } = await openSuits();
  await page.getByRole("radio", { name: "Tags" }).check();
  await page.getByText("40 tags on 5 sheets.").waitFor();
  const { bikes } = JSON.parse(readFileSync(sample("loan-shed.json"), "utf8"));
  const kinds = new Map(bikes.map(({ id, kind }) => [id, kind]));
  for (const [place, language] of ["en", "de", "fr", "es", "nl"].entries()) {
    await page.locator(".language-choice").selectOption(language);
    await page.locator(`[lang=${language}] .bike-tag`).first().waitFor();
    const size = tagSizes[place % tagSizes.length];
    const codes = await codesOnTags(page, size);
    assert.equal(codes.length, turned.bikes.length, `${language}, ${size}`);
    for (const text of codes) {
      const { cells } = engine.ask({ do: "read_bike", text });
      const bike = turned.bikes.find(({ id }) => id === cells.id);
      assert.ok(bike, text);
      assert.equal(cells.kind === "balance", kinds.get(bike.id) === "balance", text);
      assert.equal(cells.wheel, String(bike.wheel_nominal_in ?? ""), text);
      for (const end of ["lowest", "highest"]) {
        const said = cells[`saddle_${end}`];
        const exact = bike.span_mm[end];
        if (exact === null) assert.equal(said, "", text);
        else assert.ok(Math.abs(parseFloat(said.replace(",", ".")) * 10 - exact) <= 2.5, text);
      }
    }
  }
  assert.deepEqual(faults, []);
  await close();
});

test("a test sheet of tags comes first, with a line of 50 mm in the place of a tag; printing goes on with all sheets", async () => {
  const { page, faults, close } = await openSuits();
  await page.evaluate(() => (window.print = () => undefined));
  await page.getByRole("radio", { name: "Tags" }).check();
  for (const paper of ["A4", "US Letter"]) {
    await page.getByRole("radio", { name: paper }).check();
    for (const size of ["60 × 45 mm", "90 × 60 mm", "95 × 85 mm"]) {
      await page.locator(".suits select").selectOption(size);
      await page.getByRole("button", { name: "Print one sheet as a test" }).click();
      await page.locator(".tag-sheet .strip-check").waitFor({ state: "attached" });
      const sheets = await drawnOn(await page.pdf({ preferCSSPageSize: true }));
      assert.equal(sheets.length, 1, `${paper}, ${size}`);
      const lengths = sheets[0].flatMap(({ points }) => {
        const [left, right] = points.length === 6 ? span(points.map(({ x }) => x)) : [0, 0];
        return Math.abs(right - left - 50) < 0.5 ? [right - left] : [];
      });
      assert.equal(lengths.length, 1, `one check line on ${paper}, ${size}`);
      await page.locator(".tag-sheet .strip-check").waitFor({ state: "detached" });
      assert.ok((await page.locator(".tag-sheet .bike-tag").count()) === 40, "all of them again");
    }
  }
  assert.deepEqual(faults, []);
  await close();
});

test("a scanned tag opens its bike: first the leg is asked for, then the verdict is there", async (test) => {
  const { page } = await visitClub(test, "#bike=L07");
  await page.getByRole("heading", { name: "Loan 07" }).waitFor();
  await page.getByRole("button", { name: "Enter the inside leg" }).click();
  await page.getByRole("textbox", { name: "Inside leg", exact: true }).fill("56");
  await page.getByRole("button", { name: "See bike L07" }).click();
  await page.getByRole("heading", { name: "Loan 07" }).waitFor();
  await page.locator(".verdict-sheet.fits_now").waitFor();
  await page.evaluate(() => (window.location.hash = "bike=L28"));
  await page.locator(".verdict-sheet.too_tall").waitFor();
});

test("a tag that no bike of the list has is said to be unknown", async (test) => {
  const { page } = await visitClub(test, "#bike=X%209");
  await page.getByRole("heading", { name: "No bike in the open list has the tag “X 9”." }).waitFor();
});

test("a tag without a list leads to the lists", async () => {
  const { page, close } = await openPage(browser, screens.phone, {
    address: `${pageAddress}#bike=L07`,
  });
  await page.getByRole("heading", { name: "Bike L07" }).waitFor();
  await page.getByText("Open a list of bikes first.").waitFor();
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("heading", { name: "Loan shed, autumn list" }).waitFor();
  await close();
});

test("on the site, a tag finds the list and the child who is saved on this phone", async (test) => {
  const sites = siteBuilder();
  const club = await serveClub(sites.first());
  // Tall, so that the bar at the foot covers no code, and sharp, as a camera that is close sees it.
  const viewport = { ...screens.phone, height: 3000 };
  const context = await browser.newContext({ viewport, deviceScaleFactor: 3, locale: "en-GB" });
  test.after(async () => {
    await context.close();
    await club.close();
    sites.done();
  });
  await context.addInitScript(keepStageChosen, usualStage);
  const page = await context.newPage();
  await page.goto(club.address);
  await page.getByRole("textbox", { name: "Inside leg", exact: true }).fill("49.5");
  await goTo(page, "Save");
  await page.getByRole("checkbox", { name: "Save on this device" }).check();
  await page.getByText("Saved as you type.").waitFor();

  const tagged = await context.newPage();
  await tagged.goto(`${club.address}&view=suits`);
  await tagged.getByRole("radio", { name: "Tags" }).check();
  const code = await tagged.locator(".tag-code > svg").first().screenshot();
  const address = await inFolder((folder) => {
    const file = join(folder, "code.png");
    writeFileSync(file, code);
    return execFileSync("zbarimg", ["--quiet", "--raw", "--nodbus", file], { encoding: "utf8" }).trim();
  });
  const { bikes } = JSON.parse(readFileSync(club.list, "utf8"));
  const bike = bikes.find(({ id }) => address === `${club.address}&bike=${id}`);
  assert.notEqual(bike, undefined, address);

  const scanned = await context.newPage();
  await scanned.goto(address);
  await scanned.getByRole("heading", { name: bike.name }).waitFor();
  await scanned.locator(".verdict-sheet").waitFor();
});
