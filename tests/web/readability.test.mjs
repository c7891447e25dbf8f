// How easy the page is to read. English by the grade of school in the US that a text asks for (Kincaid, Fishburne, Rogers and
// Chissom 1975), by the package flesch-kincaid, with the syllables counted by the package syllable. Every language by the LIX of
// Björnsson (1968), which needs no syllables: words to a sentence, and words of more than six letters in a hundred; below 30 is very
// easy and below 40 is easy (from memory).

import assert from "node:assert/strict";
import test from "node:test";
import { fleschKincaid } from "flesch-kincaid";
import { syllable } from "syllable";
import { pageModule } from "../support/page-modules.mjs";
import { languages, saidIn } from "../support/page-texts.mjs";

const { english } = await pageModule("texts/en.ts");
const { readTemplate } = await pageModule("texts/templates.ts");

const highestGrade = 6;
const highestLix = 40;
const mostWords = 26;

const sentencesIn = (text) => text.split(/[.!?:;](?:\s|$)/).filter((sentence) => /\w/.test(sentence));
const wordsIn = (text) => text.match(/[\p{L}\p{N}’]+/gu) ?? [];

function grade(text) {
  const words = wordsIn(text);
  return fleschKincaid({
    sentence: sentencesIn(text).length,
    word: words.length,
    syllable: words.reduce((sum, word) => sum + syllable(word), 0),
  });
}

/** A text as it is read, with every figure in it and the longer of its forms. */
function filled(text) {
  const say = (template) =>
    template
      .map((part) => {
        if (typeof part === "string") return part;
        const forms = part.forms.map(say);
        if (forms.length > 0) return forms.reduce((one, other) => (other.length > one.length ? other : one));
        return /month|day/.test(part.name) ? "May" : /range/.test(part.name) ? "March to June" : "5 cm";
      })
      .join("");
  return say(readTemplate(text));
}

const textsOf = (node) =>
  typeof node === "string" ? [filled(node)] : Object.values(node).flatMap((child) => textsOf(child));

/** Sentences: names of fields, of colours and of units ask for no reading. */
const sentencesOf = (...nodes) =>
  nodes
    .flatMap(textsOf)
    .filter((text) => text.split(" ").length >= 6)
    .map((text) => (/[.!?]$/.test(text) ? text : `${text}.`));

const { measuring, window, rack, verdict, choosing, checks, cautions, growth, leg, bike, tape, list } =
  english;
const kinds = {
  "how to measure and what to look for": [measuring, window, tape],
  verdicts: [rack, verdict, choosing, bike.foot, leg],
  "how long it fits": [growth],
  "other checks": [checks],
  cautions: [cautions],
  "problems and how to fix them": [english.problems.wording, list],
  "everything that is saved, shared and deleted": [english.keep, english.card],
  "what is asked of the child": [english.rider, english.family, english.wishes],
  "a list in the making": [english.desk, english.opening],
  "the years ahead": [english.years],
};

test("the measure gives what the formula gives by hand", () => {
  // 12 words and 12 syllables in 2 sentences: 0.39 * 6 + 11.8 * 1 - 15.59.
  assert.ok(Math.abs(grade("The cat sat on the mat. The dog ran up the hill.") + 1.45) < 0.001);
  // 7 words and 26 syllables in 1 sentence: 0.39 * 7 + 11.8 * 26 / 7 - 15.59.
  const hard =
    "Anthropometric characteristics necessitate individualised ergonomic consideration universally.";
  assert.ok(grade(hard) > 25);
});

for (const [name, nodes] of Object.entries(kinds)) {
  test(`grade ${highestGrade} or below: ${name}`, () => {
    const sentences = sentencesOf(...nodes);
    assert.ok(sentences.length > 4, `${sentences.length} sentences`);
    if (process.env.SHOW) console.log(name, grade(sentences.join(" ")));
    const hard = sentences
      .map((text) => ({ grade: grade(text), text }))
      .filter(({ grade }) => grade > highestGrade)
      .sort((one, other) => other.grade - one.grade)
      .map(({ grade, text }) => `${grade.toFixed(1)}: ${text}`);
    assert.deepEqual(hard, []);
  });
}

/** Words to a sentence, and long words in a hundred. */
function lix(texts) {
  const sentences = texts.flatMap(sentencesIn);
  const words = sentences.flatMap(wordsIn);
  const long = words.filter((word) => word.length > 6);
  return words.length / sentences.length + (100 * long.length) / words.length;
}

test("LIX is what it is by hand", () => {
  // 13 words in 2 sentences; children, measure and another have more than six letters.
  const texts = ["The children measure a saddle. The bike is here, not in another place."];
  assert.ok(Math.abs(lix(texts) - (13 / 2 + 300 / 13)) < 1e-9);
});

const screens = [
  "measuring|window|tape",
  "verdict|choosing|bike|leg",
  "growth",
  "checks",
  "cautions",
  "rider|family|wishes",
  "list|desk|opening",
  "keep|card|site",
  "years",
  "problems",
];

for (const language of languages) {
  test(`${language}: LIX ${highestLix} or below on every screen, and no sentence of more than ${mostWords} words`, () => {
    const said = saidIn(language, () => "5").filter(({ said }) => said.split(" ").length >= 6);
    for (const screen of screens) {
      const texts = said
        .filter(({ path }) => new RegExp(`^(${screen})\\.`).test(path))
        .map(({ said }) => said);
      assert.ok(texts.length > 4, `${screen}: ${texts.length} texts`);
      if (process.env.SHOW) console.log(language, screen, lix(texts).toFixed(1));
      assert.ok(lix(texts) <= highestLix, `${screen}: ${lix(texts).toFixed(1)}`);
    }
    const long = said
      .flatMap(({ path, said }) =>
        sentencesIn(said).map((sentence) => ({ path, words: wordsIn(sentence).length })),
      )
      .filter(({ words }) => words > mostWords);
    assert.deepEqual(long, []);
  });
}
