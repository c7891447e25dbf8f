// Builds the page. The same sources give the same bytes.
//
//   node build.mjs [page|element|site|release] [--engine FILE.wasm] [--out PATH] [--sizes] [--watch]
//
// `page` is the single file, `element` the scripts for a club's own page, `site` the folder for a host, and `release`
// all of them with their checksums and licences. `--out` is that file, or that folder; `--sizes` says what each source adds to the script.
// `--watch` builds again whenever a source changes, and leaves scripts readable. What each is made of is in a module in building/.
import { watch } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { elementFiles } from "./building/element.mjs";
import { writeOut, writeOutFolder } from "./building/output.mjs";
import { builtEngine, root, web } from "./building/places.mjs";
import { releaseFiles } from "./building/release.mjs";
import { singleFile } from "./building/single-file.mjs";
import { leaveReadable } from "./building/scripts.mjs";
import { siteFiles } from "./building/site.mjs";

const { values, positionals } = parseArgs({
  options: {
    engine: { type: "string", default: builtEngine },
    out: { type: "string" },
    sizes: { type: "boolean", default: false },
    watch: { type: "boolean", default: false },
  },
  allowPositionals: true,
});

/** By name: where a target goes unless told otherwise, and how it gets there. */
const targets = {
  page: {
    out: "build/page/saddlerule.html",
    build: async (out) => writeOut(out, await singleFile(values)),
  },
  element: {
    out: "build/element",
    build: async (out) => writeOutFolder(out, await elementFiles(values)),
  },
  site: {
    out: "build/site",
    build: async (out) => writeOutFolder(out, await siteFiles(values)),
  },
  release: {
    out: "build/release",
    build: async (out) => writeOutFolder(out, await releaseFiles(values)),
  },
};

const [name = "page", ...rest] = positionals;
const target = targets[name];
if (target === undefined || rest.length > 0) {
  console.error(
    `usage: node build.mjs [${Object.keys(targets).join("|")}] [--engine FILE] [--out PATH] [--sizes] [--watch]`,
  );
  process.exit(2);
}

const build = () => target.build(values.out ?? path.join(root, target.out));
if (values.watch) {
  leaveReadable();
  await buildAgainAndAgain();
} else await build();

/** A source that is wrong is said so, and waited for. */
async function buildAgainAndAgain() {
  let changed = false;
  let wake = () => undefined;
  const change = () => {
    changed = true;
    wake();
  };
  const told = (event, name) => {
    if (!name?.includes("node_modules")) change();
  };
  watch(web, { recursive: true }, told);
  // The folder, since a new file takes the place of the old one.
  watch(path.dirname(values.engine), (event, name) => {
    if (name === path.basename(values.engine)) change();
  });
  for (;;) {
    changed = false;
    const began = performance.now();
    await build().then(
      () => console.log(`built in ${Math.round(performance.now() - began)} ms; waiting for a change`),
      (failure) => console.error(String(failure)),
    );
    // Editors write a file in several steps: one build for all of them.
    if (!changed) await new Promise((changedNow) => (wake = changedNow));
    await new Promise((settled) => setTimeout(settled, 50));
  }
}
