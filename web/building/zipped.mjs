// Folders as one file to download: the same bytes for the same files, wherever and whenever they are packed.
import { zipSync } from "fflate";

/** The earliest day that the format knows (APPNOTE.TXT, 4.4.6, counts from 1980), by the packer's own clock. */
const noTime = new Date(1980, 0, 1);

/** @param {Record<string, string | Buffer>} files contents by their path in it @returns {Buffer} */
export function zipped(files) {
  const entries = Object.keys(files)
    .sort()
    .map((name) => [name, new Uint8Array(Buffer.from(files[name]))]);
  return Buffer.from(zipSync(Object.fromEntries(entries), { level: 9, mtime: noTime }));
}
