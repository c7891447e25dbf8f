// Years ahead on a phone: the plan of bikes for two children as the engine answers it, what changes it, and what is said where
// there is little to plan with.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { openBuiltEngine, sample } from "../support/built-engine.mjs";
import { goTo, launchBrowser, openList, openPage, screens, shownText } from "../support/open-page.mjs";

const today = "2026-11-28";
const way = "Years ahead: plan the next bikes";

let browser;
let engine;
let names;
before(async () => {
  browser = await launchBrowser();
  engine = await openBuiltEngine();
  engine.ask({ do: "load" }, readFileSync(sample("loan-shed.json")));
  names = new Map(engine.ask({ do: "list" }).bikes.map(({ id, name }) => [id, name]));
});
after(() => browser.close());

const inseam = (page) => page.getByRole("textbox", { name: "Inside leg", exact: true });
const choice = (page, name) => page.getByRole("combobox", { name });
const drawing = (page) => page.getByRole("img", { name: /^Which bike each child rides/ });

/** Types a family, each child by the inside leg; nothing is typed of one without. */
async function openFamily(legs, viewport = screens.phone) {
  const opened = await openPage(browser, viewport, { now: `${today}T09:00:00` });
  for (const [place, leg] of legs.entries()) {
    if (place > 0) await opened.page.getByRole("button", { name: "Add a child" }).click();
    await inseam(opened.page).fill(leg);
  }
  return opened;
}

async function openPlan(legs, viewport) {
  const opened = await openFamily(legs, viewport);
  await openList(opened.page, sample("loan-shed.json"));
  await opened.page.getByRole("button", { name: way }).click();
  await planStands(opened.page);
  return opened;
}

/** The plan is the answer to what is asked now. */
async function planStands(page) {
  await page.locator(".screen.current.years:not(.asking) .years-plan").waitFor();
}

function asked(legs, more = {}) {
  const riders = legs.map((leg, place) => ({
    id: String(place + 1),
    rider: {
      stage: "starting",
      population: "gb",
      readings: [{ on: today, shoes: true, inseam: leg, unit: "cm" }],
    },
  }));
  const plan = engine.ask({ do: "years_ahead", today, horizon_months: 72, riders, limit_ms: 3000, ...more });
  assert.equal(plan.error, undefined, JSON.stringify(plan.error));
  return plan;
}

const monthText = (month) =>
  new Intl.DateTimeFormat("en-GB", { month: "long", year: "numeric", timeZone: "UTC" }).format(
    new Date(`${month}-01T00:00:00Z`),
  );

/** What is on screen is what the engine plans: who rides what from when, purchases, gaps, and what it costs. */
async function showsPlan(page, plan) {
  await planStands(page);
  const told = await page.locator(".years-plan .notes > li").allInnerTexts();
  const inMonth = (month) => told.find((text) => text.startsWith(monthText(month))) ?? "";
  for (const { id, stretches, gaps } of plan.riders) {
    for (const { from, bike, how, handed_from: giver } of stretches) {
      const line = {
        bought: `Child ${id} gets ${names.get(bike)}: buy it for €`,
        owned: `Child ${id} gets ${names.get(bike)}, which you have.`,
        handed_on: `Child ${id} takes over ${names.get(bike)} from Child ${giver}.`,
      }[how];
      assert.ok(inMonth(from).includes(line), `${line} in ${inMonth(from)}`);
    }
    for (const { from } of gaps) assert.match(inMonth(from), new RegExp(`Child ${id} has no bike that fits`));
  }
  const bars = plan.riders.flatMap(({ stretches }) => stretches).length;
  assert.equal(await page.locator(".years-bike").count(), bars);
  const handedOn = plan.riders.flatMap(({ stretches }) => stretches).filter(({ how }) => how === "handed_on");
  assert.equal(await page.locator("line.years-handed").count(), handedOn.length);
  const rows = await page.locator(".years tbody tr").count();
  assert.equal(rows, plan.purchases.length + plan.sales.length);
  const net = (await page.locator(".years tfoot td").innerText()).replace(/[^\d.]/g, "");
  assert.equal(Number(net), Math.abs(plan.cost.net));
}

test("two children on a phone: lanes, sentences and money are the engine's plan", async () => {
  const legs = ["49.5", "58"];
  const { page, faults, close } = await openPlan(legs);
  const plan = asked(legs);
  assert.ok(plan.riders.some(({ stretches }) => stretches.some(({ how }) => how === "handed_on")));
  await drawing(page).waitFor();
  await showsPlan(page, plan);
  const [next] = plan.purchases;
  const { lowest_at_most_mm: lowest, highest_at_least_mm: highest } = next.look_for;
  const text = (await shownText(page)).replaceAll("\u00a0", " ");
  assert.ok(text.includes(`Instead of ${names.get(next.bike)} (about €${next.price})`));
  assert.ok(text.includes(`Lowest at most ${lowest / 10} cm, highest at least ${highest / 10} cm`));
  const share = new Intl.NumberFormat("en-GB", { style: "percent" }).format(plan.doubt.by_year.at(-1).share);
  assert.ok(text.includes(`In ${share} of families like yours, the plan holds to the end.`));
  assert.match(text, /No plan with these bikes and limits is better/);
  assert.match(text, /Measure again by May 2027/);
  assert.deepEqual(faults, []);
  await close();
});

test("years, money, bikes at a time and a first month change the plan", async () => {
  const legs = ["49.5", "58"];
  const { page, faults, close } = await openPlan(legs);
  await page.getByText("Change the plan").click();
  await choice(page, "Years ahead").selectOption("3");
  await showsPlan(page, asked(legs, { horizon_months: 36 }));
  await page.getByRole("textbox", { name: "Most money in a year" }).fill("100");
  await showsPlan(page, asked(legs, { horizon_months: 36, max_per_year: 100 }));
  await page.getByRole("textbox", { name: "Most money in a year" }).fill("");
  await choice(page, "Most bikes at a time").selectOption("1");
  const one = asked(legs, { horizon_months: 36, max_bikes: 1 });
  assert.ok(one.gap_months > 0);
  await showsPlan(page, one);
  await page.getByText("Striped: the saddle does not fit in these months.").waitFor();
  await choice(page, "Most bikes at a time").selectOption({ index: 0 });
  await choice(page, "Month").last().selectOption("March");
  await choice(page, "Year").last().selectOption("2027");
  await showsPlan(page, asked(legs, { horizon_months: 36, buy_from: "2027-03" }));
  assert.deepEqual(faults, []);
  await close();
});

test("bikes that the family has, never sells, or does not want; a price where the list has none", async () => {
  const legs = ["49.5", "58"];
  const { page, faults, close } = await openPlan(legs);
  await page.getByText("Your own bikes").click();
  const find = async (id) => {
    await page.getByRole("textbox", { name: "Find a bike" }).fill(names.get(id).split(",")[0]);
    await choice(page, names.get(id)).waitFor();
  };
  await find("L04");
  await choice(page, names.get("L04")).selectOption("You have it");
  await showsPlan(page, asked(legs, { owned: ["L04"] }));
  await choice(page, names.get("L04")).selectOption("Never sell it");
  await showsPlan(page, asked(legs, { owned: ["L04"], keep: ["L04"] }));
  const { bike } = asked(legs, { owned: ["L04"], keep: ["L04"] }).purchases[0];
  await choice(page, names.get(bike)).selectOption("Leave it out");
  const marks = { owned: ["L04"], keep: ["L04"], not: [bike] };
  await showsPlan(page, asked(legs, marks));
  await find("L09");
  await page.getByRole("textbox", { name: `Price: ${names.get("L09")}` }).fill("5");
  const cheap = asked(legs, { ...marks, prices: { L09: 5 } });
  assert.ok(cheap.purchases.some((one) => one.bike === "L09"));
  await showsPlan(page, cheap);

  // All of it is in the family's file, and comes back from there.
  await goTo(page, "Save");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save everything to a file" }).click(),
  ]);
  const file = await download.path();
  const again = await openPage(browser, screens.phone, { now: `${today}T09:00:00`, stage: null });
  await goTo(again.page, "Save");
  const [chooser] = await Promise.all([
    again.page.waitForEvent("filechooser"),
    again.page.getByRole("button", { name: "Open a saved file" }).click(),
  ]);
  await chooser.setFiles({
    name: "family.json",
    mimeType: "application/json",
    buffer: readFileSync(file),
  });
  await again.page.getByText(/is open\. It replaced/).waitFor();
  await goTo(again.page, "Bikes");
  await again.page.getByRole("button", { name: way }).click();
  await showsPlan(again.page, cheap);
  assert.deepEqual([...faults, ...again.faults], []);
  await again.close();
  await close();
});

test("a child of whom nothing is known is left out and named; one without a measurement is an estimate", async () => {
  const { page, faults, close } = await openPlan(["49.5", ""]);
  await page.getByText("Not in the plan yet: Child 2.").waitFor();
  await showsPlan(page, asked(["49.5"]));
  await page.getByRole("button", { name: "Back to the bikes" }).click();
  await goTo(page, "Your child");
  await page.getByRole("radio", { name: "Child 2" }).check();
  await page.getByText("Age, height and weight").click();
  await page.getByRole("textbox", { name: "Height" }).fill("120");
  await goTo(page, "Bikes");
  await page.getByRole("button", { name: way }).click();
  await planStands(page);
  await page.getByText(/Child 2: An estimate only/).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("without a child to plan for there is the way to one", async () => {
  const { page, faults, close } = await openFamily([""]);
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("button", { name: way }).click();
  await page.getByText("Not in the plan yet: Child 1.").waitFor();
  await page.locator(".screen.years").getByRole("button", { name: "Enter the inside leg" }).click();
  await inseam(page).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("without a list, and with no bike that fits, what to look for", async () => {
  const { page, faults, close } = await openFamily(["49.5"]);
  await goTo(page, "Measure");
  await page.getByRole("textbox", { name: "Saddle at its lowest" }).fill("70");
  await page.getByRole("textbox", { name: "Saddle at its highest" }).fill("85");
  await page.getByRole("button", { name: "Add it to the bikes" }).click();
  await goTo(page, "Bikes");
  await page.getByRole("button", { name: way }).click();
  await planStands(page);
  await page.getByText("Child 1 has no bike that fits.").waitFor();
  await page.getByText(/^Child 1: needed by November 2026/).waitFor();
  assert.equal(await page.locator(".years table").count(), 0, "nothing is bought");
  assert.deepEqual(faults, []);
  await close();
});

test("a figure that cannot be read is said with the child's name", async () => {
  const { page, faults, close } = await openFamily(["49.5", "fifty"]);
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("button", { name: way }).click();
  await page
    .getByRole("alert")
    .getByText(/Child 2: .*fifty/)
    .waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("it is one sheet of paper, and fits 320 pixels", async () => {
  const { page, faults, close } = await openPlan(["49.5", "58"], { width: 320, height: 700 });
  assert.ok((await page.evaluate(() => document.documentElement.scrollWidth)) <= 320);
  const paper = (await page.pdf({ format: "A4" })).toString("latin1");
  assert.equal(paper.match(/\/Type \/Page\b/g).length, 1);
  assert.deepEqual(faults, []);
  await close();
});

test("three made-up children show what a plan is, and go again without a trace", async () => {
  const { page, faults, close } = await openPage(browser, screens.phone, { now: `${today}T09:00:00` });
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("button", { name: way }).click();
  await page.getByRole("button", { name: "Try it with three made-up children" }).click();
  await planStands(page);
  const text = await shownText(page);
  for (const number of [1, 2, 3]) assert.match(text, new RegExp(`Made-up child ${number} gets`));
  assert.ok((await page.locator("line.years-handed").count()) > 0, "a bike goes from one child to another");
  await page.getByRole("button", { name: "Take the made-up children out" }).click();
  await page.locator(".years-plan").waitFor({ state: "detached" });
  await page.getByText("Not in the plan yet: Child 1.").waitFor();
  await goTo(page, "Your child");
  assert.equal(await inseam(page).inputValue(), "");
  assert.deepEqual(faults, []);
  await close();
});

test("a made-up child who was given a name is a child of the family's own, and stays", async () => {
  const { page, faults, close } = await openPage(browser, screens.phone, { now: `${today}T09:00:00` });
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("button", { name: way }).click();
  await page.getByRole("button", { name: "Try it with three made-up children" }).click();
  await planStands(page);
  await goTo(page, "Your child");
  await page.getByRole("textbox", { name: "Name" }).fill("Pia");
  await goTo(page, "Bikes");
  await page.getByRole("button", { name: way }).click();
  await page.getByRole("button", { name: "Take the made-up children out" }).click();
  await page.getByText(/^Pia gets/).waitFor();
  await page
    .getByText(/Made-up child/)
    .first()
    .waitFor({ state: "detached" });
  assert.equal(await page.getByRole("button", { name: "Take the made-up children out" }).count(), 0);
  assert.deepEqual(faults, []);
  await close();
});

test("a bike that the family has is marked where it is listed", async () => {
  const { page, faults, close } = await openPlan(["49.5"]);
  await page.getByText("Your own bikes").click();
  const loan = page.getByRole("combobox", { name: names.get("L31") });
  await page.getByRole("textbox", { name: "Find" }).fill("Loan 31");
  await loan.selectOption("You have it");
  await planStands(page);
  await page.getByRole("button", { name: "Back to the bikes" }).click();
  const row = page.getByRole("article").filter({ has: page.getByRole("button", { name: names.get("L31") }) });
  await row.getByText("You have it").waitFor();
  assert.equal(await page.getByRole("article").getByText("You have it").count(), 1);
  assert.deepEqual(faults, []);
  await close();
});
