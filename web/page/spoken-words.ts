// The words of the page in the language that is wanted, as soon as they are there; until then in English.
import type { Language, OtherLanguage } from "../texts/languages";
import { localeFor } from "../texts/languages";
import { textsIn } from "../texts/texts";
import type { Texts } from "../texts/texts";

export interface Spoken {
  language: Language;
  locale: string;
  texts: Texts;
}

export interface SpokenWords {
  /** In `language` where its words are there, in English else. The same object every time. */
  now: (language: Language) => Spoken;
  /** Calls `done` once the words of `language` are there, or are not to be had now; at once where they are. */
  fetch: (language: Language, done: () => void) => void;
}

/** @param read gives the words of a language as packed-texts.ts has them; what failed is asked for again */
export function spokenWords(read: (language: OtherLanguage) => Promise<string>): SpokenWords {
  const made: Partial<Record<Language, Spoken>> = {};

  function speak(language: Language, words = ""): Spoken {
    const locale = localeFor(language, navigator.languages);
    return (made[language] ??= { language, locale, texts: textsIn(language, locale, words) });
  }

  return {
    now: (language) => made[language] ?? speak("en"),
    fetch(language, done) {
      if (language === "en" || made[language] !== undefined) {
        done();
        return;
      }
      read(language)
        .then((words) => speak(language, words))
        .then(done, done);
    },
  };
}
