// The words of the page in the language that is wanted, as soon as they are there; until then in English.
import type { Language, OtherLanguage } from "../texts/languages";
import { localeFor } from "../texts/languages";
import { textsIn, withMore } from "../texts/texts";
import type { Texts } from "../texts/texts";

export interface Spoken {
  language: Language;
  locale: string;
  texts: Texts;
}

export type ReadWords = (language: OtherLanguage) => Promise<string>;

export interface SpokenWords {
  /** In `language` where its words are there, in English else. The same object every time. */
  now: (language: Language) => Spoken;
  /** Calls `done` once the words of `language` are there, or are not to be had now; at once where they are. */
  fetch: (language: Language, done: () => void) => void;
  /** Further texts in English, and the way to their words in other languages. Rejects, and changes nothing, where those do not come. */
  extend: (english: object, read: ReadWords) => Promise<void>;
}

/** @param read gives the words of a language as packed-texts.ts has them; what failed is asked for again */
export function spokenWords(read: ReadWords): SpokenWords {
  const made: Partial<Record<Language, Spoken>> = {};
  let more: { english: object; read: ReadWords } | null = null;

  function speak(language: Language, words = "", moreWords = ""): Spoken {
    const locale = localeFor(language, navigator.languages);
    const texts = textsIn(language, locale, words);
    const all = more ? withMore(texts, textsIn(language, locale, moreWords, more.english)) : texts;
    return (made[language] ??= { language, locale, texts: all });
  }

  async function learn(language: OtherLanguage): Promise<void> {
    const words = await read(language);
    speak(language, words, await more?.read(language));
  }

  return {
    now: (language) => made[language] ?? speak("en"),
    fetch(language, done) {
      if (language === "en" || made[language] !== undefined) done();
      else learn(language).then(done, done);
    },
    async extend(english, readMore) {
      const learnt = new Map<Language, string>([["en", ""]]);
      // One may be learnt while the words of another are on their way.
      for (let next; (next = Object.values(made).find(({ language }) => !learnt.has(language)));) {
        const language = next.language as OtherLanguage;
        learnt.set(language, await readMore(language));
      }
      more = { english, read: readMore };
      for (const { language, locale, texts } of Object.values(made)) {
        const others = textsIn(language, locale, learnt.get(language), english);
        made[language] = { language, locale, texts: withMore(texts, others) };
      }
    },
  };
}
