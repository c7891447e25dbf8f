// How the texts of each language are set: its quotes, the spaces that must not break, one apostrophe, one ellipsis. Quotes as
// CLDR's delimiters have them (from memory); blanks before French marks by the rules of its printing houses, common practice.

import assert from "node:assert/strict";
import test from "node:test";
import { languages, saidIn } from "../support/page-texts.mjs";

const noBreak = "[\\u00a0\\u202f]";

/** The quotes that a language may use. */
const quotes = { en: "“”", de: "„“", fr: "«»", es: "«»“”", nl: "“”" };

/** Texts about files show marks and names as they are in the file: "bikes", \, '. */
const quotesCode = /^problems\.(wording\.(json|file|bike|list|table|request)_|words)/;

/** What has to be typed like this, or is read by the engine like this. */
const code = /Access-Control-Allow-Origin: \S+|# units: cm|^#X: /g;

const faults = {
  "a straight apostrophe or quote": ({ path, said }) => !quotesCode.test(path) && /['"]/.test(said),
  "a quote of another language": ({ language, said }) =>
    [...said].some((mark) => /[“”„«»‹›‚‘]/u.test(mark) && !quotes[language].includes(mark)),
  "three full stops for an ellipsis": ({ said }) => said.includes("..."),
  "two blanks, or one at the beginning": ({ path, said }) => path !== "colon" && /\s{2}|^\s/u.test(said),
  "a blank that breaks between a number and its unit": ({ said }) =>
    /\d (cm|mm|km|m|kg|lb|in(?=[,.;:)]|$)|ft|km\/h|mph|MB|MiB|kB|%|°|€|po|pulg\.?)(?![\p{L}\d])/u.test(said),
  "a blank that breaks before an ellipsis": ({ said }) => / …(?!\p{L})$/u.test(said) && !said.startsWith("…"),
  "a French mark without a blank that does not break": ({ language, said }) =>
    language === "fr" &&
    (/ [:;!?»]|« /u.test(said) ||
      new RegExp(`[\\p{L}\\d)][;!?»]|«(?!${noBreak})`, "u").test(said) ||
      /\p{L}:(\s|$)/u.test(said)),
  "a hyphen for a dash": ({ said }) => / - /.test(said),
};

/** What a number or a unit is put in for, so that blanks beside it are looked at too. */
const filling = (name) => (/name|title|file|bike|text|id|field|what|unit/i.test(name) ? "X" : "5");

for (const language of languages)
  for (const [name, isFault] of Object.entries(faults))
    test(`${language}: no text has ${name}`, () => {
      const wrong = saidIn(language, filling).filter(({ path, said }) =>
        isFault({ language, path, said: said.replaceAll(code, "X") }),
      );
      assert.deepEqual(wrong, []);
    });

test("each fault is found where there is one", () => {
  const found = (language, said) =>
    Object.keys(faults).filter((name) => faults[name]({ language, path: "rider.title", said }));
  const one = (name) => [Object.keys(faults).find((fault) => fault.includes(name))];
  assert.deepEqual(found("en", "the child's"), one("straight"));
  assert.deepEqual(found("en", "„Liste“"), one("another language"));
  assert.deepEqual(found("en", "Wait..."), one("three"));
  assert.deepEqual(found("de", "zwei  Räder"), one("two blanks"));
  assert.deepEqual(found("nl", "49,5 cm hoog"), one("its unit"));
  assert.deepEqual(found("nl", "49,5\u00a0cm hoog, 5 cmx"), []);
  assert.deepEqual(found("en", "Saving …"), one("before an ellipsis"));
  for (const said of ["Quoi ?", "Quoi?", "«\u00a0Liste »", "Note : oui", "Note: oui"])
    assert.deepEqual(found("fr", said), one("French"), said);
  assert.deepEqual(found("fr", "«\u202fListe\u202f»\u00a0: quoi\u202f?"), []);
  assert.deepEqual(found("es", "de 5 - 6"), one("a dash"));
});
