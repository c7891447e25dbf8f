// What the page file carries packed, each in an element of its own that no browser runs. building/single-file.mjs writes them.
import { unpack } from "./unpack";

/** @returns the bytes as unpack.ts takes them */
export function packedBlock(name: "script" | "engine" | "texts" | "samples"): Uint8Array {
  const characters = atob(document.getElementById(`packed-${name}`)?.textContent ?? "");
  const bytes = new Uint8Array(characters.length);
  for (let i = 0; i < bytes.length; ++i) bytes[i] = characters.charCodeAt(i);
  return bytes;
}

/** @returns gives the text of a name, of a block of names with their texts behind them, unpacked when the first is wanted */
export function namedTexts(name: "texts" | "samples"): (named: string) => Promise<string> {
  let all: string[] | null = null;
  return (named) => {
    all ??= new TextDecoder().decode(unpack(packedBlock(name))).split("\0");
    return Promise.resolve(all[all.indexOf(named) + 1] ?? "");
  };
}
