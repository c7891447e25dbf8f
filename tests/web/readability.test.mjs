// How easy the English of the page is to read: the grade of school in the US that its verdicts, cautions and instructions ask
// for, by the formula of Kincaid, Fishburne, Rogers and Chissom (1975), with the syllables counted by the package syllable.

import assert from "node:assert/strict";
import test from "node:test";
import { syllable } from "syllable";
import { pageModule } from "../support/page-modules.mjs";

const { english } = await pageModule("texts/en.ts");
const { readTemplate } = await pageModule("texts/templates.ts");

const highestGrade = 7;

function grade(text) {
  const sentences = text.split(/[.!?:;](?:\s|$)/).filter((sentence) => /\w/.test(sentence)).length;
  const words = text.match(/[\p{L}\p{N}’]+/gu);
  const syllables = words.reduce((sum, word) => sum + syllable(word), 0);
  return 0.39 * (words.length / sentences) + 11.8 * (syllables / words.length) - 15.59;
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
  "how long it lasts": [growth],
  "checks beyond the saddle": [checks],
  cautions: [cautions],
  "problems and how to mend them": [english.problems, list],
  "everything that is kept, shared and wiped": [english.keep, english.card],
  "what is asked of the rider": [english.rider, english.family, english.wishes],
  "a list in the making": [english.desk, english.opening],
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
