// Scripts, each bundled into one text.
import { readFile } from "node:fs/promises";
import path from "node:path";
import { analyzeMetafile, build } from "esbuild";
import { minify } from "terser";
import { browsers } from "./browsers.mjs";
import { web } from "./places.mjs";

const form = {
  bundle: true,
  minify: true,
  format: "iife",
  write: false,
  target: browsers,
  charset: "utf8",
  legalComments: "none",
};

let readable = false;

/** From now on scripts are left as they were written, which takes a tenth of the time: for whoever works on them. */
export function leaveReadable() {
  readable = true;
}

/** Packages of which something is in a script that was bundled: their licences go with it. */
export const packagesTakenIn = new Set();

/**
 * @param {string} entry a file of web/
 * @param {{ format?: "iife" | "esm", parts?: import("esbuild").Plugin[], sizes?: boolean }} [how] `parts`: what to use for files that are no scripts
 *   (see bundled-parts.mjs); `sizes`: says what each file adds
 */
export async function scriptText(entry, { format = form.format, parts = [], sizes = false } = {}) {
  const script = await bundled({ format, entryPoints: [path.join(web, entry)], plugins: parts }, sizes);
  return smaller(script.outputFiles[0].text, format);
}

/**
 * A module together with those that it imports only while it runs, and a file for what they share.
 * @param {string} entry a file of web/
 * @returns {Promise<{ name: string, text: string, sources: string[] }[]>} each after those that it imports
 */
export async function scriptsInParts(entry, { parts = [], sizes = false } = {}) {
  const { outputFiles, metafile } = await bundled(
    {
      format: "esm",
      splitting: true,
      outdir: "parts",
      // Without a hash, which goes by the folder of the build: short names are given out by how often letters occur.
      chunkNames: "[name]",
      entryPoints: [path.join(web, entry)],
      plugins: parts,
    },
    sizes,
  );
  const texts = new Map(outputFiles.map(({ path: file, text }) => [path.basename(file), text]));
  const outputs = new Map(
    Object.entries(metafile.outputs).map(([file, output]) => [path.basename(file), output]),
  );
  const inOrder = [];
  const visit = (name) => {
    if (inOrder.some((script) => script.name === name)) return;
    const { imports, inputs } = outputs.get(name);
    for (const { path: file, external } of imports) if (!external) visit(path.basename(file));
    inOrder.push({ name, sources: Object.keys(inputs) });
  };
  for (const [name, { entryPoint }] of outputs) if (entryPoint?.endsWith(entry)) visit(name);
  return Promise.all(
    inOrder.map(async (script) => ({ ...script, text: await smaller(texts.get(script.name), "esm") })),
  );
}

/** Of the engine's sentences in English a script carries those that readers see: the page has its own for some. */
const englishSentences = {
  name: "english-sentences",
  setup(bundle) {
    bundle.onLoad({ filter: /english\.json$/ }, async ({ path: file }) => {
      const english = JSON.parse(await readFile(file, "utf8"));
      const { forParents } = await ownModule("texts/for-parents.ts");
      for (const code of Object.keys(forParents)) delete english.problems[code];
      return { contents: JSON.stringify(english), loader: "json" };
    });
  },
};

async function bundled({ plugins = [], ...how }, sizes = false) {
  const script = await build({
    ...form,
    minify: !readable,
    metafile: true,
    ...how,
    plugins: [englishSentences, ...plugins],
  });
  for (const input of Object.keys(script.metafile.inputs)) {
    const [, name] = /node_modules\/((?:@[^/]+\/)?[^/]+)\/(?!.*node_modules\/)/.exec(input) ?? [];
    if (name !== undefined) packagesTakenIn.add(name);
  }
  if (sizes) console.log(await analyzeMetafile(script.metafile));
  return script;
}

/** The bundler leaves much longer than need be: this takes a thirtieth off a script, packed. */
async function smaller(script, format) {
  if (readable) return script;
  const { code } = await minify(script, {
    ecma: 2020,
    // Nothing of a plain script gets out of the function that the bundler put around it.
    module: format === "esm",
    compress: { passes: 3 },
  });
  return code.trim();
}

/** A module of web/ for the build itself to use; `entry` is its file. */
export async function ownModule(entry) {
  const script = await bundled({ format: "esm", entryPoints: [path.join(web, entry)] });
  return import(
    `data:text/javascript;base64,${Buffer.from(script.outputFiles[0].contents).toString("base64")}`
  );
}
