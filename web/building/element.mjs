// The element: the script that a club pastes into its page, what that script loads from beside itself, and the script for a
// page with Saddlerule in a frame. What is loaded is called by its content, so that two versions never mix in one folder.
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { styleAsText, text, translatedTexts } from "./bundled-parts.mjs";
import { packedEngine, packedText } from "./packing.mjs";
import { builtUnpacker } from "./places.mjs";
import { scriptText, sharingScripts } from "./scripts.mjs";
import { sheetText } from "./style-sheets.mjs";

/**
 * @param {{ engine: string, sizes?: boolean }} how `engine`: the file of the wasm; `sizes`: says what each file adds to the script
 * @returns {Promise<Record<string, string | Buffer>>} contents by their name; all of them lie in one folder
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
    words[language] = put(`words-${language}`, "bin", packedText(texts));
  // Packed here, they are small on hosts that pack nothing; and there is no host that does not know what to do with .bin.
  const files = {
    engine: put("engine", "bin", packedEngine(await readFile(engine))),
    unpacker: put("unpacker", "bin", await readFile(builtUnpacker)),
    thread: put("thread", "js", await scriptText("engine/engine-thread.ts")),
    words,
  };
  const { app, start, later } = await appScripts({ files, sizes });
  Object.assign(hashed, { [app.name]: app.text, [later.name]: later.text });
  return {
    "saddlerule-fit.js": await scriptText("embedding/element-loader.ts", {
      parts: [text("element-app-file", constants({ app: app.name, start }))],
    }),
    "saddlerule-frame.js": await scriptText("embedding/frame-host.ts"),
    ...hashed,
  };
}

/**
 * The script that every element runs, and the one with what is loaded later. Each imports the other, so both are called by
 * the content of the two.
 */
async function appScripts({ files, sizes }) {
  const scripts = await sharingScripts({
    entries: { app: "embedding/element-app.ts", later: "embedding/element-later.ts" },
    parts: [
      styleAsText(await sheetText("saddlerule.css")),
      text("element-files", constants({ ...files, later: "./later.js" })),
    ],
    sizes,
  });
  // What is shared is all of the app: its own script only passes on what the shared one gives.
  const passing = /^import\{(\w+) as \w+\}from"\.\/(shared\.js)";export\{\w+ as start\};$/.exec(
    scripts["app.js"],
  );
  if (passing === null || Object.keys(scripts).length !== 3)
    throw new Error("the element's scripts no longer share all of the app");
  const [, start, shared] = passing;
  const content = hashText(scripts[shared] + scripts["later.js"]).slice(0, 12);
  const names = { [shared]: `saddlerule-app-${content}.js`, "later.js": `saddlerule-later-${content}.js` };
  const script = (name) => ({
    name: names[name],
    text: scripts[name].replace(/"\.\/(shared|later)\.js"/g, (place) =>
      JSON.stringify(`./${names[place.slice(3, -1)]}`),
    ),
  });
  return { app: script(shared), start, later: script("later.js") };
}

const hashText = (content) => createHash("sha256").update(content).digest("hex");

function constants(values) {
  return Object.entries(values)
    .map(([name, value]) => `export const ${name} = ${JSON.stringify(value)};`)
    .join("\n");
}
