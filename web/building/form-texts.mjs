// The texts that a form of the page says: few say all of them.
import { ownModule } from "./scripts.mjs";

/** The part of `tree` whose paths are as wished; sections with nothing in them are left out. */
function partOf(tree, wished, path = "") {
  const kept = Object.entries(tree).flatMap(([key, text]) => {
    const own = path === "" ? key : `${path}.${key}`;
    if (typeof text === "string" || Array.isArray(text)) return wished(own) ? [[key, text]] : [];
    const section = partOf(text, wished, own);
    return Object.keys(section).length > 0 ? [[key, section]] : [];
  });
  return Object.fromEntries(kept);
}

/** Those whose paths are as wished: in English, and by language as packed-texts.ts has them. */
export async function textsOfForm(wished) {
  const { english: all } = await ownModule("texts/en.ts");
  const { packedLanguages } = await ownModule("texts/translations.ts");
  const english = partOf(all, wished);
  return { english, words: packedLanguages(english) };
}
