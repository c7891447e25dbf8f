// The page file's script: Saddlerule with its engine, in the one element that the file has for it.
import { carriedEngine } from "../engine/carried-engine";
import { engineOpener } from "../engine/engine-opening";
import { unreachedSource } from "../engine/list-address";
import type { PackedLanguages } from "../texts/translations";
import { mountPage } from "./mount-page";
import { packedBlock } from "./packed-block";
import { unpack } from "./unpack";

let languages: PackedLanguages | null = null;

function allLanguages(): PackedLanguages {
  return (languages ??= JSON.parse(
    new TextDecoder().decode(unpack(packedBlock("texts"))),
  ) as PackedLanguages);
}

mountPage({
  engines: engineOpener(carriedEngine(() => packedBlock("engine"))),
  packedWords: (language) => Promise.resolve(allLanguages()[language]),
  // A file that opens anywhere is one that goes nowhere: its policy forbids it every connection.
  listAt: unreachedSource,
});
