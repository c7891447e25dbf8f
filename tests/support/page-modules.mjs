// Modules of the page, bundled for Node, for tests that need no browser.

import { createRequire } from "node:module";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "./built-engine.mjs";

/** The page's own tools: its bundler, its compiler. */
export const pageRequire = createRequire(join(root, "web/package.json"));
const { build } = pageRequire("esbuild");

const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
process.on("exit", () => rmSync(folder, { recursive: true }));

/** Paths below web/. Several become one module, which share what they import. */
export async function pageModule(...paths) {
  const outfile = join(folder, paths.join("-").replaceAll("/", "-").replace(/ts$/, "mjs"));
  const contents = paths.map((path) => `export * from "./${path}";`).join("\n");
  const stdin = { contents, resolveDir: join(root, "web") };
  await build({ stdin, bundle: true, format: "esm", outfile });
  return import(pathToFileURL(outfile).href);
}
