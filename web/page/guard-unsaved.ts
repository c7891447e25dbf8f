// A page that holds unsaved work asks before it is left.
import { holdsUnsaved } from "../state/list-desk";
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";

/** Listens only while there is something to lose: a page that does is not kept by the browser for coming back to. */
export function guardUnsaved(store: Store<PageState>): () => void {
  const ask = (event: BeforeUnloadEvent): void => {
    event.preventDefault();
  };
  const follow = ({ desk }: PageState): void => {
    if (holdsUnsaved(desk)) addEventListener("beforeunload", ask);
    else removeEventListener("beforeunload", ask);
  };
  const stop = store.subscribe(follow);
  return () => {
    stop();
    removeEventListener("beforeunload", ask);
  };
}
