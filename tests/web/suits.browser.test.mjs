// The list turned round: the chart's edges against the engine's verdicts, what is saved and printed of it, the tags with their
// codes, and the strip for the wall as a printer gets it.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { openBuiltEngine, sample } from "../support/built-engine.mjs";
import { launchBrowser, openList, openPage, screens } from "../support/open-page.mjs";

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
  assert.ok(odd.startsWith(`"'=1+1","A;'@SUM(1)",,400,550,`), odd);
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
  const { pageAddress } = await import("../support/open-page.mjs");
  const { page, close } = await openPage(browser, screens.phone, { address: `${pageAddress}#view=suits` });
  await page.getByRole("heading", { name: title }).waitFor();
  await page.getByText("Open a list of bikes first.").waitFor();
  await close();
});
