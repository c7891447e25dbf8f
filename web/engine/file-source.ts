// A list of bikes in a file of the device, and lists in spreadsheets, wherever they come from.
import type { ListSource } from "./list-opening";
import { refused } from "./refusal";
import type { Refusal } from "./refusal";

/** Of any other file, no reader of spreadsheets need be there (see spreadsheet.ts). */
export type Unpacker = (bytes: Uint8Array) => Promise<Uint8Array | Refusal>;

const mebibyte = 1024 * 1024;

/** Far beyond what the engine takes: a film must not be read into memory to be refused. */
const mostRead = 64 * mebibyte;

export function fileSource(file: File): ListSource {
  return {
    name: file.name,
    sample: false,
    bytes: async () =>
      file.size > mostRead ? tooLarge(file.size) : new Uint8Array(await file.arrayBuffer()),
  };
}

/** The same list, and where it is packed as spreadsheets and archives are, what is in it. */
export function unpackedSource(source: ListSource, unpack: Unpacker): ListSource {
  return {
    ...source,
    bytes: async (...told) => {
      const bytes = await source.bytes(...told);
      return bytes instanceof Uint8Array && bytes[0] === 0x50 && bytes[1] === 0x4b ? unpack(bytes) : bytes;
    },
  };
}

function tooLarge(size: number): Refusal {
  return refused("file_too_large", { size: Math.ceil(size / mebibyte), limit: 8 });
}

/** What a page may do with a file that its reader picked. */
export interface FileHandle {
  name: string;
  getFile: () => Promise<File>;
  createWritable: () => Promise<{ write: (data: string) => Promise<void>; close: () => Promise<void> }>;
}

/** Browsers that let a page write into a file have these; it is not in the language's own types. */
interface Pickers {
  showSaveFilePicker?: (wish: { suggestedName: string }) => Promise<FileHandle>;
  showOpenFilePicker?: () => Promise<FileHandle[]>;
}

let pickersServe = true;

export const pickers = (): Pickers => (pickersServe ? (globalThis as Pickers) : {});

/** The reader thought better of it. */
export function isChangeOfMind(failure: unknown): boolean {
  return failure instanceof DOMException && failure.name === "AbortError";
}

/**
 * A file that its reader picks, to be written into later; null: the reader thought better of it. Rejects where files are not
 * to be had in this way.
 */
export async function pickedSource(sourceOf: (file: File) => ListSource): Promise<ListSource | null> {
  try {
    const [handle] = (await pickers().showOpenFilePicker?.()) ?? [];
    return handle === undefined ? null : { ...sourceOf(await handle.getFile()), handle };
  } catch (failure) {
    if (isChangeOfMind(failure)) return null;
    // A page inside a stranger's has the picker and may not use it.
    pickersServe = false;
    throw failure;
  }
}
