// What stands in a script for files that are no scripts; web/page/bundled-files.d.ts tells the compiler of them.
import { readFile } from "node:fs/promises";
import path from "node:path";
import { build } from "esbuild";
import { packed } from "./packing.mjs";
import { web } from "./places.mjs";
import { scriptText } from "./scripts.mjs";

/** A name that is imported, and what it gives: a text, or bytes in base64. */
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

/** The script carries the component's style as a text, and adopts it into its shadow root. */
export function styleAsText(sheet) {
  return {
    name: "style-as-text",
    setup(bundle) {
      bundle.onLoad({ filter: /saddlerule\.css$/ }, () => ({ contents: sheet, loader: "text" }));
    },
  };
}

/** `packed-engine` stands for the built engine, so that no source file names a build folder. */
export const packedEngine = (engine) =>
  part("packed-engine", "base64", async () => packed(await readFile(engine)));

/** `packed-texts` stands for all languages but English: they are data, and wait packed until one of them is wanted. */
export const packedTexts = part("packed-texts", "base64", async () =>
  packed(Buffer.from(JSON.stringify(await translatedTexts()))),
);

/** `engine-thread` stands for the script of the engine's worker, which is a program of its own. */
export const engineThread = part("engine-thread", "text", () => scriptText("engine/engine-thread.ts"));

/** The texts of every language but English, by language, as web/texts/translations.ts gives them. */
export async function translatedTexts() {
  const bundled = await build({
    entryPoints: [path.join(web, "texts/translations.ts")],
    bundle: true,
    format: "esm",
    write: false,
  });
  const code = Buffer.from(bundled.outputFiles[0].contents).toString("base64");
  const { packedLanguages } = await import(`data:text/javascript;base64,${code}`);
  return packedLanguages();
}
