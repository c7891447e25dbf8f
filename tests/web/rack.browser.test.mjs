// The rack: long lists scroll to their ends, every bike says why it is not put forward, and what would change the answer.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test, { after, before } from "node:test";
import { openBuiltEngine, root, sample } from "../support/built-engine.mjs";
import { eventually } from "../support/eventually.mjs";
import { goTo, launchBrowser, openList, openPage, screens } from "../support/open-page.mjs";
import { texts } from "../support/shown-verdicts.mjs";

const today = "2026-11-25";
const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));

let browser;
before(async () => (browser = await launchBrowser()));
after(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

const rider = {
  population: "gb",
  stage: "starting",
  readings: [{ on: today, inseam: "49.5", unit: "cm", shoes: true }],
};

async function openRack(list, viewport = screens.phone) {
  const opened = await openPage(browser, viewport, { now: `${today}T10:00:00` });
  const { page } = opened;
  await page.getByRole("radio", { name: "centimetres" }).check();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  await openList(page, list);
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  await page.getByRole("list", { name: "Bikes, best first" }).getByRole("article").first().waitFor();
  return opened;
}

async function engineWith(list) {
  const engine = await openBuiltEngine();
  engine.ask({ do: "load" }, readFileSync(list));
  return engine;
}

/** The lines that are whole between the heading in sight and the bar at the foot. */
const wholeLines = (page) =>
  page.evaluate(() => {
    const { shadowRoot } = document.querySelector("#saddlerule");
    const bar = shadowRoot.querySelector(".navigation").getBoundingClientRect();
    const foot = bar.top > innerHeight / 2 ? bar.top : innerHeight;
    const head = shadowRoot.querySelector(".screen.rack .long-list-head").getBoundingClientRect().bottom;
    return [...shadowRoot.querySelectorAll(".screen.rack .row:not(.row-room)")].filter((row) => {
      const { top, bottom } = row.getBoundingClientRect();
      return top >= head - 1 && bottom <= foot + 1;
    }).length;
  });

const toTheList = (page) =>
  page.locator(".screen.rack .tape-strip").evaluate((strip) => strip.scrollIntoView({ block: "start" }));

for (const [device, onArrival, scrolled] of [
  ["phone", 4, 6],
  ["laptop", 8, 12],
]) {
  test(`at least ${onArrival} bikes are in sight on arrival and ${scrolled} in the list: ${device}`, async () => {
    const { page, faults, close } = await openRack(sample("loan-shed.json"), screens[device]);
    await eventually(async () => assert.ok((await wholeLines(page)) >= onArrival, await wholeLines(page)));
    await toTheList(page);
    await eventually(async () => assert.ok((await wholeLines(page)) >= scrolled, await wholeLines(page)));
    assert.deepEqual(faults, []);
    await close();
  });

  test(`a press anywhere on a line opens its bike, one on its box ticks it: ${device}`, async () => {
    const { page, close } = await openRack(sample("loan-shed.json"), screens[device]);
    const row = page.locator(".screen.rack .row").nth(1);
    const name = await row.locator(".row-name").textContent();
    const box = await row.getByRole("checkbox").locator("..").boundingBox();
    assert.ok(box.width >= 44 && box.height >= 44, JSON.stringify(box));
    const { x, y, width, height } = await row.boundingBox();
    const places = [
      [x + 3, y + 3],
      [x + width / 2, y + height - 3],
      [x + width - 3, y + height - 3],
      // On the bar, and between the words.
      ...(await row.locator(".span-bar, .row-title").evaluateAll((parts) =>
        parts.map((part) => {
          const { left, right, top, bottom } = part.getBoundingClientRect();
          return [(left + right) / 2, (top + bottom) / 2];
        }),
      )),
    ];
    for (const [left, top] of places) {
      await page.mouse.click(left, top);
      await page.getByRole("heading", { name, level: 2 }).waitFor();
      await page.getByRole("button", { name: "Back to the bikes" }).click();
      await page.evaluate(() => scrollTo(0, 0));
      await row.waitFor();
    }
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    await page.getByText("1 bike ticked.").waitFor();
    await close();
  });
}

test("a warning is on the line, and what it is about on the bike's own screen", async () => {
  const list = sample("loan-shed.json");
  const { bikes } = (await engineWith(list)).ask({ do: "assess", today, rider, detail: "brief" });
  const stopped = bikes.filter(({ stops }) => stops > 0);
  assert.ok(stopped.length > 0, "the sample has such bikes");
  const { page, close } = await openRack(list, { width: 390, height: 12000 });
  const warned = page.getByRole("article").filter({ has: page.locator(".warning") });
  await eventually(async () => assert.equal(await warned.count(), stopped.length));
  const line = warned.filter({ has: page.getByRole("heading", { name: stopped[0].name, exact: true }) });
  await line.getByText(`${stopped[0].stops} ${stopped[0].stops === 1 ? "warning" : "warnings"}`).waitFor();
  await line.locator(".row-name").click();
  await page.locator(".screen.bike .warning-why").first().waitFor();
  await close();
});

/** A balance bike for a child who pedals has a heading of its own. */
for (const list of ["loan-shed.json", "swap-morning.json"]) {
  test(`every verdict has a heading with its count, in the engine's order, which stays in sight: ${list}`, async () => {
    const answer = (await engineWith(sample(list))).ask({ do: "assess", today, rider, detail: "brief" });
    const expected = [];
    for (const { verdict, suits_stage: suits } of answer.bikes) {
      const kind = suits ? "" : " (balance bikes)";
      const last = expected.at(-1);
      if (last?.verdict === verdict && last.kind === kind) ++last.count;
      else expected.push({ verdict, kind, count: 1 });
    }
    for (const [verdict, count] of Object.entries(answer.counts)) {
      const told = expected.filter((group) => group.verdict === verdict);
      assert.equal(
        told.reduce((sum, group) => sum + group.count, 0),
        count,
      );
    }
    const { page, close } = await openRack(sample(list));
    const heads = page.locator(".screen.rack .group-head");
    assert.deepEqual(
      await heads.allTextContents(),
      expected.map(
        ({ verdict, kind, count }) =>
          `${texts.rack.verdicts[verdict]}${kind} ${count} ${count === 1 ? "bike" : "bikes"}`,
      ),
    );
    // Far down, the heading over the bikes in sight is that of their verdict.
    const heading = () =>
      page.evaluate(() => {
        const { shadowRoot } = document.querySelector("#saddlerule");
        const strip = shadowRoot.querySelector(".screen.rack .tape-strip").getBoundingClientRect();
        const at = (y) => shadowRoot.elementFromPoint(innerWidth / 2, y);
        const row = at(strip.bottom + 60)?.closest(".row");
        return [at(strip.bottom + 10)?.closest(".group-head")?.firstChild.nextSibling.textContent, row].map(
          (part) => (part instanceof Element ? part.querySelector(".verdict")?.textContent : part),
        );
      });
    for (const share of [0.3, 0.5, 0.8]) {
      await page.evaluate((share) => scrollTo(0, share * document.documentElement.scrollHeight), share);
      await eventually(async () => {
        // Where one heading gives way to the next there is no line below it.
        await page.evaluate(() => window.scrollBy(0, 20));
        const [head, verdict] = await heading();
        assert.ok(verdict && head?.startsWith(verdict), `${verdict} under ${head}`);
      });
    }
    await close();
  });
}

test("all bikes at a glance: a bar for each, and a press on the picture leads to the bikes there", async () => {
  const list = join(folder, "glance.json");
  const program = join(root, "tests/support/make-list.mjs");
  writeFileSync(list, execFileSync(process.execPath, [program, "1000"], { maxBuffer: 1 << 26 }));
  const { bikes, counts } = (await engineWith(list)).ask({ do: "assess", today, rider, detail: "brief" });
  const { page, faults, close } = await openRack(list);
  await page.getByText("All at a glance").click();
  const picture = page.getByRole("img", { name: `Bikes: ${counts.fits_now} fit` });
  await picture.waitFor();
  const bars = await picture
    .locator("path[d*=z]")
    .evaluateAll((paths) =>
      paths.map((path) => [path.getAttribute("class"), path.getAttribute("d").match(/z/g).length]),
    );
  assert.equal(
    bars.reduce((sum, [, count]) => sum + count, 0),
    bikes.length,
  );
  for (const [verdict, count] of Object.entries(counts)) {
    const drawn = bars.filter(([kind]) => kind === verdict);
    assert.equal(
      drawn.reduce((sum, [, number]) => sum + number, 0),
      count,
    );
  }
  for (const share of [0.75, 0.3]) {
    await page.evaluate(() => scrollTo(0, 0));
    const { x, y, width, height } = await picture.boundingBox();
    await page.mouse.click(x + width / 2, y + share * height);
    const wanted = page.locator(`.screen.rack [aria-posinset="${Math.floor(share * 1000) + 1}"] .row-name`);
    await eventually(async () => {
      const box = await wanted.boundingBox({ timeout: 1000 });
      assert.ok(box.y > 0 && box.y < screens.phone.height, JSON.stringify(box));
    });
    assert.equal(await wanted.textContent(), bikes[Math.floor(share * 1000)].name);
  }
  const rows = { from: 0, count: 1000 };
  const spans = (await engineWith(list)).ask({ do: "assess", today, rider, detail: "spans", rows }).bikes;
  for (const month of [14, 30, 60]) {
    await page.getByRole("slider", { name: "Slide to see which bikes will fit later" }).fill(String(month));
    const fits = ({ fits_months: stretches }) =>
      stretches !== null && stretches.some(([from, to]) => from <= month && month < to);
    const number = spans.filter(fits).length;
    await page.getByText(`${month} months from now ${number} of these bikes probably fit`).waitFor();
    const lit = await picture
      .locator("path.fits_now")
      .evaluateAll((paths) =>
        paths.reduce((sum, path) => sum + path.getAttribute("d").match(/z/g).length, 0),
      );
    assert.equal(lit, number);
  }
  assert.deepEqual(faults, []);
  await close();
});

test("groups fold away under their headings, stay folded when the list is opened again, and are all on paper", async () => {
  const { page, faults, close } = await openRack(sample("loan-shed.json"));
  const { counts } = (await engineWith(sample("loan-shed.json"))).ask({ do: "assess", today, rider });
  const head = (name) => page.locator(".screen.rack").getByRole("button", { name });
  const inSight = (verdict) => page.locator(`.screen.rack .row .span-bar.${verdict}`).count();
  const fits = head(/^Saddle height fits \d/);
  assert.ok((await fits.textContent()).endsWith(`${counts.fits_now} bikes`));
  assert.equal(await fits.getAttribute("aria-expanded"), "true");
  await fits.click();
  await eventually(async () => assert.equal(await inSight("fits_now"), 0));
  assert.equal(await fits.getAttribute("aria-expanded"), "false");
  assert.ok(
    (await fits.textContent()).endsWith(`${counts.fits_now} bikes`),
    "the number says what is hidden",
  );

  // The next stop of the Tab key is the next heading, and then its first bike.
  await fits.focus();
  await page.keyboard.press("Tab");
  const focused = () =>
    page.evaluate(() => document.querySelector("#saddlerule").shadowRoot.activeElement.textContent);
  assert.match(await focused(), /^Borderline/);
  await page.keyboard.press("Tab");
  assert.doesNotMatch(await focused(), /bikes?$/);

  await openList(page, sample("swap-morning.json"));
  await goTo(page, "Bikes");
  await eventually(async () => assert.equal(await fits.getAttribute("aria-expanded"), "false"));
  await openList(page, sample("loan-shed.json"));
  await goTo(page, "Bikes");

  // In the picture of all, a press on a folded bike unfolds it.
  await page.getByText("All at a glance").click();
  const picture = page.locator(".overview");
  await picture.waitFor();
  await picture.click({ position: { x: 20, y: 2 } });
  await eventually(async () => assert.ok((await inSight("fits_now")) > 0));

  await fits.click();
  await eventually(async () => assert.equal(await inSight("fits_now"), 0));
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  await eventually(async () =>
    assert.equal(await page.locator(".paper-table .span-bar.fits_now").count(), counts.fits_now),
  );
  assert.deepEqual(faults, []);
  await close();
});

test("more detail is told where it is asked for, and still when the list is opened again", async () => {
  const { page, close } = await openRack(sample("loan-shed.json"));
  const first = page.getByRole("list", { name: "Bikes, best first" }).getByRole("article").first();
  assert.equal(await first.getByText("a month").count(), 0);
  await page.getByRole("checkbox", { name: "More detail" }).check();
  await first.getByText(/^Fits for .* a month\.$/).waitFor();
  await openList(page, sample("swap-morning.json"));
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  await first.getByText(/^Fits for .* a month\.$/).waitFor();
  await page.getByRole("checkbox", { name: "More detail" }).uncheck();
  await first.getByText("a month").waitFor({ state: "detached" });
  await close();
});

for (const bikes of [1000, 20000]) {
  test(`a rack of ${bikes} bikes scrolls to its last one, and few of them are in the page`, async () => {
    const list = join(folder, `${bikes}.json`);
    const program = join(root, "tests/support/make-list.mjs");
    writeFileSync(list, execFileSync(process.execPath, [program, String(bikes)], { maxBuffer: 1 << 26 }));
    const ranked = (await engineWith(list)).ask({ do: "assess", today, rider, detail: "brief" }).bikes;
    const { page, faults, close } = await openRack(list);
    const rows = page.getByRole("list", { name: "Bikes, best first" }).getByRole("listitem");
    const last = rows.filter({ has: page.getByRole("heading", { name: ranked.at(-1).name, exact: true }) });
    // The rack grows as its rows are measured: its end is where nothing is left to scroll.
    await eventually(async () => {
      await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
      assert.ok(await last.isVisible());
    });
    assert.equal(await last.getAttribute("aria-posinset"), String(bikes));
    assert.equal(await last.getAttribute("aria-setsize"), String(bikes));
    assert.ok((await rows.count()) < 100, "rows far away are not drawn");
    await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight / 2));
    const middle = rows.filter({ has: page.getByRole("heading") }).first();
    await eventually(async () => {
      const place = Number(await middle.getAttribute("aria-posinset"));
      assert.ok(place > bikes / 4 && place < (bikes * 3) / 4, `half-way down is place ${place}`);
      assert.equal(await middle.getByRole("heading").textContent(), ranked[place - 1].name);
    });
    await page.evaluate(() => window.scrollTo(0, 0));
    await page.getByRole("heading", { name: ranked[0].name, exact: true }).waitFor();
    assert.deepEqual(faults, []);
    await close();
  });
}

test("after a jump down the rack, no frame draws more than two rows anew, and all near the screen are there soon", async () => {
  const { page, faults, close } = await openRack(sample("swap-morning.json"));
  const most = await page.evaluate(async () => {
    const { shadowRoot } = document.querySelector("#saddlerule");
    const rows = () =>
      [...shadowRoot.querySelectorAll(".screen.rack .row-name")].map(({ dataset }) => dataset.bike);
    const seen = new Set(rows());
    // Counted as they come, and by the page's own frames: a slow machine may look at several frames at once.
    let frame = 0;
    const drawn = [];
    new MutationObserver(() => {
      const fresh = rows().filter((bike) => !seen.has(bike));
      for (const bike of fresh) seen.add(bike);
      drawn[frame] = (drawn[frame] ?? 0) + fresh.length;
    }).observe(shadowRoot, { childList: true, subtree: true, attributeFilter: ["data-bike"] });
    scrollTo(0, document.documentElement.scrollHeight / 2);
    while (frame < 60 || shadowRoot.querySelector(".screen.rack .row-room") !== null) {
      await new Promise(requestAnimationFrame);
      ++frame;
    }
    const most = Math.max(...drawn.filter((rows) => rows !== undefined));
    return most;
  });
  assert.ok(most > 0 && most <= 2, `${most} rows in one frame`);
  assert.equal(await page.locator(".screen.rack .row-room").count(), 0);
  assert.deepEqual(faults, []);
  await close();
});

test("coming back from a bike far down the rack, its place is found again", async () => {
  const { page, close } = await openRack(sample("swap-morning.json"));
  await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight / 2));
  await eventually(async () => {
    assert.equal(await page.locator(".screen.rack .row-room").count(), 0);
    const first = page.locator(".screen.rack [role=listitem]").first();
    assert.ok(Number(await first.getAttribute("aria-posinset")) > 10);
  });
  // Named before it is pressed: the rows that are drawn change as the page scrolls to it.
  const rack = page.getByRole("list", { name: "Bikes, best first" });
  const name = await rack.getByRole("button").nth(2).textContent();
  await rack.getByRole("button", { name, exact: true }).click();
  await page.getByRole("heading", { name, level: 2 }).waitFor();
  await page.getByRole("button", { name: "Back to the bikes" }).click();
  const again = rack.getByRole("button", { name, exact: true });
  await again.waitFor();
  assert.ok(await again.evaluate((button) => button === button.getRootNode().activeElement));
  await close();
});

test("a bike that no other beats says why it is worth a look, a beaten one names the bike that beats it", async () => {
  const list = sample("loan-shed.json");
  const { bikes } = (await engineWith(list)).ask({ do: "assess", today, rider, detail: "brief" });
  const beaten = bikes.find((bike) => bike.not_offered?.code === "beaten");
  const lightest = bikes.find((bike) => bike.standing?.worth.some(({ code }) => code === "lightest"));
  assert.ok(beaten && lightest, "the sample has both");
  const rival = bikes.find((bike) => bike.id === beaten.standing.beaten_by);
  // Tall enough to have every row of the sample on it.
  const { page, close } = await openRack(list, { width: 390, height: 12000 });
  await page.getByRole("checkbox", { name: "More detail" }).check();
  const row = (name) =>
    page.getByRole("article").filter({ has: page.getByRole("heading", { name, exact: true }) });
  await row(beaten.name)
    .getByText(`Not suggested: ${rival.name} fits for as long, costs no more and weighs no more.`)
    .waitFor();
  const worth = await row(lightest.name).getByText("Worth trying").locator("..").textContent();
  assert.match(worth, /none weighs less/);
  await close();
});

test("what would change the answer is worked out when it is unfolded, and again when the rider changes", async () => {
  const list = sample("loan-shed.json");
  const expected = (await engineWith(list)).ask({ do: "changes", today, rider });
  const { page, faults, close } = await openRack(list, screens.laptop);
  const fold = page.getByText("What if…");
  await fold.click();
  await page.getByText(`Right now, ${expected.first.name} comes first.`).waitFor();
  const longer = expected.changes.find(({ kind }) => kind === "longer_reading");
  const sentence = page.getByRole("button", {
    name: `If the inside leg were ${Math.round(longer.reading_shift_mm)} mm longer, ${longer.first.name} would come first.`,
  });
  await sentence.waitFor();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("58");
  await sentence.waitFor({ state: "detached" });
  await page.getByText(/Right now, .* comes first\./).waitFor();
  await page
    .getByRole("button", { name: /would come first/ })
    .first()
    .click();
  await page.getByRole("button", { name: "Back to the bikes" }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("a reading below an earlier one is questioned, and the answer stays", async () => {
  const { page, faults, close } = await openPage(browser, screens.phone, { now: `${today}T10:00:00` });
  await page.getByRole("radio", { name: "centimetres" }).check();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await page.getByText("47 to 50.5 cm", { exact: true }).waitFor();
  await page.getByText("Earlier measurements").first().click();
  await page.getByRole("button", { name: "Add an earlier measurement" }).click();
  await page.getByLabel("Measured on").fill("2026-08-01");
  await page.getByRole("textbox", { name: "Inside leg (cm)" }).fill("52");
  await page.getByText(/less than the one before, and legs do not shrink/).waitFor();
  assert.ok(await page.getByRole("heading", { name: "Saddle height to look for" }).isVisible());
  await page.getByRole("textbox", { name: "Inside leg (cm)" }).fill("48");
  await page.getByText(/legs do not shrink/).waitFor({ state: "detached" });
  assert.deepEqual(faults, []);
  await close();
});
