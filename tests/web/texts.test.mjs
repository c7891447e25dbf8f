// The words of the page: none missing in any language, none unused, the same figures in all, forms by number, numbers by region.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { openBuiltEngine, root } from "../support/built-engine.mjs";
import { pageModule } from "../support/page-modules.mjs";
import { usedTexts } from "../support/used-texts.mjs";

const { english } = await pageModule("texts/en.ts");
const { translations, packedLanguages } = await pageModule("texts/translations.ts");
const { textsIn } = await pageModule("texts/texts.ts");
const { readTemplate } = await pageModule("texts/templates.ts");
const { languageFor, localeFor } = await pageModule("texts/languages.ts");
const { lengthOfUse } = await pageModule("texts/durations.ts");
const { createFigures } = await pageModule("figures/format-figures.ts");
const { problemFigures } = await pageModule("figures/problem-figures.ts");

/** Every text with its path. */
function leaves(node, path = []) {
  return Object.entries(node).flatMap(([key, value]) =>
    typeof value === "string" || Array.isArray(value)
      ? [{ path: [...path, key], text: value }]
      : leaves(value, [...path, key]),
  );
}

const at = (tree, path) => path.reduce((node, key) => node?.[key], tree);
const all = leaves(english);
const packed = packedLanguages();
const spoken = {
  en: textsIn("en", "en-GB"),
  de: textsIn("de", "de-DE", packed.de),
  fr: textsIn("fr", "fr-FR", packed.fr),
  es: textsIn("es", "es-ES", packed.es),
  nl: textsIn("nl", "nl-NL", packed.nl),
};
const plain = (text) => text.replaceAll(/[\u00a0\u202f]/g, " ");

/** The names in a text, sorted; `#` behind those by which a form is chosen. */
function figuresOf(text) {
  const parts = (template) =>
    template.flatMap((part) =>
      typeof part === "string" ? [] : [part.name, ...part.forms.flatMap((form) => parts(form))],
    );
  return [...new Set(parts(readTemplate(text)))].sort();
}

const engine = await openBuiltEngine();
const { problems, problem_words: problemWords } = engine.ask({ do: "about" });
const inEnglish = JSON.parse(readFileSync(join(root, "wasm-bindings/english.json"), "utf8"));

/** The names of the figures that the engine sends with a problem, going by its sentence; undefined for any other text. */
function saidOf([first, second, code]) {
  if (first !== "problems" || second !== "wording" || !(code in inEnglish.problems)) return undefined;
  const { problem, expected } = inEnglish.problems[code];
  return figuresOf(problem + expected);
}

test("every problem in English asks for figures that the engine sends", () => {
  for (const code of Object.keys(inEnglish.problems))
    for (const figure of figuresOf(english.problems.wording[code]))
      assert.ok(saidOf(["problems", "wording", code]).includes(figure), `${code}: {${figure}}`);
});

for (const [language, texts] of Object.entries(translations)) {
  test(`${language}: no text is missing, and none is left over`, () => {
    const missing = all.filter(({ path }) => !at(texts, path)?.length).map(({ path }) => path.join("."));
    assert.deepEqual(missing, []);
    const left = leaves(texts).filter(({ path }) => at(english, path) === undefined);
    assert.deepEqual(left, []);
    for (const { path, text } of all)
      if (Array.isArray(text)) assert.equal(at(texts, path).length, text.length, path.join("."));
  });

  test(`${language}: every text asks for the figures that the English one has`, () => {
    for (const { path, text } of all) {
      if (Array.isArray(text)) continue;
      const own = figuresOf(at(texts, path) ?? "");
      const name = path.join(".");
      const known = saidOf(path);
      // Of a problem of the engine a language may say more or less, but nothing that the engine does not know.
      if (known === undefined) assert.deepEqual(own, figuresOf(text), name);
      else
        for (const figure of own)
          assert.ok(known.includes(figure), `${name}: {${figure}} is no figure of it`);
    }
  });

  test(`${language}: texts are its own, but for names and what is the same in both`, () => {
    const words = (text) => String(text).split(" ").length;
    const same = all.filter(({ path, text }) => words(text) > 3 && String(at(texts, path)) === String(text));
    assert.deepEqual(same, []);
  });
}

test("every problem of the engine, and every word in one, is said in every language", () => {
  assert.ok(problems.length > 100 && problemWords.length > 80);
  for (const texts of [english, ...Object.values(translations)]) {
    for (const { code } of problems) assert.ok(texts.problems.wording[code], code);
    // What a request should have is for those who write requests.
    for (const word of problemWords)
      assert.equal(Boolean(texts.problems.words[word]), !(word in inEnglish.request_words), word);
  }
});

test("the page says in English what command lines say, or its own words for parents", () => {
  const { wording } = english.problems;
  assert.equal(
    wording.json_comma_missing,
    "A comma is missing before this. Needed: a comma between one item and the next.",
  );
  assert.equal(wording.riders_row_of_totals, "“{text}” looks like a row of totals.");
  const own = Object.entries(inEnglish.problems).filter(
    ([code, { problem }]) =>
      !wording[code].toLowerCase().startsWith(problem.toLowerCase().replace(/"(\{\w+\})"/g, "“$1”")),
  );
  assert.ok(own.length < problems.length / 2, "most are the same");
});

test("every check and every source of one has its words", () => {
  const engineChecks = readFileSync(join(root, "core/fit/checks/check_list.inc"), "utf8");
  const names = [...engineChecks.matchAll(/^SADDLERULE_CHECK\((\w+)/gm)].map(([, name]) => name);
  assert.ok(names.length > 8);
  for (const name of names) {
    assert.ok(name in english.checks.names, name);
    assert.ok(name in english.checks.sources, name);
  }
  const reasons = readFileSync(join(root, "core/fit/checks/check_reason.cpp"), "utf8");
  const unjudged = [
    "figure_missing",
    "seat_tube_impossible",
    "crank_reaches_floor",
    "saddle_below_bottom_bracket",
  ];
  for (const [, code] of reasons.matchAll(/^ {4}\{(\w+), "/gm))
    if (!unjudged.includes(code)) assert.ok(code in english.checks.wording, code);
});

test("every text is used by the page", () => {
  const used = usedTexts();
  assert.ok(used.size > 100);
  const unused = all.map(({ path }) => path.join(".")).filter((name) => !used.has(name));
  assert.deepEqual(unused, []);
});

for (const [language, forms] of Object.entries({
  en: ["0 bikes", "1 bike", "2 bikes", "5 bikes", "21 bikes", "1,000,000 bikes"],
  de: ["0 Räder", "1 Rad", "2 Räder", "5 Räder", "21 Räder", "1.000.000 Räder"],
  // French has the singular for nought as well (CLDR).
  fr: ["0 vélo", "1 vélo", "2 vélos", "5 vélos", "21 vélos", "1 000 000 vélos"],
  es: ["0 bicis", "1 bici", "2 bicis", "5 bicis", "21 bicis", "1.000.000 bicis"],
  nl: ["0 fietsen", "1 fiets", "2 fietsen", "5 fietsen", "21 fietsen", "1.000.000 fietsen"],
})) {
  test(`${language}: ${forms.join(", ")}`, () => {
    const said = [0, 1, 2, 5, 21, 1e6].map((number) => plain(spoken[language].list.bikes({ number })));
    assert.deepEqual(said, forms);
  });

  test(`${language}: a form by number is chosen as Intl.PluralRules chooses it`, () => {
    const rules = new Intl.PluralRules(language);
    const forms = (number) => spoken[language].list.bikes({ number }).replace(/^[\d.,\s]+/, "");
    for (let number = 0; number < 130; number++) {
      const same = [1, 2].find((other) => rules.select(other) === rules.select(number));
      assert.equal(forms(number), forms(same), String(number));
    }
  });
}

test("a language with more forms than two gets each of them by its own rules, and the last for what is missing", async () => {
  const { filled } = await pageModule("texts/templates.ts");
  const template = readTemplate("{n} {n#rower|rowery|rowerów|roweru}");
  const order = ["one", "few", "many", "other"];
  const polish = new Intl.PluralRules("pl");
  const grammar = { number: String, list: String, form: (value) => order.indexOf(polish.select(value)) };
  const said = [0, 1, 2, 5, 21, 22].map((n) => filled(template, { n }, grammar));
  assert.deepEqual(said, ["0 rowerów", "1 rower", "2 rowery", "5 rowerów", "21 rowerów", "22 rowery"]);
  assert.equal(filled(readTemplate("{n#a|b}"), { n: 5 }, grammar), "b");
});

test("braces that are wrong are refused, and forms may hold figures", () => {
  for (const wrong of ["{", "{a", "a}", "{a#b", "{ a}", "a|b}"])
    assert.throws(() => readTemplate(wrong), wrong);
  const { bar } = spoken.en.rack;
  assert.equal(bar({ lowest: "40 cm", highest: "60 cm" }), "Saddle 40 cm to 60 cm");
  assert.equal(bar({ lowest: null, highest: "60 cm" }), "Saddle up to 60 cm; lowest not measured");
  assert.equal(bar({ lowest: "40 cm", highest: null }), "Saddle from 40 cm; highest not measured");
});

test("what is not translated yet is said in English", () => {
  const half = textsIn("de", "de-DE", "Sattelregel");
  assert.equal(half.name, "Sattelregel");
  assert.equal(half.rack.title, english.rack.title);
  assert.equal(half.list.bikes({ number: 2 }), "2 bikes");
});

test("the first of the reader's languages that the page speaks, in the reader's own form", () => {
  assert.equal(languageFor(["pt-BR", "de-AT", "en-GB"]), "de");
  assert.equal(languageFor(["pt"]), "en");
  assert.equal(languageFor([]), "en");
  assert.equal(localeFor("de", ["en-GB", "de-CH"]), "de-CH");
  assert.equal(localeFor("fr", ["en-GB"]), "fr");
});

/** CLDR by way of Intl: its unit in one of its three widths. */
const widths = ["narrow", "short", "long"];
const cldrUnits = {
  cm: "centimeter",
  in: "inch",
  kg: "kilogram",
  mm: "millimeter",
  m: "meter",
  km_h: "kilometer-per-hour",
};

for (const [language, locale] of [
  ["en", "en-GB"],
  ["de", "de-DE"],
  ["fr", "fr-FR"],
  ["es", "es-ES"],
  ["nl", "nl-NL"],
]) {
  test(`${language}: numbers, units, money and dates as CLDR has them for ${locale}`, () => {
    const { units } = spoken[language];
    for (const [unit, symbol] of Object.entries(units)) {
      const said = widths.flatMap((unitDisplay) => {
        const form = new Intl.NumberFormat(locale, { style: "unit", unit: cldrUnits[unit], unitDisplay });
        return [1, 2]
          .flatMap((number) => form.formatToParts(number))
          .filter(({ type }) => type === "unit")
          .map(({ value }) => value.trim());
      });
      assert.ok(said.includes(symbol), `${unit}: ${symbol} is none of ${said.join(", ")}`);
    }
    const figures = createFigures(locale, "cm", units);
    const tenth = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 });
    assert.equal(plain(figures.length(495)), `${tenth.format(49.5)} cm`);
    assert.equal(plain(figures.mass(6.4)), `${tenth.format(6.4)} kg`);
    const euros = new Intl.NumberFormat(locale, {
      style: "currency",
      currency: "EUR",
      minimumFractionDigits: 2,
    });
    assert.equal(figures.money(12.5, "EUR"), euros.format(12.5));
    const day = new Intl.DateTimeFormat(locale, { dateStyle: "long", timeZone: "UTC" });
    assert.equal(figures.day("2027-03-03"), day.format(Date.UTC(2027, 2, 3)));
  });
}

for (const [language, said] of Object.entries({
  en: "about a year and a half, most likely one to two years",
  de: "etwa anderthalb Jahre, vielleicht ein bis zwei Jahre",
  fr: "environ un an et demi, peut-être entre un an et deux ans",
  es: "cerca de un año y medio, quizá de un año a dos años",
  nl: "ongeveer anderhalf jaar, misschien een tot twee jaar",
})) {
  test(`${language}: ${said}`, () => {
    const range = { p10: 11.6, p50: 16.5, p90: 22.2 };
    assert.equal(lengthOfUse(spoken[language].durations, range), said);
  });
}

test("a reading is questioned in the reader's unit, a list in its own, both with the reader's decimal mark", () => {
  const question = {
    code: "reading_below_earlier",
    figures: { difference: { value: 2.5, unit: "cm" }, before_on: { date: "2026-05-01" } },
  };
  const inInches = createFigures("en-GB", "in", spoken.en.units);
  const inGerman = createFigures("de-DE", "cm", spoken.de.units);
  assert.equal(plain(problemFigures(spoken.en, inInches, question).difference), "1 in");
  assert.equal(plain(problemFigures(spoken.de, inGerman, question).difference), "2,5 cm");
  assert.equal(problemFigures(spoken.de, inGerman, question).before_on, "1. Mai 2026");
  const range = {
    code: "bike_figure_out_of_range",
    figures: {
      field: "saddle_lowest",
      value: { text: "2.5", unit: "in" },
      low: { value: 5.91, unit: "in" },
      high: { value: 51.2, unit: "in" },
    },
  };
  const said = problemFigures(spoken.de, inGerman, range);
  assert.deepEqual(
    [said.field, plain(said.value), plain(said.low)],
    ["Sattel ganz unten", "2,5 Zoll", "5,91 Zoll"],
  );
});

test("figures of every type are in the reader's form, and what is in a file is as it is there", () => {
  const figures = createFigures("de-DE", "cm", spoken.de.units);
  const said = (figure, code = "file_is_other") =>
    problemFigures(spoken.de, figures, { code, figures: { figure } }).figure;
  assert.equal(said({ word: "a_pdf" }), "ein PDF-Dokument");
  assert.equal(said({ word: "shoes_off" }), "vielleicht waren die Schuhe aus");
  assert.equal(said({ word: "length_example" }), null, "nothing that requests should have is said");
  assert.equal(said({ names: ["pedal", "balance"], are: "all" }), "pedal, balance");
  assert.equal(said({ names: ["crank"], are: "guess" }), "crank");
  assert.equal(said(20000), 20000);
  assert.equal(said("49.5"), "49.5");
  assert.equal(said("19 1/2 in"), "19 1/2 in");
  assert.equal(plain(said({ text: "19 1/2", unit: "cm" }, "slip_unit")), "19 1/2 cm");
  assert.equal(plain(said({ text: "49.5", unit: "cm" }, "slip_unit")), "49,5 cm");
  assert.equal(plain(said({ value: 6.4, unit: "kg" }, "bike_figure_out_of_range")), "6,4 kg");
  assert.equal(plain(said({ value: 90, unit: "degrees" }, "bike_figure_out_of_range")), "90°");
  assert.equal(plain(said({ value: null, unit: "cm" }, "bike_figure_out_of_range")), "? cm");
});
