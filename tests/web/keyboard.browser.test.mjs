// The page by keyboard alone, and as an assistive technology hears of it: every stop of the Tab key shows where it is, the main
// job needs no pointer, changed verdicts are said aloud, drawings say in words what they show.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test, { after, before } from "node:test";
import { openBuiltEngine, root, sample } from "../support/built-engine.mjs";
import { inEveryThread } from "../support/engine-thread.mjs";
import { walkEveryScreen } from "../support/every-screen.mjs";
import { drawn, eventually, until } from "../support/eventually.mjs";
import { launchBrowser, openList, openPage, screens } from "../support/open-page.mjs";

const today = "2026-11-25";
const now = `${today}T10:00:00`;
const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));

let browser;
before(async () => (browser = await launchBrowser()));
after(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

/** Runs in the page: what has the focus, and what is wrong with how that is seen. */
function stop() {
  const room = document.querySelector("#saddlerule").shadowRoot;
  const element = room.activeElement;
  if (element === null) return null;
  // A heading that somebody arrived at: it took the focus, and no key leads to it.
  if (element.tabIndex < 0) return { name: "", ringed: true, seen: true };
  const label = element.closest("label");
  // Around itself, its label, or the whole row that it opens.
  const ringed = [[element], [label], [element, "::after"]].some(([one, part]) => {
    if (one === null) return false;
    const { outlineStyle, outlineWidth } = getComputedStyle(one, part);
    return outlineStyle !== "none" && parseFloat(outlineWidth) >= 2;
  });
  const box = (label ?? element).getBoundingClientRect();
  const [middle, centre] = [
    (Math.max(box.left, 0) + Math.min(box.right, innerWidth)) / 2,
    (Math.max(box.top, 0) + Math.min(box.bottom, innerHeight)) / 2,
  ];
  const hit = room.elementFromPoint(middle, centre);
  const seen = hit !== null && (element.contains(hit) || hit.contains(element) || label?.contains(hit));
  const name = element.getAttribute("aria-label") ?? (label ?? element).innerText ?? element.id;
  return { name: `${element.tagName.toLowerCase()} ${element.id} ${name.trim().slice(0, 50)}`, ringed, seen };
}

/** Runs in the page: until the rows that a rack draws one after another are all there, and push nothing on any more. */
async function settled() {
  const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
  const height = () => document.scrollingElement.scrollHeight;
  for (let same = 0, last = height(); same < 2; same = height() === last ? same + 1 : 0, last = height())
    await frame();
}

for (const [name, viewport] of Object.entries(screens)) {
  // WCAG 2.2: 2.4.7 focus visible, 2.4.11 focus not obscured, 2.4.13 focus appearance (a ring at least 2 px wide), 2.1.2 no trap.
  test(`every stop of the Tab key on every screen can be seen, and the last one leads out: ${name}`, async () => {
    const { page, close } = await openPage(browser, viewport, { served: true, reducedMotion: "reduce" });
    const faults = {};
    const looked = new Set();
    await walkEveryScreen(page, async (screen) => {
      // The same few controls again and again are not looked at twice.
      if (/cannot be read|ticked|two riders/.test(screen)) return;
      // From the top of the page, where nothing has the focus yet.
      await page.evaluate(() => {
        const room = document.querySelector("#saddlerule").shadowRoot;
        const first = [...room.querySelectorAll("button, select")].find((one) => one.checkVisibility());
        first.focus();
        first.blur();
        scrollTo(0, 0);
      });
      const found = [];
      let stops = 0;
      for (; stops < 400; ++stops) {
        if (screen.startsWith("rack")) await page.evaluate(settled);
        await page.keyboard.press("Tab");
        // Rows that are drawn on the way down may take more room than was reckoned, and push on what has the focus.
        const look = async () => (await page.evaluate(stop)) ?? { out: true, seen: true };
        const at = await until(
          async () => {
            const now = await look();
            return now.seen && now;
          },
          { late: look },
        );
        if (at.out) break;
        looked.add(at.name);
        if (!at.ringed) found.push(`no ring: ${at.name}`);
        if (!at.seen) found.push(`covered: ${at.name}`);
      }
      // A rack goes on for as long as it has bikes.
      if (stops < 3 || stops === 400) found.push(`${stops} stops`);
      if (found.length > 0) faults[screen] = [...new Set(found)];
    });
    assert.deepEqual(faults, {});
    assert.ok(looked.size > 60, `${looked.size} controls`);
    await close();
  });
}

/** Presses Tab until something is reached. */
async function tabTo(page, locator, most = 150) {
  for (let presses = 0; presses < most; ++presses) {
    const there = await locator.evaluateAll((elements) =>
      elements.some((element) => element === element.getRootNode().activeElement),
    );
    if (there) return;
    await page.keyboard.press("Tab");
  }
  assert.fail(`${most} stops, and none of them is ${locator}`);
}

test("from a reading to one bike and back, without a pointer", async () => {
  const { page, faults, close } = await openPage(browser, screens.phone, { now });
  const button = (name) => page.getByRole("button", { name, exact: true });
  await tabTo(page, page.getByRole("textbox", { name: "Inside leg" }));
  await page.keyboard.type("49.5");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  await tabTo(page, page.getByRole("radio", { name: "No training wheels, still new to it" }));
  await page.keyboard.press("ArrowDown");
  await page.getByText("54.6 to 59.7 cm", { exact: true }).waitFor();
  await page.keyboard.press("ArrowUp");
  await page.getByText("47 to 50.5 cm", { exact: true }).waitFor();
  await tabTo(page, button("See the bikes"));
  await page.keyboard.press("Enter");
  await tabTo(page, button("Loan shed, in cm"));
  await page.keyboard.press("Enter");
  const rows = page.getByRole("list", { name: "Bikes, best first" }).getByRole("article");
  await rows.first().waitFor();
  const name = await rows.first().getByRole("button").first().textContent();
  await tabTo(page, button(name));
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name, level: 2 }).waitFor();
  await page.keyboard.press("Shift+Tab");
  await tabTo(page, button("Back to the bikes"));
  await page.keyboard.press("Space");
  await rows.first().waitFor();
  assert.ok(await button(name).evaluate((element) => element === element.getRootNode().activeElement));
  assert.deepEqual(faults, []);
  await close();
});

/** A rack of 1,000 bikes with the focus on its first one; `place` tells on which bike the focus is, 0 for none. */
async function onRackOfThousand(options = {}) {
  const list = join(folder, "1000.json");
  writeFileSync(list, execFileSync(process.execPath, [join(root, "tests/support/make-list.mjs"), "1000"]));
  const { page, close } = await openPage(browser, screens.phone, { now, ...options });
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await openList(page, list);
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  const rows = page.getByRole("list", { name: "Bikes, best first" }).getByRole("listitem");
  await rows.first().getByRole("button").first().focus();
  const place = () =>
    page.evaluate(() => {
      const element = document.querySelector("#saddlerule").shadowRoot.activeElement;
      return Number(element?.closest("[role=listitem]")?.getAttribute("aria-posinset") ?? 0);
    });
  return { page, place, close };
}

test("the Tab key walks down a rack of 1,000 bikes past the rows that were drawn, and back up", async () => {
  const { page, place, close } = await onRackOfThousand();
  /** No faster than rows are answered. */
  const step = async (key) => {
    await page.keyboard.press(key);
    await drawn(page);
    await page.waitForFunction(
      () => document.querySelector("#saddlerule").shadowRoot.querySelector(".screen.rack .row-room") === null,
    );
  };
  const places = [];
  while (places.length < 120 && (places.at(-1) ?? 1) < 40) {
    await step("Tab");
    places.push(await place());
  }
  assert.equal(places.at(-1), 40, `reached ${places.join(" ")}`);
  assert.ok(
    places.every((one, step) => step === 0 || one - places[step - 1] <= 1),
    `no row is passed over: ${places.join(" ")}`,
  );
  for (let presses = 0; presses < 120 && (await place()) > 20; ++presses) {
    await step("Shift+Tab");
  }
  assert.equal(await place(), 20);
  await close();
});

/** Rows are told late: whatever the engine says waits a quarter of a second. */
function answersLate() {
  const { postMessage } = self;
  self.postMessage = (message) => setTimeout(() => postMessage.call(self, message), 250);
}

test("the Tab key does not leave a rack whose rows are still awaited, however fast it is pressed", async () => {
  const prepare = (context) => inEveryThread(context, answersLate);
  const { page, place, close } = await onRackOfThousand({ prepare });
  for (const [key, goal] of [
    ["Tab", 100],
    ["Shift+Tab", 40],
  ]) {
    const places = [await place()];
    const isThere = (at) => (key === "Tab" ? at >= goal : at <= goal);
    for (let presses = 0; presses < 1500 && !isThere(places.at(-1)); ++presses) {
      await page.keyboard.press(key);
      places.push(await place());
    }
    assert.equal(places.at(-1), goal, `${key} came by ${[...new Set(places)].join(" ")}`);
    assert.ok(
      places.every((at, press) => press === 0 || Math.abs(at - places[press - 1]) <= 1),
      `${key} passed over rows: ${[...new Set(places)].join(" ")}`,
    );
  }
  await close();
});

/** What the browser tells an assistive technology, without what it is told to pass over. */
async function accessibilityTree(page) {
  const session = await page.context().newCDPSession(page);
  const { nodes } = await session.send("Accessibility.getFullAXTree");
  await session.detach();
  const byId = new Map(nodes.map((node) => [node.nodeId, node]));
  const words = (node) =>
    [node.name?.value ?? "", ...(node.childIds ?? []).map((id) => words(byId.get(id) ?? {}))]
      .join(" ")
      .trim();
  return nodes
    .filter(({ ignored }) => !ignored)
    .map((node) => ({
      role: node.role?.value,
      name: node.name?.value ?? "",
      words: words(node),
      ...Object.fromEntries((node.properties ?? []).map(({ name, value }) => [name, value.value])),
    }));
}

const controls = [
  "button",
  "textbox",
  "radio",
  "checkbox",
  "combobox",
  "slider",
  "link",
  "DisclosureTriangle",
  "img",
  "image",
];

test("everything to press, to type into or to look at has a name on every screen, and headings leave no level out", async () => {
  const { page, close } = await openPage(browser, screens.phone, { served: true });
  const faults = {};
  await walkEveryScreen(page, async (screen) => {
    const tree = await accessibilityTree(page);
    const unnamed = tree.filter(({ role, name }) => controls.includes(role) && name.trim() === "");
    const levels = tree.filter(({ role }) => role === "heading").map(({ level }) => level);
    const jumps = levels.filter((level, place) => level > (levels[place - 1] ?? 0) + 1);
    const landmarks = tree
      .filter(({ role }) => role === "main" || role === "navigation")
      .map(({ role }) => role);
    const found = [
      ...unnamed.map(({ role }) => `${role} without a name`),
      ...jumps.map((level) => `a heading of level ${level} below none of level ${level - 1}`),
      ...["main", "navigation"].filter((role) => !landmarks.includes(role)).map((role) => `no ${role}`),
    ];
    if (found.length > 0) faults[screen] = found;
  });
  assert.deepEqual(faults, {});
  await close();
});

test("verdicts that change are said aloud, politely, once they are settled", async () => {
  const { page, close } = await openPage(browser, screens.laptop, { now });
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  const spoken = async () =>
    (await accessibilityTree(page)).filter(({ role, words }) => role === "status" && /fit/.test(words));
  const counts = async () => {
    const answer = await spoken();
    return answer.length === 1 ? answer[0] : null;
  };
  await page
    .getByRole("status")
    .filter({ hasText: /Bikes: \d+ fit/ })
    .waitFor();
  const before = await counts();
  assert.equal(before.live, "polite");
  assert.match(before.words, /Bikes: \d+ fit/);
  await page.getByRole("radio", { name: "Rides well" }).check();
  await page.getByText("54.6 to 59.7 cm", { exact: true }).waitFor();
  await page
    .getByRole("status")
    .filter({ hasText: /Bikes: \d+ fit/, hasNotText: before.words })
    .waitFor();
  await eventually(async () => assert.notEqual((await counts()).words, before.words));
  await close();
});

test("the saddle heights are said aloud once the leg is typed, before there is any bike", async () => {
  const { page, close } = await openPage(browser, screens.phone, { now });
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  const said = page.getByRole("status").filter({ hasText: "Saddle height to look for" });
  await said.filter({ hasText: "47 to 50.5 cm" }).waitFor();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("55");
  await said.filter({ hasNotText: "47 to 50.5 cm" }).waitFor();
  await close();
});

test("drawings say in words what they show: rack, one bike and the years ahead", async () => {
  const engine = await openBuiltEngine();
  engine.ask({ do: "load" }, readFileSync(sample("loan-shed.json")));
  const rider = {
    population: "gb",
    stage: "starting",
    born: "2021-09",
    readings: [{ on: today, inseam: "49.5", unit: "cm", shoes: true }],
  };
  const { rider: judged, bikes } = engine.ask({ do: "assess", today, rider });
  const bike = bikes.find(({ verdict }) => verdict === "fits_now");
  const cm = (mm) => (Math.round(mm / 5) / 2).toString();
  const month = (on) =>
    new Date(on).toLocaleDateString("en-GB", { month: "long", year: "numeric", timeZone: "UTC" });

  const { page, close } = await openPage(browser, screens.phone, { now });
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await page.getByText("Age, height and weight").click();
  await page.getByRole("combobox", { name: "Month" }).first().selectOption("September");
  await page.getByRole("combobox", { name: "Year" }).first().selectOption("2021");
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  const row = page.getByRole("article").filter({ hasText: bike.name });
  await row.waitFor();

  const images = async () =>
    (await accessibilityTree(page))
      .filter(({ role }) => role === "img" || role === "image")
      .map(({ name }) => name.replaceAll("\u00a0", " "));
  const { low, high, target } = judged.window_mm;
  const strip = (await images()).find((name) => name.startsWith("Heights above the floor"));
  for (const mm of [low, high, target]) assert.ok(strip.includes(cm(mm)), `${cm(mm)} in: ${strip}`);
  const span = `Saddle ${cm(bike.span_mm.lowest)} cm to ${cm(bike.span_mm.highest)} cm`;
  assert.ok((await images()).includes(span), span);

  await row.getByRole("button", { name: bike.name, exact: true }).click();
  await page.getByRole("img", { name: /^Chart:/ }).waitFor();
  const side = (await images()).find((name) => name.startsWith("Side view"));
  for (const fact of [`saddle is at ${cm(bike.saddle_mm)} cm`, "inside leg is 49.5 cm", span])
    assert.ok(side.includes(fact), `${fact} in: ${side}`);
  const years = (await images()).find((name) => name.startsWith("Chart:"));
  for (const fact of [
    span,
    "The saddle height fits today.",
    `Too small from about ${month(bike.outgrown.p50)}`,
  ])
    assert.ok(years.includes(fact), `${fact} in: ${years}`);
  await close();
});
