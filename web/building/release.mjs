// The release: every form of the page, an example of a club's page, what a host has to say, and the licences of what is inside.
import { createHash } from "node:crypto";
import { readFile, readdir } from "node:fs/promises";
import path from "node:path";
import { elementFiles } from "./element.mjs";
import { apacheExample, nginxExample } from "./hosting.mjs";
import { licenceTexts } from "./licences.mjs";
import { root, web } from "./places.mjs";
import { pluginFiles } from "./plugin.mjs";
import { integrityOf } from "./policy.mjs";
import { singleFile } from "./single-file.mjs";
import { siteFiles } from "./site.mjs";
import { zipped } from "./zipped.mjs";

/** @returns {Promise<Record<string, string | Buffer>>} contents by their path in the release's folder */
export async function releaseFiles(how) {
  const element = await elementFiles(how);
  const site = await siteFiles(how);
  const page = await singleFile(how);
  const forUpload = {
    "saddlerule-fit.html": await singleFile({ ...how, uploaded: true }),
    "bikes.csv": await readFile(path.join(web, "downloads/bikes.csv")),
  };
  const licences = {
    LICENSE: await readFile(path.join(root, "LICENSE")),
    // Last: what is in the files is known once they are bundled.
    "LICENCES.txt": await licenceTexts(),
  };
  const download = async (name, files) =>
    zipped({ "README.txt": await readFile(path.join(web, "downloads", name)), ...files, ...licences });
  const files = {
    "README.md": await readFile(path.join(web, "site/README.md")),
    "CHANGELOG.md": await readFile(path.join(web, "downloads/CHANGELOG.md")),
    "saddlerule.html": page,
    ...within("site", site),
    ...within("element", { ...element, "LICENCES.txt": licences["LICENCES.txt"] }),
    ...within("media-library", forUpload),
    "saddlerule-site.zip": await download("site.txt", within("fit", site)),
    "saddlerule-element.zip": await download("element.txt", within("saddlerule", element)),
    "saddlerule-media-library.zip": await download("media-library.txt", forUpload),
    "saddlerule-wordpress.zip": zipped(await pluginFiles(element, licences)),
    ...within("club-page", await clubPage()),
    "hosting/nginx.conf": nginxExample(),
    "hosting/apache.htaccess": apacheExample(),
    "integrity.txt": integrityLines({ ...within("site", site), ...within("element", element) }),
    ...licences,
  };
  return { ...files, SHA256SUMS: sums(files) };
}

function within(folder, files) {
  return Object.fromEntries(Object.entries(files).map(([name, content]) => [`${folder}/${name}`, content]));
}

/** Where a club would have the folders fit/ and saddlerule/ beside its pages, the release has its own. */
const inRelease = {
  '"fit/': '"../site/',
  "=../bikes.json": "=../club-page/bikes.json",
  '"saddlerule/': '"../element/',
};

async function clubPage() {
  const folder = path.join(web, "club-page");
  const names = (await readdir(folder)).sort();
  const contents = async (name) => {
    const text = await readFile(path.join(folder, name), "utf8");
    if (!name.endsWith(".html")) return text;
    return Object.entries(inRelease).reduce((html, [from, to]) => html.replaceAll(from, to), text);
  };
  return Object.fromEntries(await Promise.all(names.map(async (name) => [name, await contents(name)])));
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
