// The languages of the page, each by its own name, and the one to begin with.

export const languageNames = {
  en: "English",
  de: "Deutsch",
  fr: "Français",
  es: "Español",
  nl: "Nederlands",
} as const;

export type Language = keyof typeof languageNames;

/** All but English, whose words are in the script. */
export type OtherLanguage = Exclude<Language, "en">;

export const languages = Object.keys(languageNames) as Language[];

const languageOf = (locale: string): string => locale.split("-")[0]?.toLowerCase() ?? "";

/** The first of the reader's languages that the page speaks. */
export function languageFor(wanted: readonly string[]): Language {
  return wanted.map(languageOf).find((code): code is Language => code in languageNames) ?? "en";
}

/** The reader's own form of a language, such as en-GB. */
export function localeFor(language: Language, wanted: readonly string[]): string {
  return wanted.find((locale) => languageOf(locale) === language) ?? language;
}
