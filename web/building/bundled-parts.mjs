// What is in a script for files that are no scripts; web/page/bundled-files.d.ts tells the compiler of them.
import { readFile } from "node:fs/promises";
import path from "node:path";
import { root } from "./places.mjs";
import { ownModule, scriptText } from "./scripts.mjs";

/** A name that is imported, and what it gives. */
function part(name, loader, contents) {
  return {
    name,
    setup(bundle) {
      bundle.onResolve({ filter: new RegExp(`^${name}$`) }, () => ({ path: name, namespace: name }));
      bundle.onLoad({ filter: /.*/, namespace: name }, async () => ({ contents: await contents(), loader }));
    },
  };
}

/** `name` stands for a module written by the build. */
export const text = (name, module) => part(name, "js", () => module);

/** `name` stands for another file, which is loaded from beside the script. */
export const outside = (name, file) => ({
  name,
  setup(bundle) {
    bundle.onResolve({ filter: new RegExp(`^${name}$`) }, () => ({ path: file, external: true }));
  },
});

/** The page's texts in English are these. */
export const englishTexts = (english) => ({
  name: "english-texts",
  setup(bundle) {
    bundle.onLoad({ filter: /texts\/en\.ts$/ }, () => ({
      contents: `export const english = ${JSON.stringify(english)};`,
      loader: "js",
    }));
  },
});

/** The script carries the component's style as a text, and adopts it into its shadow root. */
export function styleAsText(sheet, name = "saddlerule.css") {
  return {
    name: "style-as-text",
    setup(bundle) {
      bundle.onLoad({ filter: new RegExp(`${name}$`) }, () => ({ contents: sheet, loader: "text" }));
    },
  };
}

/** `engine-thread` stands for the script of the engine's worker, which is a program of its own. */
export const engineThread = part("engine-thread", "text", () => scriptText("engine/engine-thread.ts"));

/** The invented lists that come with the page, as web/engine/samples.ts has them, by their names. */
export async function sampleTexts() {
  const { sampleFiles } = await ownModule("engine/samples.ts");
  const texts = Object.values(sampleFiles).map(async (name) => [
    name,
    await readFile(path.join(root, "catalogue-samples", name), "utf8"),
  ]);
  return Object.fromEntries(await Promise.all(texts));
}

/** The texts of every language but English, by language, as web/texts/translations.ts gives them. */
export async function translatedTexts() {
  const { packedLanguages } = await ownModule("texts/translations.ts");
  return packedLanguages();
}
