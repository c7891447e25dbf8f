// A walk through every screen of the page, each in the states it can be in, for checks that are the same on all of them.

import { sample } from "./built-engine.mjs";
import { drawn } from "./eventually.mjs";
import { goTo, openList } from "./open-page.mjs";

/** What differs where the page was opened from a file. */
export async function walkFromFile(page, look) {
  await goTo(page, "Save");
  await page.getByText(/^You opened this page from a file/).waitFor();
  await look("save, opened from a file");
}

/** Calls `look` with the name of each screen once it is there. The page comes from a server, where it may save on the device. */
export async function walkEveryScreen(page, look) {
  const wide = await page.evaluate(() => {
    const frame = document.querySelector("#saddlerule").shadowRoot.querySelector(".frame");
    return frame.clientWidth >= 60 * parseFloat(getComputedStyle(frame).fontSize);
  });
  /** Where the rider is typed: on a wide page beside the rack. */
  const toRider = () => goTo(page, wide ? "Bikes" : "Your child");
  const windowStands = () => page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  const inseam = page.getByRole("textbox", { name: "Inside leg", exact: true });

  await look("first visit");
  await inseam.fill("forty");
  await page.getByText(/forty/).first().waitFor();
  await look("rider, a figure that cannot be read");
  await page.getByRole("radio", { name: "inches" }).first().check();
  await inseam.fill("19 1/2");
  await windowStands();
  for (const fold of ["Age, height and weight", "Earlier measurements"]) {
    await page.getByText(fold).first().click();
  }
  await page.getByRole("button", { name: "Add an earlier measurement" }).click();
  await look("rider, all unfolded");

  await goTo(page, "Bikes");
  await look("rack, empty");
  await openList(page, sample("every-mistake.json"));
  await page
    .getByText(/left out/)
    .first()
    .waitFor();
  await look("list with bikes set aside");
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("heading", { name: "Loan shed, autumn list" }).waitFor();
  await look("list");
  await page.getByRole("button", { name: "Who each bike fits" }).click();
  await page.locator(".suits-rows").first().waitFor();
  await look("who each bike fits");
  await page.getByRole("radio", { name: "Tags" }).check();
  await page.getByText("40 tags").waitFor();
  await look("tags for the bikes");
  await page.getByRole("radio", { name: "Wall strip" }).check();
  await page.getByRole("img", { name: /^Sheet 1 / }).waitFor();
  await look("strip for the wall");
  await goTo(page, "List");
  await page.getByRole("button", { name: "Add a bike" }).click();
  await look("entry of a list");
  await page.getByRole("button", { name: "Discard this bike" }).click();
  await page.getByRole("button", { name: "Measure bikes" }).click();
  await page.getByText("More measurements").click();
  await page.getByRole("textbox", { name: "Saddle at its lowest" }).fill("17.5");
  await page.getByRole("textbox", { name: "Saddle at its highest" }).fill("12");
  await page.getByText("As it is, this bike is left out").waitFor();
  await look("measuring bike after bike");
  await page.getByRole("button", { name: "Done measuring" }).click();
  await page.getByText(/^Added /).waitFor();
  await page.getByRole("button", { name: "Merge with another list" }).click();
  await page.getByRole("button", { name: /\(.* bikes?\)$/ }).click();
  await page.getByRole("button", { name: "Merge them" }).waitFor();
  await look("two lists before they are merged");
  await page.getByRole("button", { name: "Back to the list" }).click();
  await page.locator(".screen.current").getByRole("button", { name: "Save list", exact: true }).click();
  await page.getByRole("radio", { name: "Spreadsheet (CSV)" }).check();
  await look("saving a list");
  await page.getByRole("button", { name: "Back to the list" }).click();
  await page.getByRole("button", { name: "Close Loan shed, autumn list" }).click();
  await look("before a list is closed");
  await page.getByRole("button", { name: "Keep it open" }).click();
  await goTo(page, "Bikes");
  const first = page.getByRole("list", { name: "Bikes, best first" }).getByRole("article").first();
  await first.waitFor();
  await page.getByText("Filter and sort").click();
  await page.getByText("What if…").click();
  await page.getByText(/comes first\./).waitFor();
  await page.getByText("All at a glance").click();
  await page.getByRole("img", { name: /^Bikes: / }).waitFor();
  const detail = page.getByRole("checkbox", { name: "More detail" });
  await detail.check();
  await look("rack");
  await detail.uncheck();
  await first.getByRole("button").first().click();
  await page.getByRole("img", { name: /Side view/ }).waitFor();
  await page.getByRole("img", { name: /years/i }).waitFor();
  await look("one bike");

  await goTo(page, "Measure");
  await page.getByRole("textbox", { name: "Saddle at its lowest" }).fill("19");
  await look("tape one");

  await toRider();
  await page.getByRole("button", { name: "Add a child" }).click();
  await inseam.fill("20");
  await windowStands();
  await look("two riders");
  await goTo(page, "Bikes");
  // With large letters no more rows than these are near the screen.
  for (const place of [0, 1]) {
    await page
      .getByRole("checkbox", { name: /^Side by side/ })
      .nth(place)
      .check();
  }
  await look("ticked bikes");
  await page.getByRole("button", { name: "Side by side", exact: true }).click();
  await page.getByRole("columnheader").nth(1).waitFor();
  await look("side by side");
  await page.getByRole("columnheader").first().getByRole("button").first().click();
  await page.getByRole("button", { name: "Card for the fridge" }).click();
  await page.getByRole("article", { name: "Saddle card" }).waitFor();
  await page.getByRole("button", { name: "Copy as text" }).click();
  await look("card");

  await goTo(page, "Bikes");
  await page.getByRole("button", { name: "Years ahead: plan the next bikes" }).click();
  await page.locator(".screen.current.years:not(.asking) .years-plan").waitFor();
  await page.getByText("Change the plan").click();
  await page.getByText("Your own bikes").click();
  await look("years ahead");

  await goTo(page, "Save");
  await look("keep, off");
  await page.getByRole("checkbox", { name: "Save on this device" }).check();
  await page.getByText("Saved as you type.").waitFor();
  await page.getByRole("button", { name: "Delete everything" }).click();
  await look("keep, on, before a wipe");
  await page.evaluate(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("not here", "SecurityError");
    };
  });
  await toRider();
  await inseam.fill("21");
  await page
    .getByRole("alert")
    .getByText(/lets the page save nothing/)
    .waitFor();
  await look("nothing is kept");
}

/**
 * Shows the whole screen at once. What is under the bar at the foot of a phone can be scrolled out from under it, but rules
 * that look at one moment would call it covered.
 */
export async function unrolled(page, check) {
  const { width, height } = page.viewportSize();
  // More rows are drawn as there is more room, a few a frame.
  let settled = 0;
  for (let turn = 0; turn < 100 && settled < 3; ++turn) {
    const whole = await page.evaluate(() => document.documentElement.scrollHeight);
    settled = whole <= page.viewportSize().height ? settled + 1 : 0;
    if (settled === 0) await page.setViewportSize({ width, height: whole });
    await drawn(page);
  }
  const result = await check();
  await page.setViewportSize({ width, height });
  return result;
}
