// Writing the list in hand to a file: into one that the reader picked, where the browser lets pages do that, or as a download.
import { isChangeOfMind, pickers } from "./file-source";
import type { FileHandle } from "./file-source";
import { answerTo } from "../state/answers";
import { listInHand } from "../state/list-desk";
import type { DeskState, SaveWish } from "../state/list-desk";
import { listSaved, saveFailed } from "../state/list-steps";
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";
import { savedQuestion } from "./desk-questions";
import type { SaveAnswer } from "./wire";

export interface ListSaving {
  /** Whether the page itself can be saved with the list in it. */
  savesPage: boolean;
  /** The file that saving again would write into, if its form is the chosen one. */
  sameFile: (desk: DeskState) => string | null;
  saveAgain: () => Promise<void>;
  saveAsNew: () => Promise<void>;
  /** The list in hand came from this file. */
  cameFrom: (key: number, handle: FileHandle) => void;
}

const endings: Record<SaveWish["form"], string> = { json: "json", csv: "csv", page: "html" };

/** A name for the file, from the one it had or from the list's title. */
function fileName(desk: DeskState): string {
  const { form, only } = desk.save;
  const list = listInHand(desk);
  const name = (list?.file ?? list?.title ?? "").replace(/\.(json|csv|txt|tsv|xlsx)$/i, "");
  const plain = name.replace(/[^\p{L}\p{N}._-]+/gu, "-").slice(0, 80);
  return `${plain || "bikes"}${only === "set_aside" ? "-set-aside" : ""}.${endings[form]}`;
}

export function download(name: string, text: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text]));
  link.download = name;
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 60_000);
}

/** Spreadsheets take a table for UTF-8 only with a mark at its start. */
const forSpreadsheets = (table: string): string => `\ufeff${table}`;

export function downloadTable(name: string, table: string): void {
  download(name, forSpreadsheets(table));
}

export function listSaving(store: Store<PageState>, pageWithList?: (json: string) => string): ListSaving {
  const handles = new Map<number, FileHandle>();
  const desk = (): DeskState => store.read().desk;

  const text = (form: SaveWish["form"], { text }: SaveAnswer): string =>
    form === "csv" ? forSpreadsheets(text) : form === "page" ? (pageWithList?.(text) ?? text) : text;

  /** The list as it would be saved now; null: the engine has not told yet. */
  const saved = (): SaveAnswer | null => {
    const { answer, fresh } = answerTo(store.read(), savedQuestion);
    return fresh ? answer : null;
  };

  async function write(handle: FileHandle, text: string): Promise<void> {
    const file = await handle.createWritable();
    await file.write(text);
    await file.close();
  }

  /** A file that leaves something out, or no list that can be opened again, is a copy, and what it was made from stays unsaved. */
  function wrote(name: string, only: SaveWish["only"], answer: SaveAnswer): void {
    const isWhole = desk().save.form !== "page" && only === "all" && answer.left_out.length === 0;
    store.change(listSaved(name, isWhole));
  }

  const sameFile: ListSaving["sameFile"] = ({ inHand, save }) => {
    const name = handles.get(inHand)?.name ?? null;
    return save.only === "all" && name?.toLowerCase().endsWith(`.${endings[save.form]}`) ? name : null;
  };

  return {
    savesPage: pageWithList !== undefined,
    sameFile,
    async saveAgain() {
      const { inHand, save } = desk();
      const handle = handles.get(inHand);
      const answer = saved();
      if (handle === undefined || answer === null) return;
      try {
        await write(handle, text(save.form, answer));
        wrote(handle.name, save.only, answer);
      } catch (failure) {
        if (!isChangeOfMind(failure)) store.change(saveFailed());
      }
    },
    async saveAsNew() {
      const { inHand, save } = desk();
      const answer = saved();
      if (answer === null) return;
      const name = fileName(desk());

      try {
        const handle = await pickers().showSaveFilePicker?.({ suggestedName: name });
        if (handle === undefined) download(name, text(save.form, answer));
        else {
          await write(handle, text(save.form, answer));
          if (save.only === "all" && save.form !== "page") handles.set(inHand, handle);
        }
        wrote(handle?.name ?? name, save.only, answer);
      } catch (failure) {
        if (isChangeOfMind(failure)) return;
        // A page inside another one may not write files.
        download(name, text(save.form, answer));
        wrote(name, save.only, answer);
      }
    },
    cameFrom(key, handle) {
      handles.set(key, handle);
    },
  };
}
