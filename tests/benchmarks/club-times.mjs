// A club's screens on a phone four times as slow: a latecomer among 200 children, the chart of 1,000 bikes, a sheet of 100 tags.

import { sample } from "../support/built-engine.mjs";
import { openList, screens } from "../support/open-page.mjs";
import { openSlowly } from "../support/slow-device.mjs";
import { untilDrawn } from "./until-drawn.mjs";

/** From Enter on the 201st child's inside leg to the list that counts the child. */
export async function latecomerTime(browser) {
  const { page, close } = await openSlowly(browser, screens.phone);
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("button", { name: "Club day: a bike for each child" }).click();
  await page.getByText("Paste or open a table").click();
  const children = Array.from(
    { length: 200 },
    (_, place) => `Child ${place + 1}\t${40 + ((place * 7) % 43)}\tnew`,
  );
  await page
    .getByRole("textbox", { name: "Table" })
    .fill(`Name\tInside leg (cm)\tRides\n${children.join("\n")}\n`);
  await page.getByRole("button", { name: "Read the table" }).click();
  await page.getByText(/of 200 have a bike/).waitFor();
  await page.getByRole("textbox", { name: /Inside leg/ }).fill("49.5");
  const time = await untilDrawn(
    page,
    (root) => root.querySelector(".club-draft").requestSubmit(),
    (root) => /of 201 have/.test(root.querySelector(".club-count").textContent),
  );
  await close();
  return time;
}

/** From the press on the list's screen to the chart with its rows; and from the press on the tags to all their sheets. */
export async function turnedRoundTimes(browser, { thousand, hundred }) {
  const toChart = (root) =>
    [...root.querySelectorAll(".screen.current button")]
      .find((button) => button.textContent.includes("Who each bike fits"))
      .click();
  const times = {};
  for (const [name, list] of Object.entries({ thousand, hundred })) {
    const { page, close } = await openSlowly(browser, screens.phone);
    await openList(page, list);
    await page.getByRole("button", { name: "Who each bike fits" }).waitFor();
    times[name] = await untilDrawn(page, toChart, (root) => root.querySelector(".suits-rows > li") !== null);
    if (name === "hundred") {
      times.tags = await untilDrawn(
        page,
        (root) => root.querySelectorAll("[name=suits-view]")[1].click(),
        (root) => root.querySelectorAll(".tag-sheet .bike-tag").length === 100,
      );
    }
    await close();
  }
  return times;
}
