// The texts of the page as they are read: every language, every form that a text can take.

import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./built-engine.mjs";
import { pageModule } from "./page-modules.mjs";

const { english } = await pageModule("texts/en.ts");
const { translations } = await pageModule("texts/translations.ts");
const { languages } = await pageModule("texts/languages.ts");
const { readTemplate } = await pageModule("texts/templates.ts");
const { cannotRun } = await pageModule("texts/first-words.ts");

export { languages };

/**
 * Every form of a template; `fill` gives what is put where a name of the text is. Names that choose between forms do so
 * on their own, so that each form is met once with each of the others.
 */
function formsOf(template, fill) {
  return template.reduce(
    (sofar, part) => {
      const next =
        typeof part === "string"
          ? [part]
          : part.forms.length > 0
            ? part.forms.flatMap((form) => formsOf(form, fill))
            : [fill(part.name)];
      return sofar.flatMap((before) => next.map((after) => before + after));
    },
    [""],
  );
}

/** All texts of a language with their paths, such as `rider.title`; empty ones, which the engine words, are left out. */
export function textsOf(language) {
  const leaves = (node, path) =>
    typeof node === "string"
      ? [{ path: path.join("."), text: node }]
      : Object.entries(node).flatMap(([key, child]) => leaves(child, [...path, key]));
  const tree = language === "en" ? english : translations[language];
  const firstWords = { path: "cannotRun", text: cannotRun[language] };
  return [...leaves(tree, []), firstWords].filter(({ text }) => text !== "");
}

/** Every text of a language in all its forms, with `fill(name)` where something is put in. */
export function saidIn(language, fill = () => "…") {
  return textsOf(language).flatMap(({ path, text }) =>
    [...new Set(formsOf(readTemplate(text), fill))]
      .filter((said) => said !== "")
      .map((said) => ({ path, said })),
  );
}

/** The glossary of a language, or null while it has none. */
export function glossaryOf(language) {
  const file = join(root, "web/texts/glossary", `${language}.json`);
  return existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : null;
}
