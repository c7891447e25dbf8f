// One meaning a word: web/texts/glossary/ has a file for each language, with the terms of the page and what is never said for them.
//
//   "terms"     by the English term, the same keys in every language: the "term" as the page says it, its "meaning", and the
//               words "never" used for it. `ab*` is every word that begins so. In the phrases under "but", the word is right.
//   "never"     words that no text may have at all, with a "but" of their own
//   "ownWords"  words that are right and in no dictionary, for the check of spelling

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { root } from "../support/built-engine.mjs";
import { glossaryOf, languages, saidIn } from "../support/page-texts.mjs";

const concepts = Object.keys(glossaryOf("en").terms);

/** A word or phrase as a whole, in any case; blanks of all kinds are alike. */
function phrase(words) {
  const pattern = words
    .replaceAll(/[.+?^${}()|[\]\\]/g, "\\$&")
    .replaceAll("*", "\\p{L}*")
    .replaceAll(/\s+/g, "\\s+");
  return new RegExp(`(?<![\\p{L}\\p{N}])${pattern}(?![\\p{L}\\p{N}])`, "giu");
}

/** The banned words of a glossary that `text` has, each with the term to use. */
function banned(glossary, text) {
  const rules = [...Object.values(glossary.terms), { never: glossary.never, but: glossary.but, term: null }];
  return rules.flatMap(({ never = [], but = [], term }) => {
    const rest = but.reduce(
      (left, right) => left.replaceAll(new RegExp(phraseStart(right), "giu"), " "),
      text,
    );
    return never
      .filter((word) => phrase(word).test(rest))
      .map((word) => `“${word}”${term === null ? "" : `, say “${term}”`}`);
  });
}

/** A phrase that may end in the middle of a word or at a quote. */
const phraseStart = (words) => words.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&").replaceAll(/\s+/g, "\\s+");

const faultsOf = (glossary, texts) =>
  texts.flatMap(({ path, said }) => banned(glossary, said).map((word) => `${path}: ${word} (${said})`));

test("a banned word is found in any case and as a whole word, and not in a phrase that is excepted", () => {
  const glossary = {
    terms: { measure: { term: "measure", meaning: "", never: ["tap*", "set aside"], but: ["tape measure"] } },
    never: ["lies"],
    but: [],
  };
  assert.deepEqual(banned(glossary, "Taped by you"), ["“tap*”, say “measure”"]);
  assert.deepEqual(banned(glossary, "Two set\u00a0aside"), ["“set aside”, say “measure”"]);
  assert.deepEqual(banned(glossary, "It lies there"), ["“lies”"]);
  assert.deepEqual(banned(glossary, "The tape measure, a step, replies"), []);
});

for (const language of languages) {
  const glossary = glossaryOf(language);
  if (glossary === null) continue;

  test(`${language}: the glossary has every term, with its meaning`, () => {
    assert.deepEqual(
      concepts.filter((concept) => !(concept in glossary.terms)),
      [],
    );
    for (const [concept, { term, meaning }] of Object.entries(glossary.terms))
      assert.ok(term.length > 1 && meaning.length > 10, concept);
  });

  test(`${language}: every term of the glossary is said somewhere`, () => {
    const all = saidIn(language)
      .map(({ said }) => said.toLowerCase())
      .join("\n");
    const unsaid = Object.values(glossary.terms).filter(({ term }) => !all.includes(term.toLowerCase()));
    assert.deepEqual(unsaid, []);
  });

  test(`${language}: no text of the page has a banned word`, () => {
    assert.deepEqual(faultsOf(glossary, saidIn(language)), []);
  });
}

test("no sentence of command lines, no page for readers and no sample has a word that the English glossary bans", () => {
  const inEnglish = JSON.parse(readFileSync(join(root, "wasm-bindings/english.json"), "utf8"));
  const sentences = Object.entries(inEnglish.problems).map(([code, { problem, expected }]) => ({
    path: code,
    said: `${problem}. ${expected}`.replaceAll(/\{\w+\}/g, "X"),
  }));
  for (const [path, said] of Object.entries(inEnglish.problem_words)) sentences.push({ path, said });
  const files = [
    "README.md",
    "web/site/README.md",
    "catalogue-samples/README.md",
    "web/club-page/index.html",
    "web/club-page/element.html",
    "web/club-page/frame.html",
  ];
  const pages = files.flatMap((file) =>
    // What is code is not said to a reader.
    readFileSync(join(root, file), "utf8")
      .replaceAll(/```[^]*?```|`[^`]*`|<[^>]*>|\]\([^)]*\)|^ {4}.*$/gm, " ")
      .split("\n")
      .map((said, line) => ({ path: `${file}:${line + 1}`, said })),
  );
  assert.deepEqual(faultsOf(glossaryOf("en"), [...sentences, ...pages]), []);
});
