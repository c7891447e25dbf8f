// The page file's script: Saddlerule with its engine, in the one element that the file has for it.
import packedEngine from "packed-engine";
import { mountSaddlerule } from "./mount-saddlerule";

const host = document.getElementById("saddlerule");
if (host !== null) mountSaddlerule(host, { engineBytes: unpacked });

async function unpacked(): Promise<ArrayBuffer> {
  const packed = Uint8Array.from(atob(packedEngine), (character) => character.charCodeAt(0));
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(stream).arrayBuffer();
}
