// The filters of the rack: every chip says how many bikes it leaves before it is chosen, and what filters hide is counted.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { openBuiltEngine, sample } from "../support/built-engine.mjs";
import { eventually } from "../support/eventually.mjs";
import { goTo, launchBrowser, openList, openPage, screens } from "../support/open-page.mjs";

const today = "2026-11-25";
const list = sample("loan-shed.json");
const rider = { stage: "starting", readings: [{ on: today, inseam: "49.5", unit: "cm", shoes: true }] };

let browser;
let engine;
before(async () => {
  browser = await launchBrowser();
  engine = await openBuiltEngine();
  engine.ask({ do: "load" }, readFileSync(list));
});
after(() => browser.close());

/** How many bikes these wishes leave: by filtering, not by the engine's counts. */
const left = (wants) => engine.ask({ do: "assess", today, rider, wants, detail: "brief" }).bikes.length;
const all = () => left({});

async function openFilters(viewport = screens.phone, options = {}) {
  const opened = await openPage(browser, viewport, { now: `${today}T10:00:00`, ...options });
  const { page } = opened;
  await page.getByRole("radio", { name: "centimetres" }).check();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await openList(page, list);
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  await page.getByText("Filter and sort").click();
  await chip(page, "two hand brakes").waitFor();
  return opened;
}

/** Its name is followed by how many bikes it leaves. */
const chip = (page, name, role = "radio", group = null) =>
  (group === null ? page.locator(".wishes") : page.getByRole("group", { name: group })).getByRole(role, {
    name: new RegExp(`^${name} \\d+ bikes?$`),
  });

const saysOf = (chip, bikes) =>
  eventually(async () => {
    const label = chip.locator("..");
    assert.equal(await label.locator(".figure").textContent(), String(bikes));
    assert.equal(await label.locator(".aloud").textContent(), bikes === 1 ? "1 bike" : `${bikes} bikes`);
  });
const says = (page, name, bikes, role) => saysOf(chip(page, name, role), bikes);

const hiddenLine = (page) => page.getByRole("button", { name: /hidden by your filters/ });

test("every chip says what choosing it would leave, whatever else is chosen, and choosing it leaves that", async () => {
  const { page, faults, close } = await openFilters();
  const chips = [
    ["two hand brakes", { brakes: "two_hand" }],
    ["coaster brake \\(back-pedal\\)", { brakes: "coaster" }],
    ["single speed", { gears: "single" }],
    ["with gears", { gears: "several" }],
    ["with pedals", { kind: "pedal" }],
    ["balance bikes", { kind: "balance" }],
    ["16 inch", { wheel: 16 }],
    ["20 inch", { wheel: 20 }],
    ["green", { colour: "green" }],
    ["€50", { max_price: 50 }],
    ["€100", { max_price: 100 }],
    ["8 kg", { max_mass_kg: 8 }],
  ];
  for (const [name, wants] of chips) await says(page, name, left(wants));
  await says(page, "Only available bikes", left({ available_only: true }), "checkbox");

  await chip(page, "coaster brake \\(back-pedal\\)").check();
  await chip(page, "Only available bikes", "checkbox").check();
  const chosen = { brakes: "coaster", available_only: true };
  const number = left(chosen);
  assert.ok(number > 0 && number < all());
  await hiddenLine(page)
    .getByText(`${all() - number} bikes hidden by your filters`)
    .waitFor();
  for (const [name, wants] of chips) await says(page, name, left({ ...chosen, ...wants }));
  await saysOf(chip(page, "any", "radio", "Brakes"), left({ available_only: true }));
  await says(page, "Only available bikes", left(chosen), "checkbox");
  assert.deepEqual(faults, []);
  await close();
});

test("a chip that leaves nothing says 0 and looks weaker, can be chosen, and is unchosen by a second press", async () => {
  const { page, faults, close } = await openFilters();
  await chip(page, "balance bikes").check();
  const weak = chip(page, "with gears");
  await says(page, "with gears", 0);
  const style = (which) =>
    which.locator("..").evaluate((label) => {
      const { borderStyle, color } = getComputedStyle(label);
      return { borderStyle, color };
    });
  assert.deepEqual(await style(weak), { borderStyle: "dashed", color: "rgb(72, 84, 89)" });
  assert.deepEqual(await style(chip(page, "with pedals")), {
    borderStyle: "solid",
    color: "rgb(27, 35, 39)",
  });
  await weak.click();
  await hiddenLine(page).getByText(`${all()} bikes hidden by your filters`).waitFor();
  await says(page, "with gears", 0);
  assert.ok(await weak.isChecked());
  await weak.click();
  await hiddenLine(page)
    .getByText(`${all() - left({ kind: "balance" })} bikes hidden`)
    .waitFor();
  assert.ok(await chip(page, "any", "radio", "Gears").isChecked());
  assert.deepEqual(faults, []);
  await close();
});

test("one press on the line about hidden bikes shows them again, and one button takes all filters away", async () => {
  const { page, faults, close } = await openFilters();
  const clear = page.getByRole("button", { name: "Clear all filters" });
  await page.getByRole("combobox", { name: /Sort them by/ }).selectOption("weight");
  await chip(page, "16 inch").check();
  await hiddenLine(page).click();
  await hiddenLine(page).waitFor({ state: "detached" });
  assert.ok(await chip(page, "any", "radio", "Wheels").isChecked());

  await chip(page, "16 inch").check();
  await chip(page, "€100").check();
  await chip(page, "Only available bikes", "checkbox").check();
  await hiddenLine(page).waitFor();
  await clear.click();
  await hiddenLine(page).waitFor({ state: "detached" });
  for (const group of ["Wheels", "Price up to"])
    assert.ok(await chip(page, "any", "radio", group).isChecked(), group);
  assert.equal(await page.getByRole("textbox", { name: "Price up to" }).inputValue(), "");
  assert.equal(
    await page.getByRole("combobox", { name: /Sort them by/ }).inputValue(),
    "2",
    "the order stays",
  );
  assert.ok(
    await clear.evaluate((button) => button === button.getRootNode().activeElement),
    "the button keeps the focus",
  );
  assert.deepEqual(faults, []);
  await close();
});

test("a typed limit and a pressed one are the same, in kilograms and in pounds", async () => {
  const { page, faults, close } = await openFilters();
  const price = page.getByRole("textbox", { name: "Price up to" });
  await chip(page, "€100").check();
  await eventually(async () => assert.equal(await price.inputValue(), "100"));
  await price.fill("77");
  assert.ok(!(await chip(page, "€100").isChecked()));
  await price.fill("50");
  await eventually(async () => assert.ok(await chip(page, "€50").isChecked()));
  await page.getByRole("button", { name: "Clear all filters" }).click();

  await page.locator(".screen.rack").getByRole("radio", { name: "in", exact: true }).check();
  await chip(page, "20 lb").check();
  await eventually(async () =>
    assert.equal(await page.getByRole("textbox", { name: "Weight up to (lb)" }).inputValue(), "20"),
  );
  await says(page, "20 lb", left({ max_mass: "20 lb" }));
  await hiddenLine(page)
    .getByText(`${all() - left({ max_mass: "20 lb" })} bikes hidden`)
    .waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("by the keyboard: a group is one stop, arrows choose in it, and Space ticks", async () => {
  const { page, faults, close } = await openFilters();
  await chip(page, "any", "radio", "Brakes").focus();
  await page.keyboard.press("ArrowDown");
  await eventually(async () => assert.ok(await chip(page, "two hand brakes").isChecked()));
  await hiddenLine(page)
    .getByText(`${all() - left({ brakes: "two_hand" })} bikes hidden`)
    .waitFor();
  await page.keyboard.press("Space");
  assert.ok(await chip(page, "two hand brakes").isChecked(), "Space on what is chosen changes nothing");
  await page.keyboard.press("Tab");
  const focused = () =>
    page.evaluate(
      () => document.querySelector("#saddlerule").shadowRoot.activeElement.closest("label").textContent,
    );
  assert.match(await focused(), /^any/);
  await chip(page, "Only available bikes", "checkbox").focus();
  await page.keyboard.press("Space");
  await says(page, "Only available bikes", left({ brakes: "two_hand", available_only: true }), "checkbox");
  assert.deepEqual(faults, []);
  await close();
});

test("colours come the most frequent first, the others on request and counted", async () => {
  const { page, faults, close } = await openFilters();
  const group = page.getByRole("group", { name: "Colour" });
  const offered = engine.ask({ do: "assess", today, rider }).filter_counts.colour.colours;
  assert.equal(await group.getByRole("radio").count(), 11);
  await group.getByRole("button", { name: `${offered.length - 10} more` }).click();
  assert.equal(await group.getByRole("radio").count(), offered.length + 1);
  assert.equal(await group.getByRole("button").count(), 0);
  for (const { colour } of offered) await says(page, colour, left({ colour }));
  assert.deepEqual(faults, []);
  await close();
});

test("on paper the number of hidden bikes is said above the list", async () => {
  const { page, faults, close } = await openFilters();
  await chip(page, "16 inch").check();
  await hiddenLine(page).waitFor();
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  const hidden = all() - left({ wheel: 16 });
  await page.locator(".paper-only").getByText(`${hidden} bikes hidden by your filters.`).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

for (const [what, viewport, size] of [
  ["a phone", screens.phone, "100%"],
  ["a narrow phone with letters of twice the size", { width: 320, height: 700 }, "200%"],
]) {
  test(`chips are at least 44 px high, apart, and no wider than ${what}`, async () => {
    const { page, faults, close } = await openFilters(viewport);
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, size);
    for (const language of ["en", "de", "fr", "es", "nl"]) {
      await page.locator(".language-choice").evaluate((select, language) => {
        select.value = language;
        select.dispatchEvent(new Event("change", { bubbles: true }));
      }, language);
      await eventually(async () =>
        assert.equal(await page.locator(".language-choice").inputValue(), language),
      );
      const boxes = await page.locator(".wishes .chip").evaluateAll((labels) =>
        labels.map((label) => {
          const { left, right, top, bottom } = label.getBoundingClientRect();
          return { left, right, top, bottom, cut: label.scrollWidth > label.clientWidth };
        }),
      );
      assert.ok(boxes.length > 30, `${boxes.length} chips`);
      for (const [place, box] of boxes.entries()) {
        assert.ok(box.bottom - box.top >= 44 && box.right - box.left >= 44, JSON.stringify(box));
        assert.ok(box.left >= 0 && box.right <= viewport.width && !box.cut, JSON.stringify(box));
        for (const other of boxes.slice(place + 1)) {
          const apart =
            other.top >= box.bottom + 4 ||
            other.bottom <= box.top - 4 ||
            other.left >= box.right + 4 ||
            other.right <= box.left - 4;
          assert.ok(apart, JSON.stringify([box, other]));
        }
      }
    }
    assert.deepEqual(faults, []);
    await close();
  });
}

test("what is chosen is kept for each child, and after other screens", async () => {
  const { page, faults, close } = await openFilters();
  await chip(page, "16 inch").check();
  await hiddenLine(page).waitFor();
  await goTo(page, "List");
  await goTo(page, "Bikes");
  await hiddenLine(page).waitFor();
  await page.getByText("Filter and sort").click();
  assert.ok(await chip(page, "16 inch").isChecked());
  assert.deepEqual(faults, []);
  await close();
});
