// What the page file carries packed, each in an element of its own that no browser runs. building/single-file.mjs writes them,
// as the text of building/packing.mjs.
import { inflated } from "../engine/inflating";

type Block = "engine" | "texts" | "script";

export function carriedBlock(name: Block): ReadableStream<BufferSource> {
  const text = document.getElementById(`packed-${name}`)?.textContent ?? "";
  const bytes = new Uint8Array(text.length);
  let length = 0;
  let bits = 0;
  let held = 0;
  for (let i = 0; i < text.length; ++i) {
    const code = text.charCodeAt(i);
    const place = (code === 126 ? 60 : code) - 33;
    const isSeven = place < 58;
    const count = isSeven ? 7 : 6;
    bits = (bits << count) | (isSeven ? place : place - 29);
    held += count;
    if (held > 7) bytes[length++] = bits >> (held -= 8);
  }
  return new Blob([bytes.subarray(0, length)]).stream();
}

export function carriedText(name: Block): Promise<string> {
  return inflated(carriedBlock(name)).text();
}
