// A list of bikes in a file of the device.
import type { ListSource } from "./list-opening";
import { refused } from "./refusal";
import type { Refusal } from "./refusal";

/** The table of a spreadsheet; null where the bytes are no spreadsheet (see spreadsheet.ts). */
export type TableReader = (bytes: Uint8Array<ArrayBuffer>) => Promise<string | Refusal | null>;

const mebibyte = 1024 * 1024;

/** Far beyond what the engine takes: a film must not be read into memory to be refused. */
const mostRead = 64 * mebibyte;

export function fileSource(file: File, tableOf: TableReader): ListSource {
  return {
    name: file.name,
    sample: false,
    bytes: async () =>
      file.size > mostRead
        ? tooLarge(file.size)
        : listBytes(new Uint8Array(await file.arrayBuffer()), tableOf),
  };
}

/** Of a spreadsheet, those of its table, with the line that names what is between its cells. */
async function listBytes(
  bytes: Uint8Array<ArrayBuffer>,
  tableOf: TableReader,
): Promise<Uint8Array | Refusal> {
  // Spreadsheets are packed as archives are: of any other file, no reader of spreadsheets need be there.
  const isPacked = bytes[0] === 0x50 && bytes[1] === 0x4b;
  const table = isPacked ? await tableOf(bytes) : null;
  return typeof table === "string" ? new TextEncoder().encode(`sep=\t\n${table}`) : (table ?? bytes);
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
