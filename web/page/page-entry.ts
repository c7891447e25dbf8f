// The page file's script: Saddlerule with its engine, in the one element that the file has for it.
import packedEngine from "packed-engine";
import packedTexts from "packed-texts";
import type { PackedLanguages } from "../texts/translations";
import { mountSaddlerule } from "./mount-saddlerule";

const host = document.getElementById("saddlerule");
if (host !== null) {
  mountSaddlerule(host, {
    engineBytes: () => unpacked(packedEngine).arrayBuffer(),
    packedLanguages: () => unpacked(packedTexts).json() as Promise<PackedLanguages>,
    onLanguage: (language) => {
      document.documentElement.lang = language;
    },
  });
}

function unpacked(base64: string): Response {
  const packed = Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
  return new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip")));
}
