// Every word of the page against the spelling dictionaries of Debian (hunspell), which know the compounds of German and Dutch.
// What is right and in no dictionary is in the glossary of its language under "ownWords".

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import test from "node:test";
import { glossaryOf, languages, saidIn } from "../support/page-texts.mjs";

const dictionaries = { en: "en_GB", de: "de_DE", fr: "fr", es: "es_ES", nl: "nl" };

/** The words of `lines` that the dictionary does not know, each once. */
function unknownWords(language, lines) {
  // The dictionaries are older than the curly apostrophe. Each has ideas of its own on what ends a word, so words come one a line.
  const words = lines
    .join("\n")
    .replaceAll("’", "'")
    .match(/\p{L}+(?:['-]\p{L}+)*/gu);
  const { status, stdout, stderr } = spawnSync(
    "hunspell",
    ["-l", "-i", "utf-8", "-d", dictionaries[language]],
    { input: [...new Set(words)].join("\n"), encoding: "utf8", env: { ...process.env, LC_ALL: "C.UTF-8" } },
  );
  assert.equal(status, 0, stderr);
  return [...new Set(stdout.split("\n").filter((word) => word !== ""))];
}

test("the dictionaries know words and their compounds, and find what is wrong", () => {
  const samples = {
    en: ["saddle height of a child’s bike", "saddel"],
    de: ["Sattelhöhe des Kinderrads", "Sattelhöe"],
    fr: ["l’entrejambe d’un enfant", "entrejanbe"],
    es: ["la altura del sillín", "altrura"],
    nl: ["zadelhoogte van de kinderfiets", "zadelhoogtte"],
  };
  for (const [language, [right, wrong]] of Object.entries(samples))
    assert.deepEqual(unknownWords(language, [right, wrong]), [wrong], language);
});

for (const language of languages) {
  const glossary = glossaryOf(language);
  if (glossary === null) continue;

  test(`${language}: every word is in the dictionary or in the list of our own`, () => {
    const unknown = unknownWords(
      language,
      saidIn(language).map(({ said }) => said),
    );
    assert.deepEqual(unknown.filter((word) => !glossary.ownWords.includes(word)).sort(), []);
  });

  test(`${language}: every word of our own is used, and in no dictionary`, () => {
    const all = saidIn(language)
      .map(({ said }) => said)
      .join("\n")
      .replaceAll("’", "'");
    assert.deepEqual(
      glossary.ownWords.filter((word) => !all.includes(word)),
      [],
    );
    assert.deepEqual(unknownWords(language, glossary.ownWords).sort(), [...glossary.ownWords].sort());
  });
}
