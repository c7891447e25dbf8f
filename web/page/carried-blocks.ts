// What the page file carries packed, each in an element of its own that no browser runs. building/single-file.mjs writes them.
import { inflated } from "../engine/inflating";

type Block = "engine" | "texts" | "script";

export function carriedBlock(name: Block): ReadableStream<BufferSource> {
  const characters = atob(document.getElementById(`packed-${name}`)?.textContent ?? "");
  const bytes = new Uint8Array(characters.length);
  for (let i = 0; i < bytes.length; ++i) bytes[i] = characters.charCodeAt(i);
  return new Blob([bytes]).stream();
}

export function carriedText(name: Block): Promise<string> {
  return inflated(carriedBlock(name)).text();
}
