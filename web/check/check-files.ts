// Whether the host gives every file of the folder as it was built, under a type that browsers run, and packed.
import { good, note, wrong } from "./findings";
import type { Finding } from "./findings";

export interface CheckedFile {
  path: string;
  integrity: string;
}

/** As a browser asks for it that has nothing in its cache. */
const anew = { cache: "no-store" } as const;

const wanted: Record<string, RegExp> = {
  js: /javascript/,
  css: /^text\/css/,
  html: /^text\/html/,
};

/** Smaller ones are not worth it. */
const worthPacking = 10_000;

const listed = (names: string[]): string =>
  names.length > 5 ? `${names.slice(0, 5).join(", ")} and ${names.length - 5} more` : names.join(", ");

export async function checkFiles(files: CheckedFile[]): Promise<Finding[]> {
  const missing: string[] = [];
  const changed: string[] = [];
  const redirected: string[] = [];
  const mistyped: string[] = [];
  const unpacked: string[] = [];
  const charsets = new Set<string>();
  const look = async ({ path, integrity }: CheckedFile): Promise<void> => {
    // Many hosts redirect its full name to the folder.
    const address = path === "index.html" ? "./" : path;
    const whole = await fetch(address, { ...anew, integrity }).catch(() => null);
    const response = whole ?? (await fetch(address, anew).catch(() => null));
    if (response?.ok !== true) {
      missing.push(`${path} (${response === null ? "no answer" : response.status})`);
      return;
    }
    if (response.redirected) redirected.push(path);
    const type = response.headers.get("content-type") ?? "";
    const ending = path.split(".").at(-1) ?? "";
    if (wanted[ending]?.test(type) === false) mistyped.push(`${path} (${type || "no type"})`);
    const [, charset] = /charset="?([\w-]+)/i.exec(type) ?? [];
    if (charset !== undefined && !/^utf-?8$/i.test(charset)) charsets.add(charset);
    const { byteLength } = await response.arrayBuffer();
    const isPacked = /gzip|br|deflate|zstd/.test(response.headers.get("content-encoding") ?? "");
    if (!isPacked && byteLength > worthPacking && /^(js|css|html|txt|wasm)$/.test(ending))
      unpacked.push(path);
    if (whole === null) changed.push(path);
  };
  // One after another: a small host may answer many at once with an error.
  for (const file of files) await look(file);
  return [
    missing.length === 0
      ? good(`All ${files.length} files are there.`)
      : wrong(`Missing: ${listed(missing)}. Copy the whole folder again.`),
    changed.length === 0
      ? good("What is there is as it was built.")
      : wrong(
          `Changed on the way: ${listed(changed)}. Something shrinks, joins or converts files; leave these out there.`,
        ),
    ...(redirected.length === 0 ? [] : [wrong(`The host redirects these addresses: ${listed(redirected)}.`)]),
    mistyped.length === 0
      ? good("Scripts and pages have types that browsers take.")
      : wrong(`These have types that browsers do not take: ${listed(mistyped)}.`),
    unpacked.length === 0
      ? good("What is large is packed.")
      : note(`Not packed: ${listed(unpacked)}. Readers wait longer for these; turn on gzip.`),
    charsets.size === 0
      ? good("Pages are UTF-8.")
      : note(
          `The host calls texts ${[...charsets].join(", ")}. Saddlerule copes with that; a list with accents in it may not, unless it is saved as UTF-8.`,
        ),
  ];
}
