// The lists that are open, as the files that are kept of them.
import type { EngineDoor } from "../engine/engine-door";
import { editedFile } from "../engine/list-history";
import type { EditedFile } from "../engine/list-history";
import type { ListOpening } from "../engine/list-opening";
import type { ListShelf } from "../engine/list-shelf";
import { longestText } from "../state/limits";
import { isUnsaved } from "../state/list-desk";
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";
import type { ListFile } from "./family-form";

export interface ListsAtHand {
  /** Changes whenever a list does. */
  mark: (state: PageState) => string;
  /** With all that was changed in their bytes. */
  files: () => Promise<ListFile[]>;
  /** Where that can be, the bytes as they were opened with the edits since: cheap after every step. */
  filesWithEdits: () => Promise<ListFile[]>;
  /** These in place of those that are open; false where one of them could not be opened. */
  replaceWith: (files: ListFile[]) => Promise<boolean>;
}

export function listsAtHand(
  store: Store<PageState>,
  shelf: Pick<ListShelf, "putAside" | "fileOf" | "close">,
  opening: Pick<ListOpening, "open">,
  door: Pick<EngineDoor, "history">,
): ListsAtHand {
  function filesOf(inEngine: EditedFile | null): ListFile[] {
    const { open, inHand } = store.read().desk;
    return open.flatMap((list): ListFile[] => {
      const { key, file, title, sample } = list;
      const edited = key === inHand ? inEngine : null;
      const kept = edited ?? shelf.fileOf(key);
      if (kept === null) return [];
      const { bytes, encoding = null } = kept;
      const edits = edited?.edits ?? [];
      // An address may be of any length.
      const name = (file ?? title ?? "").slice(0, longestText);
      return [{ name, sample, inHand: key === inHand, unsaved: isUnsaved(list), encoding, bytes, edits }];
    });
  }

  async function files(): Promise<ListFile[]> {
    await shelf.putAside();
    return filesOf(null);
  }

  return {
    mark: ({ desk }) =>
      JSON.stringify([
        desk.inHand,
        desk.open.map(({ key, undo, redo, savedAt }) => [key, undo.at(-1)?.key, redo.length, savedAt]),
      ]),
    files,
    async filesWithEdits() {
      const inEngine = editedFile(door.history());
      return inEngine === null ? files() : filesOf(inEngine);
    },
    async replaceWith(files) {
      for (const { key } of store.read().desk.open) await shelf.close(key);
      // The one that is in hand comes last, and so stays there.
      for (const file of [...files].sort((a, b) => Number(a.inHand) - Number(b.inHand))) {
        const { name, sample, unsaved, encoding, bytes, edits } = file;
        const read = encoding === null ? {} : { encoding };
        const kept = { kept: true, unsaved, edits, bytes: () => Promise.resolve(bytes) } as const;
        await opening.open({ name, sample, ...read, ...kept });
      }
      return store.read().desk.open.length === files.length;
    },
  };
}
