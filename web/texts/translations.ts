// All languages but English, for the build to pack and for the tests to compare.
import { german } from "./de";
import { english } from "./en";
import { spanish } from "./es";
import { french } from "./fr";
import type { OtherLanguage } from "./languages";
import { dutch } from "./nl";
import { packedLike } from "./packed-texts";
import type { Translation } from "./packed-texts";

export const translations: Record<OtherLanguage, Translation> = {
  de: german,
  fr: french,
  es: spanish,
  nl: dutch,
};

export type PackedLanguages = Record<keyof typeof translations, string>;

/** In the order of `inEnglish`. */
export function packedLanguages(inEnglish: object = english): PackedLanguages {
  const packed = Object.entries(translations).map(([language, texts]) => [
    language,
    packedLike(inEnglish, texts),
  ]);
  return Object.fromEntries(packed) as PackedLanguages;
}
