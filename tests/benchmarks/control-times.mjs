// From a press to the next paint, for every control of the rider's and the rack's screens, with a long list open.

import { goTo, openList, screens } from "../support/open-page.mjs";
import { openSlowly } from "../support/slow-device.mjs";

/** Choosing a file and printing leave the page; a row's own buttons are alike on every row. */
const left = "[type=file], .print";

/** The controls of the screen that is shown, in their order, with their words; of each list only those of its first item. */
function controlsShown(root, passedOver) {
  const screen = root.querySelector(".screen.current");
  for (const details of screen.querySelectorAll("details:not([open])"))
    details.querySelector("summary").click();
  return [...screen.querySelectorAll("button, input, select, summary")].filter((control) => {
    const item = control.closest("[role=listitem]");
    const first = item === null || item.matches("[aria-posinset='1']");
    return first && !control.matches(passedOver) && !control.disabled && control.checkVisibility();
  });
}

const wordsOf = (control) =>
  [control.getAttribute("aria-label"), control.labels?.[0]?.textContent, control.textContent]
    .find((words) => words?.trim())
    ?.replace(/\s+/g, " ")
    .trim()
    .slice(0, 40) ?? control.type;

/** The page in front of these controls, unfolded, each time anew: pressing one may take others away. */
async function openScreen(browser, list, screen) {
  const opened = await openSlowly(browser, screens.phone);
  const { page } = opened;
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5 cm");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  await openList(page, list);
  await page.getByRole("button", { name: "See the bikes" }).first().waitFor();
  await goTo(page, screen);
  await page.waitForTimeout(1000);
  return opened;
}

async function pressed(page, control, kind) {
  if (kind === "text") {
    await control.focus();
    await page.keyboard.type("5");
  } else if (kind === "select") {
    await control.focus();
    await page.keyboard.press("ArrowDown");
  } else {
    await control.focus();
    await page.keyboard.press("Space");
  }
}

/** How a reader opens one bike: with a finger or a mouse on a row that is in sight, or with the key on the row that has the focus. */
const openings = {
  "pressing a bike at the head of the rack": async (page) => {
    await scrolled(page, 700);
    return pressRowInSight(page);
  },
  "pressing a bike far down the rack": async (page) => {
    await scrolled(page, 50000);
    return pressRowInSight(page);
  },
  "Enter on a bike that has the focus": async (page) => {
    await scrolled(page, 50000);
    await page.evaluate(`(${rowInSight})().focus()`);
    await page.waitForTimeout(500);
    return () => page.keyboard.press("Enter");
  },
};

async function scrolled(page, by) {
  await page.mouse.move(200, 400);
  await page.mouse.wheel(0, by);
  await page.waitForTimeout(1500);
}

/** In the page: the first row in the middle of the screen. */
function rowInSight() {
  const host = [...document.querySelectorAll("*")].find((element) => element.shadowRoot);
  return [...host.shadowRoot.querySelectorAll(".row-name")].find((row) => {
    const { top } = row.getBoundingClientRect();
    return top > 200 && top < 600;
  });
}

async function pressRowInSight(page) {
  const { left, top, height } = await page.evaluate(`(${rowInSight})().getBoundingClientRect().toJSON()`);
  await page.mouse.move(left + 40, top + height / 2);
  await page.waitForTimeout(500);
  return () => page.mouse.click(left + 40, top + height / 2);
}

/** From such a press to the paint that shows the bike, the median of several. */
export async function pressingTimes(browser, list, runs) {
  const times = [];
  for (const [control, prepared] of Object.entries(openings)) {
    const measured = [];
    for (let run = 0; run < runs; ++run) {
      const { page, noticed, close } = await openScreen(browser, list, "Bikes");
      const press = await prepared(page);
      await noticed();
      await press();
      await page.locator(".screen.bike.current").waitFor();
      await page.waitForTimeout(600);
      const { events } = await noticed();
      measured.push(Math.max(0, ...events.map(({ duration }) => duration)));
      await close();
    }
    times.push({ control, time: measured.sort((a, b) => a - b)[Math.floor(runs / 2)] });
  }
  return times;
}

/** The slowest of the presses of each kind of control on both screens, slowest first. */
export async function slowestControls(browser, list) {
  const times = [];
  for (const screen of ["Your child", "Bikes"]) {
    let opened = await openScreen(browser, list, screen);
    for (let place = 0; ; ++place) {
      const { page, noticed } = opened;
      const handle = await page.evaluateHandle(
        ([find, passedOver, number]) => {
          const host = [...document.querySelectorAll("*")].find((element) => element.shadowRoot);
          const controls = new Function(`return (${find})`)()(host.shadowRoot, passedOver);
          return controls[number] ?? null;
        },
        [controlsShown.toString(), left, place],
      );
      const control = handle.asElement();
      if (control === null) break;
      const { words, kind } = await control.evaluate(
        (element, describe) => ({
          words: new Function(`return (${describe})`)()(element),
          kind: element.matches("input:not([type]), input[type=text]")
            ? "text"
            : element.matches("select")
              ? "select"
              : "press",
        }),
        wordsOf.toString(),
      );
      await page.waitForTimeout(300);
      await noticed();
      await pressed(page, control, kind);
      await page.waitForTimeout(600);
      const { events } = await noticed();
      times.push({
        control: `“${words}” (${screen})`,
        time: Math.max(0, ...events.map(({ duration }) => duration)),
      });
      const moved = await page.evaluate((name) => {
        const host = [...document.querySelectorAll("*")].find((element) => element.shadowRoot);
        return !host.shadowRoot.querySelector(`.screen.current.${name}`);
      }, screen.toLowerCase());
      if (moved) {
        await opened.close();
        opened = await openScreen(browser, list, screen);
      }
    }
    await opened.close();
  }
  return times.sort((a, b) => b.time - a.time).slice(0, 12);
}
