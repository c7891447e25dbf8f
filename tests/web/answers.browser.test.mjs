// Answers and their questions, with an engine that takes two seconds: nothing on screen is about another rider, another reading,
// another list or another day than the one that is on screen, unless it is drawn as old. Compared with the engine's own answers.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { holdAnswers, letPass, settle, slowBy } from "../support/held-answers.mjs";
import { goTo, launchBrowser, openList, openPage, screens } from "../support/open-page.mjs";
import { judge, shownVerdicts, texts } from "../support/shown-verdicts.mjs";

const delay = 2000;
const firstDay = "2026-11-25";
const files = { shed: sample("loan-shed.json"), swap: sample("swap-morning.json") };
const titleOf = (file) => JSON.parse(readFileSync(file, "utf8")).title;
const [shed, swap] = Object.values(files).map(titleOf);
const lists = { [shed]: files.shed, [swap]: files.swap };
const fault = await judge(lists);
const taped = {
  id: "taped-draft",
  name: "taped-draft",
  kind: "pedal",
  saddle_lowest: "45 cm",
  saddle_highest: "60 cm",
};

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

const inseam = (page) => page.getByRole("textbox", { name: texts.rider.inseam }).first();

/** What is asked on the page, as its reader would say it. */
class Family {
  day = firstDay;
  hand = 0;
  riders = ["49.5", "56"].map((text) => ({
    population: "gb",
    stage: "starting",
    readings: [{ on: firstDay, text }],
    price: "",
  }));
  bike = null;

  get rider() {
    return this.riders[this.hand];
  }

  type(text) {
    const today = this.rider.readings.find(({ on }) => on === this.day);
    if (today === undefined) this.rider.readings.push({ on: this.day, text });
    else today.text = text;
  }

  /** What is wished for of one list means nothing in another. */
  comesTo(list) {
    if (list === this.list) return;
    this.list = list;
    for (const rider of this.riders) rider.price = "";
  }

  question(list) {
    const { population, stage, readings, price } = this.rider;
    const typed = readings.filter(({ text }) => text !== "");
    const sent = typed.map(({ on, text }) => ({ on, inseam: text, unit: "cm", shoes: true }));
    return {
      list,
      today: this.day,
      rider: { population, stage, ...(sent.length > 0 && { readings: sent }) },
      wants: { order: "lasts", ...(price !== "" && { max_price: Number(price) }) },
      resale_share: 0.5,
      bike: this.bike,
      taped,
    };
  }
}

/** Two riders, 49.5 cm and 56 cm, the first one in hand; two lists, the loan shed in hand. */
async function openFamily(viewport) {
  const opened = await openPage(browser, viewport, {
    now: `${firstDay}T10:00:00`,
    prepare: (context) => context.addInitScript(holdAnswers),
  });
  const { page } = opened;
  await page.getByRole("radio", { name: texts.unitNames.cm }).check();
  await inseam(page).fill("49.5");
  await page.getByRole("button", { name: texts.family.add }).click();
  await inseam(page).fill("56");
  await goTo(page, texts.navigation.tape);
  await page.getByRole("textbox", { name: texts.tape.lowest }).fill("45");
  await page.getByRole("textbox", { name: texts.tape.highest }).fill("60");
  for (const file of [files.swap, files.shed]) {
    await openList(page, file);
    await page.waitForFunction((title) => window.held.list === title, titleOf(file));
    await settle(page);
  }
  await page.getByRole("radio", { name: texts.family.unnamed({ number: 1 }) }).check();
  await settle(page);
  return { ...opened, family: new Family() };
}

/** The verdicts on screen, each that is not marked compared with the engine's own. */
async function compared(page, family, done) {
  const list = await page.evaluate(() => window.held.list);
  family.comesTo(list);
  const shown = await shownVerdicts(page);
  for (const one of shown) {
    const wrong = one.mark !== "fresh" ? null : fault(one, family.question(list));
    assert.equal(wrong, null, `after ${done.slice(-12).join(", ")}: ${wrong}`);
  }
  return shown;
}

/** Another day comes to a page that somebody comes back to. */
async function dayComes(page, day) {
  await page.clock.setFixedTime(new Date(`${day}T10:00:00`));
  await page.evaluate(() => void dispatchEvent(new Event("focus")));
}

/** Presses, types or chooses in the page itself, at once: how things are pressed is other tests' business. */
function act(page, what, given = null) {
  return page.evaluate(
    ([what, given]) => {
      const { shadowRoot } = document.querySelector("#saddlerule");
      const current = shadowRoot.querySelector(".screen.current");
      const all = (selector, place = shadowRoot) =>
        [...place.querySelectorAll(selector)].filter((element) => element.checkVisibility());
      const type = (field, text) => {
        if (field === null || field === undefined) return false;
        field.value = text;
        field.dispatchEvent(new Event("input", { bubbles: true }));
        return true;
      };
      const press = (element) => {
        element?.click();
        return element != null;
      };
      switch (what) {
        case "tab":
          return press(shadowRoot.querySelector(`.navigation .to-${given}`));
        case "rider":
          return press(all(".rider-switch input")[given]);
        case "reading":
          return type(all(".inseam-figures input", shadowRoot)[0], given);
        case "stage":
          return press(all(`.screen.rider input[name="stage"]`)[given]);
        case "list":
          return press(
            all(".open-lists li > button:first-child").find((one) => one.textContent.includes(given)),
          );
        case "bike": {
          const names = all(".screen.rack .row-name");
          const name = names[given % Math.max(1, names.length)];
          return press(name) && name.dataset.bike;
        }
        case "tick": {
          const boxes = all(".screen.rack .row-pick input").filter(({ disabled }) => !disabled);
          return press(boxes[given % Math.max(1, boxes.length)]);
        }
        case "price":
          return type(shadowRoot.querySelector(".screen.rack #max-price"), given);
        case "card":
          return press(all(".buttons .button", current).find((one) => one.textContent === given));
        case "beside":
          return press(all(".pick-open")[0]);
        case "back":
          return press(all(".back", current)[0]);
        default:
          throw new Error(what);
      }
    },
    [what, given],
  );
}

/** The Lehmer generator of Park and Miller (1988), minimal standard. */
function randomFrom(seed) {
  let state = seed;
  return (below) => {
    state = (state * 48271) % 2147483647;
    return Math.floor((state / 2147483647) * below);
  };
}

const readings = ["49.5", "56", "47", "61", "52.5", "49", "58", "50.5", "", "x"];
const laterDay = (day, days) => {
  const date = new Date(`${day}T12:00:00Z`);
  date.setUTCDate(date.getUTCDate() + days);
  return date.toISOString().slice(0, 10);
};

for (const [name, viewport] of Object.entries(screens)) {
  test(`on a ${name}: 250 random actions with an engine that takes 2 s, and no figure is about something else`, async () => {
    const { page, faults, close, family } = await openFamily(viewport);
    await slowBy(page, delay);
    const random = randomFrom(name.length * 7919);
    const done = [];
    const seen = { fresh: 0, old: 0, hidden: 0 };
    const actions = {
      async reading() {
        const text = readings[random(readings.length)];
        if (await act(page, "reading", text)) family.type(text);
      },
      async rider() {
        const hand = random(2);
        if (await act(page, "rider", hand)) family.hand = hand;
      },
      async stage() {
        const stages = ["gliding", "side_wheels", "starting", "riding"];
        const place = [0, 2, 3][random(3)];
        if (await act(page, "stage", place)) family.rider.stage = stages[place];
      },
      async bike() {
        const bike = await act(page, "bike", random(100));
        if (bike) family.bike = bike;
      },
      async price() {
        const price = ["", "60", "90"][random(3)];
        if (await act(page, "price", price)) family.rider.price = price;
      },
      async list() {
        await act(page, "tab", "list");
        const other = (await page.evaluate(() => window.held.list)) === shed ? swap : shed;
        await act(page, "list", other);
        await act(page, "tab", "rack");
      },
      async day() {
        family.day = laterDay(family.day, 1 + random(9));
        await dayComes(page, family.day);
      },
      tab: () => act(page, "tab", ["rider", "rack", "rack", "rack", "tape"][random(5)]),
      tick: () => act(page, "tick", random(100)),
      card: () => act(page, "card", texts.card.open),
      beside: () => act(page, "beside"),
      back: () => act(page, "back"),
    };
    const chances = { reading: 6, rider: 5, bike: 5, tab: 6, card: 3, tick: 3, beside: 3, back: 3, stage: 2 };
    const wheel = Object.entries({ ...chances, price: 4, list: 1, day: 1 }).flatMap(([what, times]) =>
      Array(times).fill(what),
    );
    for (let turn = 0; turn < 250; ++turn) {
      const what = wheel[random(wheel.length)];
      done.push(what);
      await actions[what]();
      // Now and then an answer is waited for: a slow machine would hardly see one that is fresh.
      if (turn % 8 === 7) await settle(page);
      else await letPass(page, random(1200));
      for (const { mark } of await compared(page, family, done)) ++seen[mark];
    }
    await settle(page);
    await act(page, "tab", "rack");
    await settle(page);
    const last = await compared(page, family, done);
    assert.ok(
      last.every(({ mark }) => mark === "fresh"),
      "what is answered is not marked",
    );
    assert.ok(seen.fresh > 50 && seen.old + seen.hidden > 20, JSON.stringify(seen));
    assert.deepEqual(faults, []);
    await close();
  });
}

/** Comes to a screen, by way of the rack where that is needed. */
async function come(page, family, screen) {
  const open = async () => {
    await act(page, "tab", "rack");
    await page.locator(".screen.rack .row-name").first().waitFor({ state: "attached" });
    family.bike = await act(page, "bike", 0);
  };
  switch (screen) {
    case "bike":
      return open();
    case "card":
      await open();
      await act(page, "card", texts.card.open);
      return undefined;
    case "beside":
      await act(page, "tab", "rack");
      await page.locator(".screen.rack .row-name").nth(1).waitFor({ state: "attached" });
      for (const place of [0, 1]) if (!(await act(page, "beside"))) await act(page, "tick", place);
      await act(page, "beside");
      return undefined;
    default:
      return act(page, "tab", screen);
  }
}

const changes = {
  async rider(page, family) {
    family.hand = 1 - family.hand;
    await act(page, "rider", family.hand);
  },
  async reading(page, family) {
    const text = family.rider.readings.at(-1).text === "52.5" ? "60" : "52.5";
    await act(page, "tab", "rider");
    await act(page, "reading", text);
    family.type(text);
  },
  async list(page) {
    await act(page, "tab", "list");
    await act(page, "list", (await page.evaluate(() => window.held.list)) === shed ? swap : shed);
    await settle(page);
  },
  async day(page, family) {
    family.day = laterDay(family.day, 40);
    await dayComes(page, family.day);
  },
};

for (const [what, change] of Object.entries(changes)) {
  test(`another ${what} while the engine takes 2 s: every screen waits for its own answer`, async () => {
    const { page, faults, close, family } = await openFamily(screens.phone);
    for (const screen of ["rider", "rack", "bike", "card", "beside", "tape"]) {
      const done = [what, screen];
      await come(page, family, screen);
      await settle(page);
      await compared(page, family, done);
      await slowBy(page, delay);
      await change(page, family);
      await compared(page, family, [...done, "changed"]);
      await come(page, family, screen);
      await compared(page, family, [...done, "seen again"]);
      await letPass(page, delay - 1);
      await compared(page, family, [...done, "waited"]);
      await settle(page);
      const shown = await compared(page, family, [...done, "answered"]);
      assert.ok(shown.length > 0, `${done}: something is shown`);
      assert.deepEqual(
        shown.filter(({ mark }) => mark !== "fresh"),
        [],
      );
      await slowBy(page, 0);
    }
    assert.deepEqual(faults, []);
    await close();
  });
}

test("a card can be printed or sent only once it is about the rider in hand", async () => {
  const { page, close, family } = await openFamily(screens.phone);
  await come(page, family, "card");
  await settle(page);
  const print = page.getByRole("button", { name: texts.card.print, exact: true });
  await print.waitFor();
  await slowBy(page, delay);
  await act(page, "rider", 1);
  await print.waitFor({ state: "detached" });
  assert.equal(await page.locator(".fridge-card").count(), 0);
  await settle(page);
  await print.waitFor();
  await close();
});

test("an answer that does not come is said to be late, and what is grey meanwhile", async () => {
  const { page, close } = await openFamily(screens.phone);
  await goTo(page, texts.navigation.rider);
  const late = page.getByText(texts.overdue);
  await slowBy(page, delay);
  await act(page, "reading", "51");
  await late.waitFor();
  await settle(page);
  await late.waitFor({ state: "detached" });
  await close();
});

test("midnight passes with the page open: today is another day, and what was typed stays of its own", async () => {
  const { page, faults, close } = await openPage(browser, screens.phone, {
    prepare: (context) => context.clock.install({ time: new Date("2026-11-25T23:59:00") }),
  });
  await page.getByRole("radio", { name: texts.unitNames.cm }).check();
  await inseam(page).fill("49.5");
  await page.getByText("47 to 50.5 cm", { exact: true }).waitFor();
  await page.clock.fastForward("02:00");
  await page.waitForFunction(
    () =>
      document.querySelector("#saddlerule").shadowRoot.querySelector(".inseam-figures input").value === "",
  );
  await page.getByText(texts.rider.earlier).first().click();
  assert.equal(await page.getByLabel(texts.rider.readOn).inputValue(), "2026-11-25");
  await page.getByText("47 to 50.5 cm", { exact: true }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("a measurement that is kept nowhere makes the browser ask before the page is left", async () => {
  const { page, close } = await openPage(browser, screens.phone, {
    served: true,
    now: `${firstDay}T10:00:00`,
  });
  const asks = (whether) =>
    page.waitForFunction((whether) => {
      const event = new Event("beforeunload", { cancelable: true });
      dispatchEvent(event);
      return event.defaultPrevented === whether;
    }, whether);
  await asks(false);
  await inseam(page).fill("49.5");
  await asks(true);
  await inseam(page).fill("");
  await asks(false);
  await goTo(page, texts.navigation.tape);
  await page.getByRole("textbox", { name: texts.tape.lowest }).fill("45");
  await asks(true);

  await goTo(page, texts.navigation.keep);
  const onDevice = page.getByRole("checkbox", { name: texts.keep.deviceSwitch });
  await onDevice.check();
  await asks(false);
  await onDevice.uncheck();
  await asks(true);
  await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: texts.keep.save }).click(),
  ]);
  await asks(false);
  await goTo(page, texts.navigation.rider);
  await inseam(page).fill("50");
  await asks(true);
  // The browser's own way back goes through the screens first. Past the first of them it leaves the page, and asks as well.
  const asked = page.waitForEvent("dialog");
  const left = page.evaluate(() => history.go(1 - history.length)).catch(() => undefined);
  const dialog = await asked;
  assert.equal(dialog.type(), "beforeunload");
  await dialog.dismiss();
  await left;
  assert.equal(await inseam(page).inputValue(), "50");
  await close();
});
