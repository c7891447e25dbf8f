// A page that holds what would be lost asks before it is left: unsaved work on a list, or what somebody measured.
import { holdsUnkept } from "../keeping/keeping-state";
import { holdsUnsaved } from "../state/list-desk";
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";

/** Listens only while there is something to lose: a page that does is not kept by the browser for coming back to. */
export function guardUnsaved(store: Store<PageState>): () => void {
  const ask = (event: BeforeUnloadEvent): void => {
    event.preventDefault();
  };
  const follow = (state: PageState): void => {
    if (holdsUnsaved(state.desk) || holdsUnkept(state)) addEventListener("beforeunload", ask);
    else removeEventListener("beforeunload", ask);
  };
  const stop = store.subscribe(follow);
  return () => {
    stop();
    removeEventListener("beforeunload", ask);
  };
}
