// Every screen in every language: nothing wider than a small screen, nothing cut off, the language said to screen readers; and
// the main job in German and French.

import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { drawn } from "../support/eventually.mjs";
import { launchBrowser, openPage } from "../support/open-page.mjs";
import { walkEveryScreen, walkFromFile } from "../support/every-screen.mjs";
import { pageModule } from "../support/page-modules.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const { textsIn } = await pageModule("texts/texts.ts");
const { packedLanguages } = await pageModule("texts/translations.ts");
const packed = packedLanguages();

const locales = { en: "en-GB", de: "de-DE", fr: "fr-FR", es: "es-ES", nl: "nl-NL" };
const textsOf = (language) => textsIn(language, locales[language], packed[language]);
const plain = (text) => text.replaceAll(/[\u00a0\u202f]/g, " ");

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

const tabs = ["rider", "rack", "tape", "list", "keep"];
const goTo = (page, texts, tab) =>
  page.getByRole("navigation").getByRole("button", { name: texts.navigation[tab], exact: true }).click();

/** Unfolds all that is folded. */
async function unfold(page) {
  await page.locator("details").evaluateAll((folds) => folds.forEach((fold) => (fold.open = true)));
}

/** What is outside the screen, or has more words than it shows. Rows that scroll on purpose may be wider. */
function tooWide(page) {
  return page.evaluate(() => {
    const room = document.getElementById("saddlerule").shadowRoot;
    const screen = document.documentElement.clientWidth;
    const found = [];
    if (document.documentElement.scrollWidth > screen)
      found.push(`page: ${document.documentElement.scrollWidth}`);
    for (const element of room.querySelectorAll("*")) {
      if (!element.checkVisibility() || element.closest("svg, .aloud")) continue;
      const { width, right } = element.getBoundingClientRect();
      if (width <= 1) continue;
      const words = `${element.localName}.${element.className}: ${element.textContent.slice(0, 50)}`;
      const scrolls = element.parentElement?.closest(".scrolls, .rider-switch, .beside-table") ?? null;
      if (scrolls === null && right > screen + 1) found.push(`outside: ${words}`);
      const { overflowX, textOverflow } = getComputedStyle(element);
      const cut = overflowX === "hidden" || overflowX === "clip" || textOverflow === "ellipsis";
      if (cut && element.scrollWidth > element.clientWidth + 1 && element.closest(".head") === null)
        found.push(`cut off: ${words}`);
    }
    return found.slice(0, 5);
  });
}

/** As the list of languages does it, which a phone has on its first screen only. */
async function speak(page, language) {
  await page.locator("select.language-choice").evaluate((list, code) => {
    list.value = code;
    list.dispatchEvent(new Event("change", { bubbles: true }));
  }, language);
  await page.locator(`.frame[lang="${language}"]`).waitFor();
}

for (const width of [390, 320]) {
  test(`every screen holds its words in every language at ${width} px`, async () => {
    const { page, faults, close } = await openPage(browser, { width, height: 844 }, { served: true });
    const file = await openPage(browser, { width, height: 844 });
    const found = {};
    let looks = 0;
    const look = (page) => async (screen) => {
      for (const language of Object.keys(locales)) {
        await speak(page, language);
        await drawn(page);
        const wide = await tooWide(page);
        if (wide.length > 0) found[`${screen}, ${language}`] = wide;
        looks++;
      }
      await speak(page, "en");
    };
    await walkEveryScreen(page, look(page));
    await walkFromFile(file.page, look(file.page));
    assert.deepEqual(found, {});
    assert.ok(looks > 100);
    assert.deepEqual([...faults, ...file.faults], []);
    await Promise.all([close(), file.close()]);
  });
}

for (const [language, locale] of Object.entries(locales)) {
  test(`${language}: screen readers are told the language, and every language of the choice by its own`, async () => {
    const { page, close } = await openPage(browser, { width: 390, height: 844 }, { locale, bypassCSP: true });
    assert.equal(await page.evaluate(() => document.documentElement.lang), language);
    assert.equal(await page.locator(".frame").getAttribute("lang"), language);
    const options = page.getByRole("combobox", { name: textsOf(language).language }).locator("option");
    assert.deepEqual(await options.evaluateAll((list) => list.map(({ lang }) => lang)), Object.keys(locales));
    await page.addScriptTag({ content: axe });
    const rules = ["html-has-lang", "html-lang-valid", "valid-lang", "select-name", "label", "button-name"];
    const { violations, passes } = await page.evaluate(
      (values) => window.axe.run(document, { runOnly: { type: "rule", values } }),
      rules,
    );
    assert.deepEqual(
      violations.map(({ id }) => id),
      [],
    );
    assert.ok(passes.some(({ id }) => id === "valid-lang"));
    await close();
  });
}

for (const [language, typed, expected] of [
  ["de", "49,5", { window: "46,8 bis 50,3 cm", wheel: "16 Zoll", number: /\d,\d/ }],
  ["fr", "49,5", { window: "46,8 à 50,3 cm", wheel: "16 pouces", number: /\d,\d/ }],
]) {
  test(`${language}: from a reading to a bike that fits, in its words and figures`, async () => {
    const texts = textsOf(language);
    const { page, faults, close } = await openPage(
      browser,
      { width: 390, height: 844 },
      { locale: locales[language] },
    );
    const shown = async () =>
      plain(
        await page.evaluate(() => {
          const { shadowRoot } = document.getElementById("saddlerule");
          return [...shadowRoot.children].map((child) => child.innerText ?? "").join("\n");
        }),
      );

    await page.getByRole("textbox", { name: texts.rider.inseam }).fill(typed);
    await page.getByRole("heading", { name: texts.window.title }).waitFor();
    const rider = await shown();
    assert.match(rider, new RegExp(expected.wheel));
    assert.match(rider, expected.number);

    await goTo(page, texts, "list");
    await page.getByRole("button", { name: texts.list.loanShed }).click();
    await page.getByRole("heading", { name: "Loan shed, autumn list" }).waitFor();
    await goTo(page, texts, "rack");
    const first = page.getByRole("list", { name: texts.rack.listLabel }).getByRole("article").first();
    await first.getByText(texts.rack.verdicts.fits_now).waitFor();
    const height = /\d+,\d cm/.exec(plain(await first.textContent()))?.[0];
    assert.ok(height, "a saddle height with a decimal comma");
    assert.ok(plain(await first.textContent()).includes(plain(texts.verdict.setting({ height }))));

    await first.locator(".row-name").click();
    await page.getByRole("heading", { name: texts.growth.title }).waitFor();
    await page.getByRole("heading", { name: texts.cautions.title }).filter({ visible: true }).waitFor();
    await unfold(page);
    const bike = await shown();
    assert.ok(bike.includes(texts.checks.title));
    assert.doesNotMatch(bike, /\b(the|saddle|weighs|fits)\b/i);

    await goTo(page, texts, "tape");
    await page.getByRole("textbox", { name: texts.tape.lowest }).fill("45");
    await page.getByRole("textbox", { name: texts.tape.highest }).fill("58,5");
    await page.getByText(texts.rack.verdicts.fits_now).filter({ visible: true }).first().waitFor();
    assert.deepEqual(faults, []);
    await close();
  });
}

test("the language changes at once where it is chosen, and what was typed stays", async () => {
  const { page, faults, close } = await openPage(browser, { width: 390, height: 844 });
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  for (const language of ["de", "fr", "es", "nl", "en"]) {
    await page.getByRole("combobox").first().selectOption(language);
    const texts = textsOf(language);
    await page.getByRole("heading", { name: texts.window.title }).waitFor();
    assert.equal(await page.getByRole("textbox", { name: texts.rider.inseam }).inputValue(), "49.5");
    for (const tab of tabs)
      await page.getByRole("button", { name: texts.navigation[tab], exact: true }).waitFor();
    assert.equal(await page.evaluate(() => document.documentElement.lang), language);
  }
  assert.deepEqual(faults, []);
  await close();
});

test("a reading that is questioned is so in inches where the tape is in inches", async () => {
  const { page, close } = await openPage(browser, { width: 390, height: 844 });
  await page.getByRole("radio", { name: "inches" }).check();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("19 1/2");
  await page.getByRole("button", { name: "Measure again" }).click();
  await page.getByRole("textbox", { name: "Inside leg, measurement 2" }).fill("21 1/2");
  const question = page.getByText(/These measurements are/).first();
  await question.waitFor();
  assert.equal(
    plain(await question.textContent()),
    "These measurements are 2 in apart. Please measure once more.",
  );
  await close();
});
