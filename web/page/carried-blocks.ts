// What the page file carries packed, each in an element of its own that no browser runs. building/single-file.mjs writes them.
import type { OtherLanguage } from "../texts/languages";
import { unpackText } from "./unpacking";

type PackedText = "script" | "samples" | OtherLanguage;

export function packedBlock(name: "unpacker" | "engine" | PackedText): Uint8Array<ArrayBuffer> {
  const characters = atob(document.getElementById(`packed-${name}`)?.textContent ?? "");
  const bytes = new Uint8Array(characters.length);
  for (let i = 0; i < bytes.length; ++i) bytes[i] = characters.charCodeAt(i);
  return bytes;
}

let inflated: Promise<ArrayBuffer> | null = null;

/** The wasm that unpacks all other blocks; it is packed itself, as browsers unpack by themselves (RFC 1951). */
export function carriedUnpacker(): Promise<ArrayBuffer> {
  return (inflated ??= new Response(
    new Blob([packedBlock("unpacker")]).stream().pipeThrough(new DecompressionStream("deflate-raw")),
  ).arrayBuffer());
}

export async function packedText(name: PackedText): Promise<string> {
  return unpackText(await carriedUnpacker(), packedBlock(name));
}
