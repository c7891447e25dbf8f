// What the page says of bikes, as it is on screen, and what the engine answers to the same question.

import { readFileSync } from "node:fs";
import { openBuiltEngine } from "./built-engine.mjs";
import { pageModule } from "./page-modules.mjs";

const { textsIn } = await pageModule("texts/texts.ts");
const { createFigures } = await pageModule("figures/format-figures.ts");
const { rangeWords, settingWords } = await pageModule("screens/rack/verdict-words.ts");

export const texts = textsIn("en", "en-GB");
export const figures = createFigures("en-GB", "cm", texts.units);

const plain = (text) => text.replaceAll(/\s+/g, " ").trim();

/**
 * Every verdict, setting, window and count on screen, each with whether it is marked as old or held out of sight. Of the bike that is open only its
 * screen is told: `bike` is null.
 */
export async function shownVerdicts(page) {
  const shown = await page.evaluate(() => {
    const { shadowRoot } = document.querySelector("#saddlerule");
    const found = [];
    const all = (place, selector) => [...place.querySelectorAll(selector)];
    const text = (place, selector) => place.querySelector(selector)?.textContent ?? null;
    const tell = (element, what, parts) => {
      if (!element.checkVisibility()) return;
      const isSeen = element.checkVisibility({ visibilityProperty: true });
      const isOld = element.closest(".stale .told") !== null;
      found.push({ what, mark: isSeen ? (isOld ? "old" : "fresh") : "hidden", ...parts });
    };
    for (const window of all(shadowRoot, ".screen.rider .window-figures strong"))
      tell(window, "window", { window: window.textContent });
    for (const count of all(shadowRoot, ".screen.rack .count-first"))
      tell(count, "count", { count: count.textContent });
    for (const row of all(shadowRoot, ".screen.rack .row")) {
      if (row.querySelector(".verdict") === null) continue;
      const bike = row.querySelector(".row-name").dataset.bike;
      tell(row, "row", { bike, verdict: text(row, ".verdict"), words: row.textContent });
    }
    for (const sheet of all(shadowRoot, ".screen.bike .verdict-sheet"))
      tell(sheet, "bike", { bike: null, verdict: text(sheet, ".verdict"), words: sheet.textContent });
    for (const card of all(shadowRoot, ".screen.card .fridge-card"))
      tell(card, "card", { bike: null, verdict: text(card, ".verdict"), words: card.textContent });
    for (const table of all(shadowRoot, ".screen.beside table")) {
      const names = all(table, "thead th .plain-link").map((button) => button.textContent);
      for (const group of all(table, "tbody")) {
        const fact = text(group, "th");
        const cells = all(group, "td").map((cell) => cell.textContent);
        tell(group, "beside", { fact, cells: names.map((name, place) => [name, cells[place]]) });
      }
    }
    for (const verdict of all(shadowRoot, ".screen.tape .verdict.large"))
      tell(verdict, "tape", { verdict: verdict.textContent });
    return found;
  });
  return JSON.parse(JSON.stringify(shown), (_, value) => (typeof value === "string" ? plain(value) : value));
}

/** `lists` are files by their title. */
export async function judge(lists) {
  const engines = {};
  for (const [title, file] of Object.entries(lists)) {
    engines[title] = await openBuiltEngine();
    engines[title].ask({ do: "load" }, readFileSync(file));
  }
  const known = new Map();
  const ask = (list, request) => {
    const key = JSON.stringify([list, request]);
    if (!known.has(key)) known.set(key, engines[list].ask(request));
    return known.get(key);
  };

  /** Why `shown` is no answer to `question`; null where it is one. */
  return function fault(shown, { list, bike, taped, ...question }) {
    const answer = ask(list, { do: "assess", ...question });
    if (answer.error !== undefined) return `${shown.what}, although the engine says: ${answer.error.code}`;
    const wrong = (is, expected) =>
      is === expected ? null : `${shown.what} says “${is}”, not “${expected}”`;
    const says = (words, expected) =>
      expected === null || words.includes(plain(expected))
        ? null
        : `${shown.what} ${shown.bike ?? bike} lacks “${plain(expected)}”: ${words}`;
    switch (shown.what) {
      case "window": {
        const { low, high } = answer.rider.window_mm;
        const window = { low: figures.bareLength(low), high: figures.length(high) };
        return wrong(shown.window, plain(texts.window.range(window)));
      }
      case "count":
        return wrong(shown.count, plain(texts.rack.counts.fits_now({ number: answer.counts.fits_now })));
      case "row":
      case "bike":
      case "card": {
        const judged = answer.bikes.find(({ id }) => id === (shown.bike ?? bike));
        if (judged === undefined) return `${shown.what}: ${shown.bike ?? bike} is not in the answer`;
        const setting = settingWords(texts, figures, judged)?.height ?? null;
        // One bike has its setting as a figure with what it is measured from.
        const inFigures = () =>
          judged.saddle_likely_mm === undefined
            ? texts.bike.aboveFloor + figures.length(judged.saddle_mm)
            : texts.guess.aboveFloor + rangeWords(texts, figures, judged.saddle_likely_mm);
        return (
          wrong(shown.verdict, texts.rack.verdicts[judged.verdict]) ??
          says(shown.words, setting !== null && shown.what === "bike" ? inFigures() : setting)
        );
      }
      case "beside":
        for (const [name, cell] of shown.cells) {
          const judged = answer.bikes.find((one) => one.name === name);
          if (judged === undefined) return `${name} is side by side, and not in the answer`;
          const fault =
            shown.fact === texts.beside.verdict
              ? says(cell, texts.rack.verdicts[judged.verdict])
              : shown.fact === texts.beside.setting
                ? says(cell, settingWords(texts, figures, judged)?.height ?? null)
                : null;
          if (fault !== null) return fault;
        }
        return null;
      case "tape": {
        const request = { ...question, wants: undefined, taped: [taped], detail: "brief" };
        const { bikes } = ask(list, { do: "assess", ...request });
        const judged = bikes.find(({ id }) => id === taped.id);
        return wrong(shown.verdict, texts.rack.verdicts[judged.verdict]);
      }
      default:
        return `unknown: ${shown.what}`;
    }
  };
}
