// The words of the page: none missing in any language, none unused, the same figures in all, forms by number, numbers by region.

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { openBuiltEngine, root } from "../support/built-engine.mjs";
import { pageModule, pageRequire } from "../support/page-modules.mjs";

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
const { problems } = engine.ask({ do: "about" });

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
    const wordings = Object.fromEntries(
      problems.map(({ code, sentence, expected }) => [code, sentence + expected]),
    );
    for (const { path, text } of all) {
      if (Array.isArray(text)) continue;
      const own = figuresOf(at(texts, path) ?? "");
      const name = path.join(".");
      if (text !== "") assert.deepEqual(own, figuresOf(text), name);
      // Of what English leaves to the engine, a language may say less, but nothing that the engine does not know.
      else if (name.startsWith("problems.wording."))
        for (const figure of own)
          assert.ok(
            wordings[path.at(-1)]?.includes(`{${figure}}`),
            `${name}: {${figure}} is no figure of it`,
          );
      else assert.deepEqual(own, [], name);
    }
  });

  test(`${language}: texts are its own, but for names and what is the same in both`, () => {
    const words = (text) => String(text).split(" ").length;
    const same = all.filter(({ path, text }) => words(text) > 3 && String(at(texts, path)) === String(text));
    assert.deepEqual(same, []);
  });
}

test("every problem of the engine has its words in every language but English, where the engine's own may do", () => {
  for (const { code } of problems) {
    assert.ok(code in english.problems.wording, `${code} is not in the texts`);
    for (const texts of Object.values(translations)) assert.ok(texts.problems.wording[code], code);
  }
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

/**
 * The paths of all texts that the page's sources come to, by the compiler's own knowledge of what a name stands for. A group
 * that is handed on or looked up by a key, and not by a name, is used as a whole.
 */
function usedTexts() {
  const ts = pageRequire("typescript");
  const { config } = ts.readConfigFile(join(root, "web/tsconfig.json"), ts.sys.readFile);
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, join(root, "web"));
  const program = ts.createProgram(fileNames, options);
  const checker = program.getTypeChecker();
  const file = join(root, "web/texts/en.ts");
  const used = new Set();

  const pathOf = (declaration) => {
    const path = [];
    for (let node = declaration; node; node = node.parent)
      if (ts.isPropertyAssignment(node)) path.unshift(node.name.text);
    return path;
  };
  const useWhole = (path) => {
    const node = at(english, path);
    if (typeof node === "string" || Array.isArray(node)) used.add(path.join("."));
    else for (const key of Object.keys(node)) useWhole([...path, key]);
  };
  const meet = (symbol, goesOn) => {
    for (const declaration of symbol?.declarations ?? []) {
      if (declaration.getSourceFile().fileName !== file || !ts.isPropertyAssignment(declaration)) continue;
      if (!goesOn || !ts.isObjectLiteralExpression(declaration.initializer)) useWhole(pathOf(declaration));
    }
  };
  const visit = (node) => {
    if (ts.isPropertyAccessExpression(node)) {
      const { parent } = node;
      const named = ts.isPropertyAccessExpression(parent) && parent.expression === node;
      const taken = ts.isVariableDeclaration(parent) && ts.isObjectBindingPattern(parent.name);
      meet(checker.getSymbolAtLocation(node.name), named || taken);
    }
    if (ts.isBindingElement(node) && ts.isObjectBindingPattern(node.parent)) {
      const name = (node.propertyName ?? node.name).getText();
      const from = checker.getTypeAtLocation(node.parent);
      // A group that gets a name of its own is met again where that name is used.
      const group = checker.getSymbolAtLocation(node.name);
      meet(from.getProperty(name), group !== undefined && goesOnByName(group, node));
    }
    ts.forEachChild(node, visit);
  };
  /** Whether a variable is only ever followed by a name: `growth.title`. */
  const goesOnByName = (group, binding) => {
    let always = true;
    const look = (node) => {
      if (ts.isIdentifier(node) && node !== binding.name && checker.getSymbolAtLocation(node) === group) {
        const { parent } = node;
        always &&= ts.isPropertyAccessExpression(parent) && parent.expression === node;
      }
      ts.forEachChild(node, look);
    };
    look(binding.getSourceFile());
    return always;
  };
  for (const source of program.getSourceFiles()) {
    const own = source.fileName.startsWith(join(root, "web/")) && !source.fileName.includes("node_modules");
    const words = source.fileName.startsWith(join(root, "web/texts/"));
    if (own && (!words || source.fileName.endsWith("durations.ts"))) visit(source);
  }
  return used;
}

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
    figures: { difference: "2.5 cm", before_on: "2026-05-01" },
  };
  const inInches = createFigures("en-GB", "in", spoken.en.units);
  const inGerman = createFigures("de-DE", "cm", spoken.de.units);
  assert.equal(plain(problemFigures(spoken.en, inInches, question).difference), "1 in");
  assert.equal(plain(problemFigures(spoken.de, inGerman, question).difference), "2,5 cm");
  assert.equal(problemFigures(spoken.de, inGerman, question).before_on, "1. Mai 2026");
  const range = {
    code: "bike_figure_out_of_range",
    figures: { field: "saddle_lowest", value: "2.5", low: "5.91 in", high: "51.2 in" },
  };
  const said = problemFigures(spoken.de, inGerman, range);
  assert.deepEqual([said.field, said.value, plain(said.low)], ["Sattel ganz unten", "2.5", "5,91 Zoll"]);
});

test("what the engine says in English words inside a figure has its words too", () => {
  const figures = createFigures("de-DE", "cm", spoken.de.units);
  const said = (code, given) => problemFigures(spoken.de, figures, { code, figures: given });
  assert.equal(said("file_is_other", { found: "a PDF document" }).found, "ein PDF-Dokument");
  assert.equal(said("bike_value_unknown", { known: "one of pedal, balance" }).known, "pedal, balance");
  assert.equal(said("list_field_unknown", { known: 'perhaps "crank"' }).known, "crank");
  assert.equal(said("list_field_unknown", { known: "" }).known, null);
  // What is in a file is shown as it is there.
  assert.equal(said("json_figure_decimal_comma", { repaired: "49.5" }).repaired, "49.5");
  assert.equal(said("json_text_control_character", { character: "08" }).character, "08");
  const slip = { slip: "perhaps the shoes were off", slip_code: "shoes_off" };
  assert.equal(said("reading_outside_plausible", slip).slip, "vielleicht waren die Schuhe aus");
});

test("every English fragment that the page knows is in the engine's sources, or where the page reads spreadsheets", () => {
  const sources = readdirSync(join(root, "core"), { recursive: true, withFileTypes: true })
    .filter(({ name }) => name.endsWith(".cpp"))
    .map(({ name, parentPath, path }) => readFileSync(join(parentPath ?? path, name), "utf8"))
    .concat(readFileSync(join(root, "web/engine/spreadsheet.ts"), "utf8"))
    .join("\n")
    .replaceAll('\\"', '"');
  for (const fragment of Object.keys(english.problems.fragments))
    assert.ok(sources.includes(fragment), fragment);
});
