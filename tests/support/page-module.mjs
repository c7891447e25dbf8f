// The page's own modules, bundled for Node one by one.

import { createRequire } from "node:module";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "./built-engine.mjs";

const { build } = createRequire(join(root, "web/package.json"))("esbuild");

/** `path` is the module's place in web. */
export async function pageModule(path) {
  const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
  try {
    const outfile = join(folder, "module.mjs");
    await build({ entryPoints: [join(root, "web", path)], bundle: true, format: "esm", outfile });
    return await import(pathToFileURL(outfile).href);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
