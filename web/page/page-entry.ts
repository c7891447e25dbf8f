// The page file's script: Saddlerule with its engine, in the one element that the file has for it.
import { carriedEngine } from "../engine/carried-engine";
import { engineOpener } from "../engine/engine-opening";
import { unreachedSource } from "../engine/list-address";
import { samplesFrom } from "../engine/samples";
import { mountPage } from "./mount-page";
import { carriedUnpacker, packedBlock, packedText } from "./packed-block";

mountPage({
  engines: engineOpener(
    carriedEngine(async () => ({ packed: packedBlock("engine"), unpacker: await carriedUnpacker() })),
  ),
  packedWords: packedText,
  samples: samplesFrom(async (_name, place) => (await packedText("samples")).split("\0")[place] ?? ""),
  // A file that opens anywhere is one that goes nowhere: its policy forbids it every connection.
  listAt: unreachedSource,
});
