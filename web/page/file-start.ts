// What the page file begins with: it unpacks the page's own script and hands it to the browser, which runs it because the
// file's policy names its hash.
import { cannotRun } from "../texts/first-words";
import { languageFor } from "../texts/languages";
import { packedText } from "./packed-block";
import { scriptText } from "./trusted-start";

const start = document.currentScript;

packedText("script").then(
  (text) => {
    const script = document.createElement("script");
    script.text = scriptText(text);
    start?.after(script);
  },
  () => {
    const language = languageFor(navigator.languages);
    const words = document.createElement("p");
    words.lang = language;
    words.textContent = cannotRun[language];
    document.getElementById("saddlerule")?.append(words);
  },
);
