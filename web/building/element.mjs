// The element: the script that a club pastes into its page, what that script loads from beside itself, and the script for a
// page with Saddlerule in a frame; for developers the folder is a package. What is loaded is called by its content, so that two versions never mix in one folder.
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { englishTexts, outside, styleAsText, text } from "./bundled-parts.mjs";
import { checkPage } from "./check-page.mjs";
import { packageFiles } from "./element-package.mjs";
import { textsInParts } from "./element-texts.mjs";
import { deflated } from "./packing.mjs";
import { scriptText, scriptsInParts } from "./scripts.mjs";
import { sheetText } from "./style-sheets.mjs";

/**
 * @param {{ engine: string, sizes?: boolean }} how `engine`: the file of the wasm; `sizes`: says what each file adds to the script
 * @returns {Promise<Record<string, string | Buffer>>} contents by their name; all of them are in one folder
 */
export async function elementFiles({ engine, sizes }) {
  const hashed = {};
  const put = (stem, ending, content) => {
    const name = `saddlerule-${stem}-${hashText(content).slice(0, 12)}.${ending}`;
    hashed[name] = content;
    return name;
  };

  const texts = await textsInParts();
  const wordsOf = (stem, { words }) =>
    Object.fromEntries(
      Object.entries(words).map(([language, packed]) => [
        language,
        put(`${stem}-${language}`, "txt", packed),
      ]),
    );
  const files = {
    // Packed here, it is small on hosts that pack no wasm; and there is no host that does not know what to do with .bin.
    engine: put("engine", "bin", await deflated(await readFile(engine))),
    thread: put("thread", "js", await scriptText("engine/engine-thread.ts")),
    words: wordsOf("words", texts.first),
    laterWords: wordsOf("later-words", texts.later),
  };
  const scripts = await elementScripts(files, texts, sizes);
  const { app, shared } = putScripts(scripts, put);
  const named = text(
    "element-app-file",
    Object.entries({ app, shared, engine: files.engine })
      .map(([name, file]) => `export const ${name} = ${JSON.stringify(file)};`)
      .join("\n"),
  );
  const pasted = {
    "saddlerule-fit.js": await scriptText("embedding/element-loader.ts", { parts: [named] }),
    "saddlerule-frame.js": await scriptText("embedding/frame-host.ts"),
  };
  return {
    ...pasted,
    ...(await checkPage("element", { ...pasted, ...hashed }, files.engine)),
    "index.js": await scriptText("embedding/element-module.ts", {
      format: "esm",
      parts: [named, outside("element-app", `./${app}`)],
    }),
    ...hashed,
    ...(await packageFiles()),
  };
}

/** What is loaded near the screen, and what comes later. */
export async function elementScripts(files, texts, sizes = false) {
  const scripts = await scriptsInParts("embedding/element-entry.ts", {
    parts: [
      styleAsText(await sheetText("element-first.css")),
      styleAsText(await sheetText("element-later.css"), "element-later.css"),
      englishTexts(texts.first.english),
      text("later-texts", `export const english = ${JSON.stringify(texts.later.english)};`),
      text("element-files", addresses(files)),
    ],
    sizes,
  });
  const stemOf = (name) => /^element-(entry|later)/.exec(name)?.[1] ?? "shared";
  return scripts.map((script) => ({ ...script, stem: stemOf(script.name).replace("entry", "app") }));
}

/** Each under a name of its own content, in which those that it imports have theirs. Gives the names by what they are. */
function putScripts(scripts, put) {
  const names = new Map();
  const placed = scripts.map(({ name, stem, text }) => {
    const content = [...names].reduce((script, [from, to]) => script.replaceAll(from, to), text);
    names.set(name, put(stem, "js", content));
    return [stem, names.get(name)];
  });
  return Object.fromEntries(placed);
}

const hashText = (content) => createHash("sha256").update(content).digest("hex");

/** Relative to the script, and written so that bundlers see which files it needs. */
function addresses({ words, laterWords, ...files }) {
  const address = (name) => `new URL("./${name}", import.meta.url).href`;
  const object = (named) =>
    `{ ${Object.entries(named)
      .map(([language, name]) => `${language}: ${address(name)}`)
      .join(", ")} }`;
  return [
    ...Object.entries(files).map(([name, file]) => `export const ${name} = ${address(file)};`),
    `export const words = ${object(words)};`,
    `export const laterWords = ${object(laterWords)};`,
  ].join("\n");
}
