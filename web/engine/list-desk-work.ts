// All work on lists under one roof.
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";
import type { DeskAsking } from "./desk-asking";
import type { Engine } from "./engine-door";
import { listEditing } from "./list-editing";
import type { ListEditing } from "./list-editing";
import { listMerging } from "./list-merging";
import type { ListMerging } from "./list-merging";
import { listSaving } from "./list-saving";
import type { ListSaving } from "./list-saving";
import type { ListShelf } from "./list-shelf";

export type ListWork = ListEditing & ListShelf & ListMerging & ListSaving;

export function listWork(
  store: Store<PageState>,
  engine: Engine,
  asking: DeskAsking,
  shelf: ListShelf,
  pageWithList?: (json: string) => string,
): ListWork {
  return {
    ...listEditing(asking, engine, shelf),
    ...shelf,
    ...listMerging(asking, shelf),
    ...listSaving(store, pageWithList),
  };
}
