// The lists that are open besides the one in hand, each as the bytes of a file; going from one to the other.
import { firstEntries, isUnsaved, listInHand, neverSaved } from "../state/list-desk";
import { listOpened } from "../state/list-changes";
import { listClosed, listTaken, noListLeft, viewed } from "../state/list-steps";
import type { DeskAsking } from "./desk-asking";
import type { ListSource } from "./list-opening";
import type { ListHead, ListRowsAnswer, SaveAnswer } from "./wire";

/** A file's bytes, and how they are read where that is not UTF-8. */
export interface FileBytes {
  bytes: Uint8Array;
  encoding?: "windows-1252";
}

export interface ListShelf {
  /** What is in hand now is put aside as it is. */
  putAside: () => Promise<void>;
  take: (key: number) => Promise<void>;
  close: (key: number) => Promise<void>;
  start: (head: ListHead) => Promise<void>;
  /** The same within something else that is under way. */
  startFor: (head: ListHead) => Promise<void>;
  /** A file was opened and is in hand from now on. */
  opened: (source: ListSource, bytes: Uint8Array, answer: ListRowsAnswer) => void;
  fileOf: (key: number) => FileBytes | null;
}

export function encodingOf({ encoding }: FileBytes): { encoding?: "windows-1252" } {
  return encoding === undefined ? {} : { encoding };
}

export function listShelf({ desk, change, asked, inTurn }: DeskAsking): ListShelf {
  const files = new Map<number, FileBytes>();
  let lists = 0;

  async function putAside(): Promise<void> {
    const list = listInHand(desk());
    if (list === null || (list.undo.length + list.redo.length === 0 && files.has(list.key))) return;
    const saved = await asked<SaveAnswer>({ do: "save", form: "json" });
    if (saved !== null) files.set(list.key, { bytes: new TextEncoder().encode(saved.text) });
  }

  async function load(key: number): Promise<void> {
    const file = files.get(key);
    if (file === undefined) return;
    const request = { do: "load", ...encodingOf(file), to_mend: true, rows: firstEntries } as const;
    const answer = await asked<ListRowsAnswer>(request, file.bytes);
    if (answer === null) return;
    change(listOpened(answer, desk().open.find((list) => list.key === key)?.sample ?? false));
    change(listTaken(key, answer));
  }

  async function take(key: number): Promise<void> {
    await putAside();
    await load(key);
  }

  async function start(head: ListHead): Promise<void> {
    await putAside();
    const answer = await asked<ListRowsAnswer>({ do: "new_list", ...head, rows: firstEntries });
    if (answer === null) return;
    change(listOpened(answer, false));
    change(listTaken(++lists, answer, { file: null, sample: false, keptOn: null }));
  }

  return {
    putAside: inTurn(putAside),
    take: inTurn(take),
    startFor: start,
    start: inTurn(async (head: ListHead) => {
      await start(head);
      change(viewed("head"));
    }),
    close: inTurn(async (key: number) => {
      const wasInHand = desk().inHand === key;
      change(listClosed(key));
      files.delete(key);
      const next = desk().open.at(-1);
      if (!wasInHand) return;
      if (next !== undefined) {
        await load(next.key);
        return;
      }
      await asked({ do: "new_list", rows: firstEntries });
      change(noListLeft());
    }),
    opened(source, bytes, answer) {
      const { open } = desk();
      // The same file once more, mended in another program: it takes the place of what was read before.
      const again = source.kept
        ? undefined
        : open.find((list) => list.file === source.name && !isUnsaved(list));
      if (again !== undefined) change(listClosed(again.key));
      files.set(++lists, { bytes, ...(source.encoding && { encoding: source.encoding }) });
      const { name, sample, keptOn = null, named = false, unsaved = false } = source;
      const savedAt = unsaved ? neverSaved : 0;
      change(listTaken(lists, answer, { file: name, sample, keptOn, named, savedAt }));
    },
    fileOf: (key) => files.get(key) ?? null,
  };
}
