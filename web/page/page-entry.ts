// The page file's script: Saddlerule with its engine, in the one element that the file has for it.
import packedEngine from "packed-engine";
import packedTexts from "packed-texts";
import type { PackedLanguages } from "../texts/translations";
import { mountSaddlerule } from "./mount-saddlerule";
import { unpack } from "./unpack";

const host = document.getElementById("saddlerule");
if (host !== null) {
  mountSaddlerule(host, {
    engineBytes: () => Promise.resolve(unpacked(packedEngine).buffer),
    packedLanguages: () =>
      Promise.resolve(JSON.parse(new TextDecoder().decode(unpacked(packedTexts))) as PackedLanguages),
    onLanguage: (language) => {
      document.documentElement.lang = language;
    },
  });
}

function unpacked(base64: string): Uint8Array<ArrayBuffer> {
  return unpack(Uint8Array.from(atob(base64), (character) => character.charCodeAt(0)));
}
