// The lists that are open, as the files that are kept of them.
import type { ListOpening } from "../engine/list-opening";
import type { ListShelf } from "../engine/list-shelf";
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";
import type { ListFile } from "./family-form";

export interface ListsAtHand {
  /** Changes whenever a list does. */
  mark: (state: PageState) => string;
  files: () => Promise<ListFile[]>;
  /** These in place of those that are open; false where one of them could not be opened. */
  replaceWith: (files: ListFile[]) => Promise<boolean>;
}

export function listsAtHand(
  store: Store<PageState>,
  shelf: Pick<ListShelf, "putAside" | "fileOf" | "close">,
  opening: Pick<ListOpening, "open">,
): ListsAtHand {
  return {
    mark: ({ desk }) =>
      JSON.stringify([
        desk.inHand,
        desk.open.map(({ key, undo, redo }) => [key, undo.at(-1)?.key, redo.length]),
      ]),
    async files() {
      await shelf.putAside();
      const { open, inHand } = store.read().desk;
      return open.flatMap(({ key, file, title, sample }): ListFile[] => {
        const kept = shelf.fileOf(key);
        const name = file ?? title ?? "";
        return kept === null
          ? []
          : [{ name, sample, inHand: key === inHand, encoding: kept.encoding ?? null, bytes: kept.bytes }];
      });
    },
    async replaceWith(files) {
      for (const { key } of store.read().desk.open) await shelf.close(key);
      // The one that is in hand comes last, and so stays there.
      for (const file of [...files].sort((a, b) => Number(a.inHand) - Number(b.inHand))) {
        const { name, sample, encoding, bytes } = file;
        const read = encoding === null ? {} : { encoding };
        await opening.open({ name, sample, kept: true, ...read, bytes: () => Promise.resolve(bytes) });
      }
      return store.read().desk.open.length === files.length;
    },
  };
}
