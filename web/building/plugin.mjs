// The plugin for the content management system that most clubs have: the element's files, and the few lines that put it into pages.
import { readFile } from "node:fs/promises";
import path from "node:path";
import { web } from "./places.mjs";

/**
 * @param {Record<string, string | Buffer>} element its files by their name
 * @param {Record<string, string | Buffer>} licences
 * @returns {Promise<Record<string, string | Buffer>>} contents by their path in the one folder that such a zip has
 */
export async function pluginFiles(element, licences) {
  const { version } = JSON.parse(await readFile(path.join(web, "package.json"), "utf8"));
  const own = (name) => readFile(path.join(web, "plugin", name), "utf8");
  // Types and the like are for developers, who have the element's folder.
  const served = Object.entries(element).filter(([name]) => /^saddlerule-.*\.(js|bin|txt)$/.test(name));
  const files = {
    "saddlerule.php": (await own("saddlerule.php")).replace(/(?<=\* Version: )0$/m, version),
    "block.js": await own("block.js"),
    "readme.txt": await own("readme.txt"),
    ...licences,
    ...Object.fromEntries(served.map(([name, content]) => [`element/${name}`, content])),
  };
  return Object.fromEntries(Object.entries(files).map(([name, content]) => [`saddlerule/${name}`, content]));
}
