// The release: every form of the page, an example of a club's page, what a host has to say, and the licences of what is inside.
import { createHash } from "node:crypto";
import { readFile, readdir } from "node:fs/promises";
import path from "node:path";
import { elementFiles } from "./element.mjs";
import { apacheExample, nginxExample } from "./hosting.mjs";
import { licenceTexts } from "./licences.mjs";
import { root, web } from "./places.mjs";
import { integrityOf } from "./policy.mjs";
import { singleFile } from "./single-file.mjs";
import { siteFiles } from "./site.mjs";

/** @returns {Promise<Record<string, string | Buffer>>} contents by their path in the release's folder */
export async function releaseFiles(how) {
  const element = within("element", await elementFiles(how));
  const site = within("site", await siteFiles(how));
  const files = {
    "saddlerule.html": await singleFile(how),
    ...site,
    ...element,
    ...within("club-page", await clubPage()),
    "hosting/nginx.conf": nginxExample(),
    "hosting/apache.htaccess": apacheExample(),
    "integrity.txt": integrityLines({ ...site, ...element }),
    LICENSE: await readFile(path.join(root, "LICENSE")),
    // Last: what is in the files is known once they are bundled.
    "LICENCES.txt": await licenceTexts(),
  };
  return { ...files, SHA256SUMS: sums(files) };
}

function within(folder, files) {
  return Object.fromEntries(Object.entries(files).map(([name, content]) => [`${folder}/${name}`, content]));
}

async function clubPage() {
  const folder = path.join(web, "club-page");
  const names = (await readdir(folder)).sort();
  return Object.fromEntries(
    await Promise.all(names.map(async (name) => [name, await readFile(path.join(folder, name))])),
  );
}

/** What an `integrity` attribute says of each script and style. */
export function integrityLines(files) {
  const named = Object.entries(files).filter(([name]) => /\.(js|css)$/.test(name));
  return named.map(([name, content]) => `${integrityOf(content)}  ${name}\n`).join("");
}

/** As `sha256sum --check` takes them. */
function sums(files) {
  const sum = (content) => createHash("sha256").update(content).digest("hex");
  return Object.keys(files)
    .sort()
    .map((name) => `${sum(files[name])}  ${name}\n`)
    .join("");
}
