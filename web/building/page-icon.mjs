// The page's sign.
import { readFile } from "node:fs/promises";
import path from "node:path";
import { web } from "./places.mjs";

/** The SVG of web/page/icon.svg on one line. */
export async function iconText() {
  return (await readFile(path.join(web, "page/icon.svg"), "utf8")).replace(/>\s+</g, "><").trim();
}
