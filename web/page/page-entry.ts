// The page file's script: Saddlerule with its engine, in the one element that the file has for it.
import { carriedEngine } from "../engine/carried-engine";
import { engineOpener } from "../engine/engine-opening";
import { unreachedSource } from "../engine/list-address";
import { samplesFrom } from "../engine/samples";
import { mountPage } from "./mount-page";
import { namedTexts, packedBlock } from "./packed-block";

mountPage({
  engines: engineOpener(carriedEngine(() => packedBlock("engine"))),
  packedWords: namedTexts("texts"),
  samples: samplesFrom(namedTexts("samples")),
  // A file that opens anywhere is one that goes nowhere: its policy forbids it every connection.
  listAt: unreachedSource,
});
