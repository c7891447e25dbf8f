// The licences of what is inside the built files, each with its text: packages that the bundler took in, and the libraries that
// the engine is linked with, as Debian's packages have them.
import { readFile, readdir } from "node:fs/promises";
import path from "node:path";
import { web } from "./places.mjs";
import { packagesTakenIn } from "./scripts.mjs";

const debianText = (debianPackage) => readFile(`/usr/share/doc/${debianPackage}/copyright`, "utf8");

/** Where the parts of Emscripten are that end up in the engine: its own glue, the C and C++ libraries, the compiler's helpers. */
const linked = ["system/lib/libc/", "system/lib/libcxx/", "system/lib/libcxxabi/", "system/lib/compiler-rt/"];

/** One text for all that has been bundled so far, and for the engine. */
export async function licenceTexts() {
  const sections = [
    ...(await Promise.all([...packagesTakenIn].sort().map(packageLicence))),
    ["nlohmann_json, in the engine", await debianText("nlohmann-json3-dev")],
    ["musl, in the engine", await readFile("/usr/share/emscripten/system/lib/libc/musl/COPYRIGHT", "utf8")],
    ["Emscripten's libraries, in the engine", parts(await debianText("emscripten"), linked)],
  ];
  const head = `Saddlerule is under the Apache License 2.0: see LICENSE. In its files are also parts of the works below, each
under its own licence.
`;
  const rule = "=".repeat(100);
  return [head, ...sections.map(([title, text]) => `${rule}\n${title}\n${rule}\n\n${text.trim()}\n`)].join(
    "\n",
  );
}

async function packageLicence(name) {
  const folder = path.join(web, "node_modules", name);
  const { version, license } = JSON.parse(await readFile(path.join(folder, "package.json"), "utf8"));
  const file = (await readdir(folder)).find((name) => /^licen[cs]e/i.test(name));
  if (file === undefined) throw new Error(`the package ${name} brings no text of its licence`);
  return [`${name} ${version} (${license})`, await readFile(path.join(folder, file), "utf8")];
}

/**
 * Of a machine-readable copyright file (https://www.debian.org/doc/packaging-manuals/copyright-format/1.0/), the paragraphs
 * about all files, and about those in `folders`, and the text of every licence that these name.
 */
export function parts(copyright, folders) {
  const paragraphs = copyright.split(/\n\s*\n(?=\S)/).map((text) => ({ text, fields: fieldsOf(text) }));
  const files = paragraphs.filter(({ fields }) => {
    const patterns = fields.Files?.split(/\s+/) ?? [];
    return patterns.some((one) => one === "*" || folders.some((folder) => one.startsWith(folder)));
  });
  const texts = new Map(
    paragraphs
      .filter(({ fields }) => fields.License !== undefined && fields.Files === undefined)
      .map((paragraph) => [paragraph.fields.License.split("\n")[0].trim().toLowerCase(), paragraph]),
  );
  const named = new Set();
  for (const { fields } of files) {
    const [expression, ...ownText] = fields.License.split("\n");
    for (const name of licencesIn(expression)) {
      // Some say at once what the licence is.
      if (texts.has(name)) named.add(name);
      else if (ownText.length === 0) throw new Error(`no text of the licence ${name}`);
    }
  }
  const licences = [...named].sort().map((name) => texts.get(name));
  return [...files, ...licences].map(({ text }) => text).join("\n\n");
}

/** A field begins at the start of a line, and goes on in those that are indented. */
function fieldsOf(paragraph) {
  const fields = {};
  for (const [, name, value] of paragraph.matchAll(/^([\w-]+):((?:.*)(?:\n[ \t].*)*)/gm))
    fields[name] = value.trim();
  return fields;
}

/** "Expat or NCSA~LLVM" names two. */
function licencesIn(expression) {
  const names = expression.toLowerCase().split(/\s+(?:or|and|with)\s+|,\s*/);
  return names.filter((name) => name !== "" && !name.endsWith("exception"));
}
