// The page file's script: Saddlerule with its engine, in the one element that the file has for it.
import { carriedEngine } from "../engine/carried-engine";
import { engineOpener } from "../engine/engine-opening";
import { unreachedSource } from "../engine/list-address";
import type { OtherLanguage } from "../texts/languages";
import { mountPage } from "./mount-page";
import { packedBlock } from "./packed-block";
import { unpack } from "./unpack";

/** Names of languages, each with its texts behind it. */
let languages: string[] | null = null;

function wordsOf(language: OtherLanguage): string {
  languages ??= new TextDecoder().decode(unpack(packedBlock("texts"))).split("\0");
  return languages[languages.indexOf(language) + 1] ?? "";
}

mountPage({
  engines: engineOpener(carriedEngine(() => packedBlock("engine"))),
  packedWords: (language) => Promise.resolve(wordsOf(language)),
  // A file that opens anywhere is one that goes nowhere: its policy forbids it every connection.
  listAt: unreachedSource,
});
