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

/** `path` below web/. */
export async function pageModule(path) {
  const outfile = join(folder, path.replaceAll("/", "-").replace(/ts$/, "mjs"));
  await build({ entryPoints: [join(root, "web", path)], bundle: true, format: "esm", outfile });
  return import(pathToFileURL(outfile).href);
}
