// The page file's script: Saddlerule with its engine, in the one element that the file has for it.
import { carriedEngine } from "../engine/carried-engine";
import { engineOpener } from "../engine/engine-opening";
import { unreachedSource } from "../engine/list-address";
import { samplesFrom } from "../engine/samples";
import { carriedText } from "./carried-blocks";
import { earlyEngine } from "./early-engine";
import { mountPage } from "./mount-page";

const engine = earlyEngine();

if (engine !== undefined)
  mountPage({
    engines: engineOpener(carriedEngine(engine)),
    packedWords: carriedText,
    samples: samplesFrom(async (_name, place) => (await carriedText("samples")).split("\0")[place] ?? ""),
    // A file that opens anywhere is one that goes nowhere: its policy forbids it every connection.
    listAt: unreachedSource,
  });
