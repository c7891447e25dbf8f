// The page file's script: Saddlerule with its engine, in the one element that the file has for it.
import packedEngine from "packed-engine";
import packedTexts from "packed-texts";
import { carriedEngine } from "../engine/carried-engine";
import type { PackedLanguages } from "../texts/translations";
import { mountSaddlerule } from "./mount-saddlerule";
import { unpack } from "./unpack";

let languages: PackedLanguages | null = null;

function allLanguages(): PackedLanguages {
  return (languages ??= JSON.parse(
    new TextDecoder().decode(unpack(packedBytes(packedTexts))),
  ) as PackedLanguages);
}

const host = document.getElementById("saddlerule");
if (host !== null) {
  mountSaddlerule(host, {
    engine: carriedEngine(() => packedBytes(packedEngine)),
    packedWords: async (language) => Promise.resolve(allLanguages()[language]),
    onLanguage: (language) => {
      document.documentElement.lang = language;
    },
  });
}

function packedBytes(base64: string): Uint8Array {
  const characters = atob(base64);
  const bytes = new Uint8Array(characters.length);
  for (let i = 0; i < bytes.length; ++i) bytes[i] = characters.charCodeAt(i);
  return bytes;
}
