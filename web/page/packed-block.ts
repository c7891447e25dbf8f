// What the page file carries packed, each in an element of its own that no browser runs: the script, the other languages, the
// engine. building/single-file.mjs writes them.

/** @param name "script", "texts" or "engine" @returns the bytes as unpack.ts takes them */
export function packedBlock(name: string): Uint8Array {
  const characters = atob(document.getElementById(`packed-${name}`)?.textContent ?? "");
  const bytes = new Uint8Array(characters.length);
  for (let i = 0; i < bytes.length; ++i) bytes[i] = characters.charCodeAt(i);
  return bytes;
}
