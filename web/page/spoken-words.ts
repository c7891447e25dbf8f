// The words of the page in the language that is wanted, as soon as they are there; until then in English.
import type { Language } from "../texts/languages";
import { localeFor } from "../texts/languages";
import { textsIn } from "../texts/texts";
import type { Texts } from "../texts/texts";
import type { PackedLanguages } from "../texts/translations";

export interface Spoken {
  language: Language;
  locale: string;
  texts: Texts;
}

export interface SpokenWords {
  /** In `language` where its words are there, in English else. The same object every time. */
  now: (language: Language) => Spoken;
  /** Calls `done` once the words of `language` are there, or can never be; at once where they are. */
  fetch: (language: Language, done: () => void) => void;
}

export function spokenWords(read: () => Promise<PackedLanguages>): SpokenWords {
  let packed: Promise<PackedLanguages> | null = null;
  const made: Partial<Record<Language, Spoken>> = {};

  function speak(language: Language, words?: PackedLanguages): Spoken {
    const locale = localeFor(language, navigator.languages);
    const packed = words === undefined || language === "en" ? "" : words[language];
    return (made[language] ??= { language, locale, texts: textsIn(language, locale, packed) });
  }

  return {
    now: (language) => made[language] ?? speak("en"),
    fetch(language, done) {
      if (language === "en" || made[language] !== undefined) {
        done();
        return;
      }
      packed ??= read();
      packed.then((words) => speak(language, words)).then(done, done);
    },
  };
}
