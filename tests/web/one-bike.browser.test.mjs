// One bike: the years ahead with their facts in words, the leg on the pedal, checks beyond the saddle, and all of it on paper.

import assert from "node:assert/strict";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test, { after, before } from "node:test";
import ICAL from "ical.js";
import { openBuiltEngine } from "../support/built-engine.mjs";
import { launchBrowser, openList, openPage, screens, shownText } from "../support/open-page.mjs";

const today = "2026-11-25";
const list = JSON.stringify({
  format: "saddlerule-catalogue",
  version: 1,
  title: "One measured bike",
  units: "cm",
  currency: "EUR",
  bikes: [
    {
      id: "W1",
      name: "Shed 01, 16 in, far levers",
      wheel: "47-305",
      saddle_lowest: 49,
      saddle_highest: 64,
      standover: 42,
      bottom_bracket_height: 22,
      seat_tube_angle_deg: 71,
      crank: 11,
      mass_kg: 5.1,
      lever_reach: 8.2,
      brakes: ["front hand", "rear hand"],
      price: 110,
    },
  ],
});

const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
const file = join(folder, "one.json");
writeFileSync(file, list);

let browser;
before(async () => (browser = await launchBrowser()));
after(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

async function openBike(viewport = screens.phone, tellMore = async () => {}) {
  const opened = await openPage(browser, viewport, { now: `${today}T10:00:00` });
  const { page } = opened;
  await page.getByRole("radio", { name: "centimetres" }).check();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await tellMore(page);
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  await openList(page, file);
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  await page.getByRole("button", { name: "Shed 01, 16 in, far levers" }).click();
  await page.getByRole("img", { name: /Side view/ }).waitFor();
  await page.getByRole("heading", { name: "Other checks" }).waitFor();
  return opened;
}

/** What the engine itself says of this bike and rider. */
async function expected() {
  const engine = await openBuiltEngine();
  engine.ask({ do: "load" }, readFileSync(file));
  const rider = {
    population: "gb",
    stage: "starting",
    readings: [{ on: today, inseam: "49.5", unit: "cm", shoes: true }],
  };
  const [bike] = engine.ask({ do: "assess", today, rider, detail: "full" }).bikes;
  return {
    bike,
    view: engine.ask({ do: "side_view", today, rider, bike: "W1" }),
    forecast: engine.ask({ do: "forecast", today, rider, months: 60, bike: "W1" }),
  };
}

const plain = (text) => text.replaceAll("\u00a0", " ");
const monthOf = (day) =>
  new Intl.DateTimeFormat("en-GB", { month: "long", year: "numeric", timeZone: "UTC" }).format(new Date(day));

test("on a phone the verdict, the setting and how long it fits are on the first screen, and so are the ways on", async () => {
  const { page, faults, close } = await openBike();
  const { bike } = await expected();
  const navigation = await page.getByRole("navigation").boundingBox();
  const screen = page.locator(".screen.current");
  for (const shown of [
    screen.getByText("Saddle height fits", { exact: true }),
    screen.getByText(`${bike.saddle_mm / 10} cm`, { exact: true }).first(),
    screen.getByText("saddle above the floor", { exact: true }),
    screen.getByText(/^Fits for about/),
    screen.getByRole("button", { name: "Card for the fridge" }),
    screen.getByRole("button", { name: "Tick for side by side" }),
    screen.getByRole("button", { name: "Copy as text" }),
  ]) {
    const { y, height } = await shown.boundingBox();
    assert.ok(y >= 0 && y + height <= navigation.y, `${await shown.innerText()} ends at ${y + height}`);
  }
  assert.deepEqual(faults, []);
  await close();
});

test("a key or a finger moves through the months: what to set then, and the chance that the bike fits", async () => {
  const { page, faults, close } = await openBike();
  const { forecast } = await expected();
  const months = [forecast.today, ...forecast.months];
  const says = (place) => {
    const { on, fits_probability: chance } = months[place];
    const { low, high } = forecast.windows.filter((window) => window.on === on).at(-1);
    const cm = (mm) => Math.round(mm) / 10;
    const month = place === 0 ? "Today" : `In ${monthOf(on)}`;
    return `${month}: saddle at ${cm(low.p50)} to ${cm(high.p50)} cm. Chance that this bike fits: ${Math.round(chance * 100)}%.`;
  };
  const slider = page.getByRole("slider", { name: "Look at a month" });
  const told = async () => plain(await slider.getAttribute("aria-valuetext"));
  assert.equal(await told(), says(0));
  await slider.focus();
  for (let month = 1; month <= 30; ++month) {
    await page.keyboard.press("ArrowRight");
    assert.equal(await told(), says(month));
  }
  assert.ok(await page.getByText(says(30)).isVisible(), "the sentence is on the screen");

  // A finger at a third of the picture: the month there, which is neither today nor the one before.
  const picture = page.locator(".growth-picture");
  await picture.scrollIntoViewIfNeeded();
  const { x, y, width, height } = await picture.boundingBox();
  await page.mouse.move(x + width / 3, y + height / 2);
  await page.mouse.down();
  const touched = Number(await slider.inputValue());
  assert.ok(touched > 0 && touched < 30, `month ${touched}`);
  const lineAt = await page.locator(".growth-looked").evaluate((line) => line.getBoundingClientRect().x);
  assert.ok(
    Math.abs(lineAt - (x + width / 3)) < 8,
    `the line is at ${lineAt}, the finger at ${x + width / 3}`,
  );
  await page.mouse.move(x + (width * 2) / 3, y + height / 2);
  assert.ok(Number(await slider.inputValue()) > touched, "it follows the finger");
  await page.mouse.up();
  await page.mouse.move(x + width / 2, y + height / 2);
  assert.ok(Number(await slider.inputValue()) > touched, "and stays when it is lifted");
  assert.deepEqual(faults, []);
  await close();
});

test("the steps of the saddle go into any calendar: a day each, with the height and what has to be true first", async () => {
  // Marks that RFC 5545 escapes, letters of several bytes, and a line longer than its 75 octets.
  const name = "Füchsli; rot, 16″ \\ mit Klingel und einem sehr langen Namen, damit die Zeile umbricht";
  const odd = JSON.parse(list);
  odd.bikes[0].name = name;
  const oddFile = join(folder, "odd.json");
  writeFileSync(oddFile, JSON.stringify(odd));
  const { page, faults, close } = await openPage(browser, screens.phone, { now: `${today}T10:00:00` });
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5 cm");
  await openList(page, oddFile);
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  await page.getByRole("button", { name }).click();
  await page.getByRole("button", { name: "Card for the fridge" }).click();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the dates for a calendar" }).click(),
  ]);
  assert.equal(download.suggestedFilename(), "saddle-dates.ics");
  const text = readFileSync(await download.path(), "utf8");
  for (const line of text.split("\r\n")) assert.ok(Buffer.byteLength(line) <= 75, line);
  assert.ok(!/[^\r]\n/.test(text), "every line ends as the standard has it");

  const calendar = new ICAL.Component(ICAL.parse(text));
  const { bike } = await expected();
  const events = calendar.getAllSubcomponents("vevent").map((event) => new ICAL.Event(event));
  assert.deepEqual(
    events.map(({ startDate, summary }) => ({ on: startDate.toString(), summary })),
    bike.raise.map(({ on, saddle_mm: height }) => ({
      on,
      summary: `Measure again, then saddle of ${name} to about ${Math.round(height) / 10} cm`,
    })),
  );
  const condition = "Once your child starts, brakes and stops without help";
  const first = bike.raise.findIndex(({ stage }) => stage === "riding");
  assert.ok(first > 0);
  for (const [place, { description }] of events.entries())
    assert.equal(description, place < first ? null : condition);
  assert.equal(new Set(events.map(({ uid }) => uid)).size, events.length);
  assert.deepEqual(faults, []);
  await close();
});

test("the growth picture's end, its range and the steps of the saddle are told as text", async () => {
  const { page, faults, close } = await openBike();
  const { bike } = await expected();
  await page.getByRole("img", { name: /saddle height your child needs over the coming years/ }).waitFor();
  const shown = plain(await shownText(page));
  const { p10, p50, p90 } = bike.outgrown;
  assert.ok(
    shown.includes(
      `Too small from about ${monthOf(p50)} (${monthOf(p10)} to ${monthOf(p90)} for 8 in 10 children)`,
    ),
  );
  assert.ok(bike.raise.length >= 2, "the saddle is to be raised more than once");
  const steps = await page.locator(".raises li").allTextContents();
  const [first] = bike.raise;
  assert.equal(first.stage, undefined);
  assert.equal(plain(steps[0]), `About ${monthOf(first.on)}: ${first.saddle_mm / 10} cm`);
  // Where the child has to ride better first, that is said over the step.
  const later = bike.raise.find(({ stage }) => stage === "riding");
  assert.ok(later !== undefined, "there is a step for a child who rides well");
  const once = page.locator(".once", { hasText: "Once your child starts, brakes and stops without help" });
  assert.match(plain(await once.first().textContent()), new RegExp(`perhaps about ${monthOf(later.on)}`));
  assert.ok(steps.map(plain).includes(`Then: ${Math.round(later.saddle_mm / 5) / 2} cm`));
  assert.deepEqual(faults, []);
  await close();
});

test("the crank turns under the arrow keys, and the knee is told with it", async () => {
  const { page, faults, close } = await openBike();
  const { view } = await expected();
  const knee = (crank) =>
    Math.round(view.leg.poses.find((pose) => pose.crank_deg === crank).knee_flexion_deg);
  await page.getByRole("radio", { name: "On the pedal" }).check();
  await page.getByText(`Knee bent by ${knee(180)}° here.`).waitFor();
  const pedal = page.locator("path.pedal");
  const lowest = await pedal.getAttribute("d");
  const slider = page.getByRole("slider", { name: "Turn the crank" });
  for (let step = 0; step < 18; ++step) await slider.press("ArrowLeft");
  await page.getByText(`Knee bent by ${knee(90)}° here.`).waitFor();
  assert.equal(
    await slider.getAttribute("aria-valuetext"),
    `Crank 90° from the top, knee bent by ${knee(90)}°`,
  );
  assert.notEqual(await pedal.getAttribute("d"), lowest);
  const { least_flexion_deg: least, greatest_flexion_deg: greatest } = view.leg;
  await page
    .getByText(`Over a whole turn: from ${Math.round(least)}° to ${Math.round(greatest)}°.`)
    .waitFor();
  await page.getByText("Use this only as a guide").waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("what asks for a look is open in the reader's unit, what is fine is folded, what is missing is one line", async () => {
  const { page, close } = await openBike();
  const { bike } = await expected();
  const fine = bike.checks.filter(({ state }) => state === "ok");
  // 82 mm is more than the 75 mm that ISO 8098 allows for young children.
  const lever = page.getByRole("listitem").filter({ hasText: "The brake lever is" });
  await lever.waitFor();
  assert.match(plain(await lever.textContent()), /check this.*8\.2 cm from the grip.*7\.5 cm/);
  assert.ok(await page.getByText("Standing over the frame").isHidden());
  await page.getByText(`${fine.length} checks are fine`).click();
  await page.getByText("Standing over the frame, there is 7.5 cm to spare.").waitFor();
  const missing = page.locator("summary").filter({ hasText: "Not measured:" });
  assert.match(await missing.textContent(), /teeth on the front chainring/);
  await close();
});

test("a guessed weight of the rider is said to be one, and typing the real one takes the guess away", async () => {
  const { page, close } = await openBike();
  await page.getByText("You have not entered your child’s weight.").first().waitFor();
  await page.getByRole("button", { name: "Enter your child’s weight" }).click();
  const field = page.getByRole("textbox", { name: "Weight (kg)" });
  await field.waitFor();
  assert.ok(await field.evaluate((input) => input === input.getRootNode().activeElement));
  await field.fill("19.5");
  await page.getByRole("navigation").getByRole("button", { name: "Bikes", exact: true }).click();
  await page.getByRole("button", { name: "Shed 01, 16 in, far levers" }).click();
  await page.getByRole("heading", { name: "Other checks" }).waitFor();
  assert.equal(await page.getByText("You have not entered your child’s weight.").count(), 0);
  await page
    .locator("summary")
    .filter({ hasText: /checks? (is|are) fine/ })
    .click();
  // 5.1 kg of 19.5 kg.
  assert.match(plain(await shownText(page)), /5\.1.kg, 26%/);
  await close();
});

test("the cost a month comes with its range, and says what it counts on", async () => {
  const { page, close } = await openBike();
  const { bike } = await expected();
  const euros = (amount) => `€${amount.toFixed(2)}`;
  await page
    .getByText(`About ${euros(bike.cost_per_month)} a month.`)
    .filter({ visible: true })
    .first()
    .waitFor();
  const { low, high } = bike.cost_per_month_range;
  await page
    .getByText(`From ${euros(low)} if it fits for long, to ${euros(high)} if your child outgrows it early.`)
    .waitFor();
  await page.getByText("This assumes you get 50% of the price back").waitFor();
  await close();
});

test("on paper the picture, the setting and the cautions stay, and nothing to press", async () => {
  const { page, close } = await openBike();
  await page.emulateMedia({ media: "print" });
  for (const kept of [
    page.getByRole("img", { name: /Side view/ }),
    page.getByRole("img", { name: /saddle height your child needs/ }),
    page.getByText("A good fit does not make a bike safe.").filter({ visible: true }).first(),
    page
      .getByText(
        "Never pull the seat post up past its minimum-insertion mark (MIN or MAX). The mark must stay inside the frame.",
      )
      .filter({ visible: true })
      .first(),
    page.getByText("above the floor"),
  ]) {
    // What is below comes a part a frame.
    await kept.waitFor();
  }
  assert.ok(await page.getByRole("navigation").isHidden());
  assert.ok(await page.getByRole("button", { name: "Back to the bikes" }).isHidden());
  assert.ok(await page.getByRole("radio", { name: "On the pedal" }).isHidden());
  await close();
});

const amongOthers = "Your child’s legs among other children’s";

test("without the month of birth there is no chart of other children's legs", async () => {
  const { page } = await openBike();
  await page.getByRole("img", { name: /^Chart: the saddle height/ }).waitFor();
  assert.equal(await page.getByText(amongOthers).count(), 0);
  await page.close();
});

test("the child's readings are drawn among other children's legs, and said, once they are asked for", async () => {
  const { page } = await openBike(screens.phone, async (page) => {
    await page.getByText("Age, height and weight").first().click();
    await page.getByRole("combobox", { name: "Month" }).first().selectOption("3");
    await page.getByRole("combobox", { name: "Year" }).first().selectOption("2021");
    await page.getByRole("radio", { name: "Girl" }).check();
    await page.getByText("Earlier measurements").first().click();
    await page.getByRole("button", { name: "Add an earlier measurement" }).click();
    await page.locator("input[type=date]").fill("2026-04-20");
    await page.getByRole("textbox", { name: "Inside leg" }).last().fill("47.5");
  });
  const fold = page.getByText(amongOthers);
  await fold.waitFor();
  const chart = page.getByRole("img", { name: /^Chart: inside leg in shoes by age/ });
  assert.equal(await chart.count(), 0);
  await fold.click();
  await chart.waitFor();
  await page.getByText("Based on children in Great Britain.").waitFor();

  const engine = await openBuiltEngine();
  const readings = ["2026-04-20", today].map((on, place) => ({
    on,
    inseam: ["47.5", "49.5"][place],
    unit: "cm",
    shoes: true,
  }));
  const rider = { population: "gb", stage: "starting", sex: "girl", born: "2021-03", readings };
  const { centiles } = engine.ask({ do: "forecast", today, rider, months: 1, centiles: true });
  for (const { share_shorter: shorter } of centiles.readings)
    await page
      .getByText(`longer legs than ${Math.round(shorter * 100)}% of children of that age`)
      .first()
      .waitFor();

  // A reading is drawn where its share says, between the lines beside it.
  const drawn = await chart.evaluate((svg) => {
    const points = (path) =>
      [...path.getAttribute("d").matchAll(/([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [+x, +y]);
    return {
      lines: [...svg.querySelectorAll(".centile-line")].map(points),
      child: [...svg.querySelectorAll("circle")].map((one) => [
        +one.getAttribute("cx"),
        +one.getAttribute("cy"),
      ]),
    };
  });
  assert.equal(drawn.child.length, 2);
  const heightAt = (line, x) => {
    const after = line.findIndex(([along]) => along >= x);
    const [[x1, y1], [x2, y2]] = [line[after - 1], line[after]];
    return y1 + ((x - x1) / (x2 - x1)) * (y2 - y1);
  };
  drawn.child.forEach(([x, y], place) => {
    const above = drawn.lines.filter((line) => heightAt(line, x) > y).length;
    const { share_shorter: shorter } = centiles.readings[place];
    assert.equal(above, centiles.shares.filter((share) => share < shorter).length, `reading ${place + 1}`);
  });
  await page.close();
});
