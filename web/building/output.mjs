// Writing what was built, and saying how large it is.
import { mkdir, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { root } from "./places.mjs";
import { integrityOf } from "./policy.mjs";

/**
 * Begins a page: it is UTF-8 then, whatever else a server says of all its pages (WHATWG Encoding, "BOM sniff"; the hash of an inline script
 * counts on it). Escapes for every letter beyond ASCII would take some hundred bytes.
 */
export const byteOrderMark = "\ufeff";

export async function writeOut(file, content) {
  await mkdir(path.dirname(file), { recursive: true });
  await writeFile(file, content);
  const compressed = gzipSync(content, { level: 9 }).length;
  // What an `integrity` attribute says of it, for pages that name it.
  const integrity = /\.(js|css)$/.test(file) ? `, ${integrityOf(content)}` : "";
  console.log(
    `${path.relative(root, file)}: ${content.length} characters, ${compressed} bytes packed by zlib${integrity}`,
  );
}

/** Writes a folder anew: nothing of an older build stays in it. `files`: contents by their path in it. */
export async function writeOutFolder(folder, files) {
  await rm(folder, { recursive: true, force: true });
  for (const [name, content] of Object.entries(files)) await writeOut(path.join(folder, name), content);
}
