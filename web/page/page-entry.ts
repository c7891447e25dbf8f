// The page file's script: Saddlerule with its engine, in the one element that the file has for it.
import packedEngine from "packed-engine";
import packedTexts from "packed-texts";
import { carriedEngine } from "../engine/carried-engine";
import { engineOpener } from "../engine/engine-opening";
import { unreachedSource } from "../engine/list-address";
import type { PackedLanguages } from "../texts/translations";
import { mountPage } from "./mount-page";
import { unpack } from "./unpack";

let languages: PackedLanguages | null = null;

function allLanguages(): PackedLanguages {
  return (languages ??= JSON.parse(
    new TextDecoder().decode(unpack(packedBytes(packedTexts))),
  ) as PackedLanguages);
}

mountPage({
  engines: engineOpener(carriedEngine(() => packedBytes(packedEngine))),
  packedWords: (language) => Promise.resolve(allLanguages()[language]),
  // A file that opens anywhere is one that goes nowhere: its policy forbids it every connection.
  listAt: unreachedSource,
});

function packedBytes(base64: string): Uint8Array {
  const characters = atob(base64);
  const bytes = new Uint8Array(characters.length);
  for (let i = 0; i < bytes.length; ++i) bytes[i] = characters.charCodeAt(i);
  return bytes;
}
