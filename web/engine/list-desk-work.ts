// All work on lists under one roof.
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";
import { deskAsking } from "./desk-asking";
import type { Engine } from "./engine-door";
import { listEditing } from "./list-editing";
import type { ListEditing } from "./list-editing";
import { listMerging } from "./list-merging";
import type { ListMerging } from "./list-merging";
import { listSaving } from "./list-saving";
import type { ListSaving } from "./list-saving";
import { listShelf } from "./list-shelf";
import type { ListShelf } from "./list-shelf";

export type ListWork = ListEditing & ListShelf & ListMerging & ListSaving;

export function listWork(
  store: Store<PageState>,
  engine: Engine,
  pageWithList?: (json: string) => string,
): ListWork {
  const asking = deskAsking(store, engine);
  const shelf = listShelf(asking);
  const saving = listSaving(store, pageWithList);
  return {
    ...listEditing(asking, engine, shelf),
    ...shelf,
    ...listMerging(asking, shelf),
    ...saving,
    opened(source, ...arrived) {
      shelf.opened(source, ...arrived);
      if (source.handle !== undefined) saving.cameFrom(asking.desk().inHand, source.handle);
    },
  };
}
