// What the page file begins with: it has the engine compiled while the rest of the file is read, or says that this browser
// will not do.
import { compiledFrom } from "../engine/inflating";
import { cannotRun } from "../texts/first-words";
import { languageFor } from "../texts/languages";
import { carriedBlock } from "./carried-blocks";
import { engineBegun } from "./early-engine";

if ("WebAssembly" in globalThis && "DecompressionStream" in globalThis) {
  engineBegun(compiledFrom(carriedBlock("engine")));
} else {
  const language = languageFor(navigator.languages);
  const words = document.createElement("p");
  words.lang = language;
  words.textContent = cannotRun[language];
  document.getElementById("saddlerule")?.append(words);
}
