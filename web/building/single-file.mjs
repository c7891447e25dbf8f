// The single file: engine, script and style in one HTML file that opens from a phone's storage with no network. It carries
// its own Content-Security-Policy. The engine, its own script, the sample lists and the languages other than
// English travel packed in it.
import { readFile } from "node:fs/promises";
import { englishTexts, engineThread, sampleTexts, styleAsText } from "./bundled-parts.mjs";
import { textsOfForm } from "./form-texts.mjs";
import { firstSight } from "./first-sight.mjs";
import { deflated, textOf } from "./packing.mjs";
import { iconText } from "./page-icon.mjs";
import { byteOrderMark } from "./output.mjs";
import { hashOf, policyText, trustedTypes } from "./policy.mjs";
import { scriptText } from "./scripts.mjs";
import { sheetText } from "./style-sheets.mjs";

/** Texts that no file says: it is whole, is no site, and is between nobody's tags. */
const neverSaid = /^(site|later)\.|\.inline_rewritten$/;

/** A file that goes nowhere says so, and nothing else of addresses. */
const ofAddresses = /^problems\.wording\.address_(?!offline$)/;

/**
 * The HTML of the page around the engine in the file `engine`. `sizes`: says what each file adds to the script; `uploaded`: for a
 * media library, from where it may fetch a list beside it.
 */
export async function singleFile({ engine, sizes, uploaded = false }) {
  const pageStyle = await sheetText("page-file.css");
  const sealedStyle = await sheetText("saddlerule.css");
  const texts = await textsOfForm((path) => !(neverSaid.test(path) || (!uploaded && ofAddresses.test(path))));
  const script = await scriptText(uploaded ? "page/upload-entry.ts" : "page/page-entry.ts", {
    parts: [styleAsText(sealedStyle), engineThread, englishTexts(texts.english)],
    sizes,
  });
  const start = await scriptText("page/file-start.ts");
  const end = await scriptText("page/carried-script.ts");
  const blocks = {
    engine: await readFile(engine),
    // Together: they are alike, and none is wanted at once.
    texts: Object.entries({ ...texts.words, ...(await sampleTexts()) })
      .map(([name, text]) => `${name}\n${text}`)
      .join("\0"),
    script,
  };
  const reach = uploaded ? "'self'" : "'none'";
  return assembled({ pageStyle, sealedStyle, start, end, blocks, reach, icon: await iconText() });
}

async function assembled({ pageStyle, sealedStyle, start, end, blocks, reach, icon }) {
  const policy = policyText({
    "default-src": ["'none'"],
    "img-src": ["data:"],
    "script-src": [start, end, blocks.script].map(hashOf).concat("'wasm-unsafe-eval'"),
    // The second hash is for browsers that cannot adopt a style sheet into a shadow root.
    "style-src": [hashOf(pageStyle), hashOf(sealedStyle)],
    // The engine's thread is started from a text inside this script.
    "worker-src": ["blob:"],
    "connect-src": [reach],
    "base-uri": ["'none'"],
    "form-action": ["'none'"],
    ...trustedTypes,
    "trusted-types": [...trustedTypes["trusted-types"], "saddlerule-script"],
  });
  const [engine, ...others] = Object.entries(blocks);
  // The icon is the sign of its tab; without one, browsers ask the server for it.
  return `${byteOrderMark}<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>Saddlerule</title>
<link rel="icon" href="data:image/svg+xml,${encodeURIComponent(icon)}">
<style>${refuseEndTag(pageStyle, "style")}</style>
</head>
<body>
<main id="saddlerule">${await firstSight()}</main>
${await packedBlock(engine)}
<script>${refuseEndTag(start, "script")}</script>
${(await Promise.all(others.map(packedBlock))).join("\n")}
<script>${refuseEndTag(end, "script")}</script>
</body>
</html>
`;
}

/** As web/page/carried-blocks.ts reads it. A browser keeps the text of a script whose type it does not know, and does nothing with it. */
async function packedBlock([name, content]) {
  const packed = await deflated(content);
  return `<script type="application/x-packed" id="packed-${name}">${textOf(packed)}</script>`;
}

/** What would end an inline element early has no business in it. */
function refuseEndTag(text, tag) {
  if (new RegExp(`</${tag}|<!--`, "i").test(text))
    throw new Error(`the page's ${tag} holds </${tag} or <!--`);
  return text;
}
