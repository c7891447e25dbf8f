// The element: the script that a club pastes into its page, what that script loads from beside itself, and the script for a
// page with Saddlerule in a frame; for developers the folder is a package. What is loaded is called by its content, so that two versions never mix in one folder.
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { outside, styleAsText, text, translatedTexts } from "./bundled-parts.mjs";
import { checkPage } from "./check-page.mjs";
import { packageFiles } from "./element-package.mjs";
import { deflated } from "./packing.mjs";
import { scriptText } from "./scripts.mjs";
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

  const words = {};
  for (const [language, texts] of Object.entries(await translatedTexts()))
    words[language] = put(`words-${language}`, "txt", texts);
  const files = {
    // Packed here, it is small on hosts that pack no wasm; and there is no host that does not know what to do with .bin.
    engine: put("engine", "bin", await deflated(await readFile(engine))),
    thread: put("thread", "js", await scriptText("engine/engine-thread.ts")),
    words,
  };
  const script = await scriptText("embedding/element-app.ts", {
    format: "esm",
    parts: [styleAsText(await sheetText("saddlerule.css")), text("element-files", addresses(files))],
    sizes,
  });
  const app = put("app", "js", script);
  const named = text("element-app-file", `export const app = ${JSON.stringify(app)};`);
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

const hashText = (content) => createHash("sha256").update(content).digest("hex");

/** Relative to the script, and written so that bundlers see which files it needs. */
function addresses({ words, ...files }) {
  const address = (name) => `new URL("./${name}", import.meta.url).href`;
  const object = Object.entries(words).map(([language, name]) => `${language}: ${address(name)}`);
  return [
    ...Object.entries(files).map(([name, file]) => `export const ${name} = ${address(file)};`),
    `export const words = { ${object.join(", ")} };`,
  ].join("\n");
}
