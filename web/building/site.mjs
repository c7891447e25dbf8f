// The site: the page as a folder of files for a club's own host. Whatever is in files/ is called by its content, so that one
// version's files never stand in for another's; the service worker knows all of its own version by their hashes.
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import path from "node:path";
import { sampleTexts, styleAsText, text, translatedTexts } from "./bundled-parts.mjs";
import { checkPage } from "./check-page.mjs";
import { firstSight } from "./first-sight.mjs";
import { apacheExample } from "./hosting.mjs";
import { byteOrderMark } from "./output.mjs";
import { iconText } from "./page-icon.mjs";
import { web } from "./places.mjs";
import { integrityOf, policyText, siteDirectives } from "./policy.mjs";
import { scriptText } from "./scripts.mjs";
import { sheetText } from "./style-sheets.mjs";

/**
 * @param {{ engine: string, sizes?: boolean }} how `engine`: the file of the wasm; `sizes`: says what each file adds to the script
 * @returns {Promise<Record<string, string | Buffer>>} contents by their path in the site's folder
 */
export async function siteFiles({ engine, sizes }) {
  const hashed = {};
  /** Puts a file where its content says, and gives the path. */
  const put = (name, content) => {
    const { name: stem, ext } = path.parse(name);
    const place = `files/${stem}.${hashText(content).slice(0, 12)}${ext}`;
    hashed[place] = content;
    return place;
  };

  const words = {};
  for (const [language, texts] of Object.entries(await translatedTexts()))
    words[language] = put(`words-${language}.txt`, texts);
  const places = {
    engine: put("engine.wasm", await readFile(engine)),
    thread: put("engine-thread.js", await scriptText("engine/engine-thread.ts")),
    words,
    samples: Object.values(await sampleTexts()),
  };
  const own = values("site-files", places);
  const sealed = styleAsText(await sheetText("saddlerule.css"));
  const icons = await pictures(put);
  /** A file that the page names, with what it must be. */
  const named = (name, content) => ({ place: put(name, content), integrity: integrityOf(content) });
  const page = {
    "index.html": indexPage({
      early: named("early.js", await scriptText("site/early-entry.ts", { parts: [own] })),
      script: named("saddlerule.js", await scriptText("site/site-entry.ts", { parts: [sealed, own], sizes })),
      sheet: named("page.css", await sheetText("page-file.css")),
      icons,
      first: await firstSight(),
    }),
    "manifest.webmanifest": manifest(icons),
    ...hashed,
  };
  const kept = { ...page, "service-worker.js": await serviceWorker(page) };
  return {
    ...kept,
    ...(await checkPage("site", kept, places.engine)),
    ".htaccess": apacheExample(),
    "site-settings.json": await readFile(path.join(web, "site/site-settings.json")),
  };
}

const hashText = (content) => createHash("sha256").update(content).digest("hex");

/** A module of constants, for a script to import by `name`. */
function values(name, constants) {
  const lines = Object.entries(constants).map(
    ([key, value]) => `export const ${key} = ${JSON.stringify(value)};`,
  );
  return text(name, lines.join("\n"));
}

/** The icons, drawn by tests/support/draw-icons.mjs, by what they are for. */
async function pictures(put) {
  const drawn = async (name) => put(name, await readFile(path.join(web, "site/icons", name)));
  return {
    tab: put("icon.svg", await iconText()),
    small: await drawn("icon-192.png"),
    large: await drawn("icon-512.png"),
    maskable: await drawn("icon-maskable-512.png"),
    apple: await drawn("icon-apple-180.png"),
  };
}

/** The ground of the page in light and dark, as web/style/tokens.css has it. */
const ground = { light: "#f3f4f0", dark: "#13181a" };

function manifest({ small, large, maskable }) {
  const png = (src, side, purpose) => ({ src, sizes: `${side}x${side}`, type: "image/png", purpose });
  const members = {
    id: "./",
    name: "Saddlerule",
    short_name: "Saddlerule",
    description: "Which bike fits a growing child, how high to set the saddle, and how long it will last.",
    lang: "en",
    dir: "ltr",
    start_url: "./",
    scope: "./",
    display: "standalone",
    background_color: ground.light,
    theme_color: ground.light,
    icons: [png(small, 192, "any"), png(large, 512, "any"), png(maskable, 512, "maskable")],
  };
  return `${JSON.stringify(members, null, 2)}\n`;
}

function indexPage({ early, script, sheet, icons, first }) {
  return `${byteOrderMark}<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policyText(siteDirectives)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="theme-color" media="(prefers-color-scheme: light)" content="${ground.light}">
<meta name="theme-color" media="(prefers-color-scheme: dark)" content="${ground.dark}">
<meta name="referrer" content="no-referrer">
<title>Saddlerule</title>
<link rel="stylesheet" href="${sheet.place}" integrity="${sheet.integrity}">
<script src="${early.place}" integrity="${early.integrity}" async></script>
<script src="${script.place}" integrity="${script.integrity}" defer></script>
<link rel="icon" href="${icons.tab}" type="image/svg+xml">
<link rel="apple-touch-icon" href="${icons.apple}">
<link rel="manifest" href="manifest.webmanifest">
</head>
<body>
<main id="saddlerule">${first}</main>
</body>
</html>
`;
}

/** Its version is another one for any other byte of the site, its own script included. */
async function serviceWorker(page) {
  const files = Object.entries(page).map(([file, content]) => ({
    path: file,
    integrity: integrityOf(content),
  }));
  const bundle = (version) =>
    scriptText("service-worker/service-worker.ts", { parts: [values("version-files", { version, files })] });
  return bundle(hashText(await bundle("")).slice(0, 12));
}
