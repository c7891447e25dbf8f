// The language of the page, each by its own name, so that everybody finds theirs.
import { usePage } from "../page/page-context";
import { languageChosen } from "../state/screen-changes";
import { languageNames, languages } from "../texts/languages";
import type { Language } from "../texts/languages";

export function LanguageChoice({ language }: { language: Language }) {
  const { texts, change } = usePage();
  return (
    <select
      class="language-choice"
      aria-label={texts.language}
      value={language}
      onChange={(event) => change(languageChosen(event.currentTarget.value as Language))}
    >
      {languages.map((one) => (
        <option key={one} value={one} lang={one} selected={one === language}>
          {languageNames[one]}
        </option>
      ))}
    </select>
  );
}
