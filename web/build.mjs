// Builds the page: engine, script and style in one HTML file that opens from a phone's storage with no network.
// The file carries its own Content-Security-Policy; two builds of the same sources give the same bytes.
//
//   node build.mjs [--engine FILE.wasm] [--out FILE.html] [--sizes]
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { gzipSync } from "node:zlib";
import { analyzeMetafile, build } from "esbuild";

const here = path.dirname(fileURLToPath(import.meta.url));
const root = path.dirname(here);

const { values: wanted } = parseArgs({
  options: {
    engine: { type: "string", default: path.join(root, "build/wasm/wasm-bindings/saddlerule.wasm") },
    out: { type: "string", default: path.join(root, "build/page/saddlerule.html") },
    /** Says what each file adds to the script. */
    sizes: { type: "boolean", default: false },
  },
});

/** Oldest browsers the page is written for. */
const target = ["chrome111", "firefox121", "safari16.4"];

/** A style sheet as one minified text, its imports put in place. */
async function sheetText(name) {
  const sheet = await build({
    entryPoints: [path.join(here, "style", name)],
    bundle: true,
    minify: true,
    write: false,
    target,
    charset: "utf8",
  });
  return sheet.outputFiles[0].text.trim();
}

const pageStyle = await sheetText("page-file.css");
const sealedStyle = await sheetText("saddlerule.css");

/** The script carries the component's style as a text, and adopts it into its shadow root. */
const styleAsText = {
  name: "style-as-text",
  setup(bundle) {
    bundle.onLoad({ filter: /saddlerule\.css$/ }, () => ({ contents: sealedStyle, loader: "text" }));
  },
};

/** Bytes as web/page/unpack.ts unpacks them. xz leaves their length open in the header, so it is put in. */
function packed(bytes) {
  const options = ["--format=lzma", "--lzma1=preset=9e,pb=0,nice=273", "--stdout"];
  const result = execFileSync("xz", options, { input: bytes, maxBuffer: 64 * 1024 * 1024 });
  result.writeBigUInt64LE(BigInt(bytes.length), 5);
  return result;
}

/**
 * `packed-engine` stands for the built engine, so that no source file names a build folder. It is packed before it becomes
 * base64 text: text made of plain wasm would be packed by no server nearly as well.
 */
const packedEngine = {
  name: "packed-engine",
  setup(bundle) {
    bundle.onResolve({ filter: /^packed-engine$/ }, () => ({ path: path.resolve(wanted.engine) }));
    bundle.onLoad({ filter: /\.wasm$/ }, async ({ path: file }) => ({
      contents: packed(await readFile(file)),
      loader: "base64",
    }));
  },
};

/** `packed-texts` stands for all languages but English: they are data, and wait packed until one of them is wanted. */
const packedTexts = {
  name: "packed-texts",
  setup(bundle) {
    bundle.onResolve({ filter: /^packed-texts$/ }, () => ({
      path: path.join(here, "texts/translations.ts"),
      namespace: "texts",
    }));
    bundle.onLoad({ filter: /.*/, namespace: "texts" }, async ({ path: file }) => {
      const bundled = await build({ entryPoints: [file], bundle: true, format: "esm", write: false });
      const code = Buffer.from(bundled.outputFiles[0].contents).toString("base64");
      const { packedLanguages } = await import(`data:text/javascript;base64,${code}`);
      return { contents: packed(Buffer.from(JSON.stringify(packedLanguages()))), loader: "base64" };
    });
  },
};

/** `engine-thread` stands for the script of the engine's worker, which is a program of its own. */
const engineThread = {
  name: "engine-thread",
  setup(bundle) {
    bundle.onResolve({ filter: /^engine-thread$/ }, () => ({
      path: path.join(here, "engine/engine-thread.ts"),
      namespace: "thread",
    }));
    bundle.onLoad({ filter: /.*/, namespace: "thread" }, async ({ path: file }) => {
      const thread = await build({ ...scriptForm, entryPoints: [file] });
      return { contents: thread.outputFiles[0].text.trim(), loader: "text" };
    });
  },
};

const scriptForm = {
  bundle: true,
  minify: true,
  format: "iife",
  write: false,
  target,
  charset: "utf8",
  legalComments: "none",
};

const script = await build({
  ...scriptForm,
  entryPoints: [path.join(here, "page/page-entry.ts")],
  loader: { ".json": "text" },
  plugins: [packedEngine, packedTexts, styleAsText, engineThread],
  metafile: true,
});
if (wanted.sizes) console.log(await analyzeMetafile(script.metafile));

const scriptText = script.outputFiles[0].text.trim();

const hashOf = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;

/** What would end an inline element early has no business in it. */
function refuseEndTag(text, tag) {
  if (new RegExp(`</${tag}|<!--`, "i").test(text))
    throw new Error(`the page's ${tag} holds </${tag} or <!--`);
  return text;
}

/** The sign of its tab; without one, browsers ask the server for it. */
const icon = (await readFile(path.join(here, "page/icon.svg"), "utf8")).replace(/>\s+</g, "><").trim();

const policy = [
  "default-src 'none'",
  "img-src data:",
  `script-src ${hashOf(scriptText)} 'wasm-unsafe-eval'`,
  // The second hash is for browsers that cannot adopt a style sheet into a shadow root.
  `style-src ${hashOf(pageStyle)} ${hashOf(sealedStyle)}`,
  // The engine's thread is started from a text inside this script.
  "worker-src blob:",
  "connect-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

const html = `<!doctype html>
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
<main id="saddlerule"><noscript>Saddlerule works out the fit on this device and needs JavaScript for it.</noscript></main>
<script>${refuseEndTag(scriptText, "script")}</script>
</body>
</html>
`;

await mkdir(path.dirname(wanted.out), { recursive: true });
await writeFile(wanted.out, html);
const compressed = gzipSync(html, { level: 9 }).length;
console.log(
  `${path.relative(root, wanted.out)}: ${html.length} characters, ${compressed} bytes with gzip -9`,
);
