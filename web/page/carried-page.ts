// A page file's Saddlerule, with its engine, in the one element that the file has for it.
import { carriedEngine } from "../engine/carried-engine";
import { engineOpener } from "../engine/engine-opening";
import type { ListSource } from "../engine/list-opening";
import { samplesFrom } from "../engine/samples";
import { carriedText } from "./carried-blocks";
import { earlyEngine } from "./early-engine";
import { mountPage } from "./mount-page";
import { carriedList, pageWithList } from "./page-with-list";

/** The words of a language, or a list that comes with the page: each begins with its name, in a line of its own. */
async function carriedPiece(name: string): Promise<string> {
  const pieces = (await carriedText("texts")).split("\0");
  return pieces.find((piece) => piece.startsWith(`${name}\n`))?.slice(name.length + 1) ?? "";
}

/** @param listAt the list at an address that the file's own address names */
export function showCarried(listAt: (address: string) => ListSource): void {
  const engine = earlyEngine();
  if (engine === undefined) return;
  mountPage({
    engines: engineOpener(carriedEngine(engine)),
    packedWords: carriedPiece,
    samples: samplesFrom(carriedPiece),
    listAt,
    list: carriedList(),
    pageWithList,
  });
}
