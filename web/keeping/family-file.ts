// Everything a family keeps as one file, and back. Lists are in it as their text, or in base64 where they are none.
import { flag, listOf, mark, oneOf, orNull, shape, text, Unexpected, whereSaid } from "./checked";
import { family, formVersion, readVersioned } from "./family-form";
import type { Family, FormFault, ListFile, Whole } from "./family-form";

/** Tells the file from all others. */
const form = "saddlerule family";

/** Any number of them: lists are checked once more when they are opened. */
const bytesAsText = mark(Infinity);

/** Its bytes have all edits in them already. */
interface WrittenList extends Omit<ListFile, "bytes" | "edits"> {
  text: string | null;
  base64: string | null;
}

const writtenLists = listOf(
  shape<WrittenList>({
    name: text(),
    sample: flag,
    inHand: flag,
    unsaved: whereSaid(flag, false),
    encoding: oneOf("windows-1252", null),
    text: orNull(bytesAsText),
    base64: orNull(bytesAsText),
  }),
);

export function fileText(kept: Family, lists: ListFile[]): string {
  const written = { form, version: formVersion, ...kept, lists: lists.map(listWritten) };
  return `${JSON.stringify(written, null, 1)}\n`;
}

function listWritten({ bytes, name, sample, inHand, unsaved, encoding }: ListFile): WrittenList {
  const list = { name, sample, inHand, unsaved, encoding };
  try {
    const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
    return { ...list, text, base64: null };
  } catch {
    const characters = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
    return { ...list, text: null, base64: btoa(characters) };
  }
}

function listRead({ text, base64, ...written }: WrittenList): ListFile {
  const list = { ...written, edits: [] };
  if (base64 === null) return { ...list, bytes: new TextEncoder().encode(text ?? "") };
  try {
    return { ...list, bytes: Uint8Array.from(atob(base64), (character) => character.charCodeAt(0)) };
  } catch {
    throw new Unexpected("lists");
  }
}

export function readFileText(content: string): Whole<{ family: Family; lists: ListFile[] }> | FormFault {
  let value: unknown;
  try {
    value = JSON.parse(content);
  } catch {
    // The start of such a file, cut off, is a damaged one; anything else was never one.
    const cut = content.trimStart().startsWith("{") && content.slice(0, 200).includes(`"${form}"`);
    return { code: cut ? "damaged" : "foreign", where: "" };
  }
  if ((Object(value) as { form?: unknown }).form !== form) return { code: "foreign", where: "" };
  return readVersioned(value, (whole, where, lost) => ({
    family: family(whole, where, lost),
    lists: shape({ lists: writtenLists })(whole, where, lost).lists.map(listRead),
  }));
}
