// A list that the page around or its address names does not push out a bike that somebody is typing: it waits.
import { holdsDraft } from "../state/list-desk";
import { onDesk } from "../state/list-steps";
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";

/** Resolves once the list of that name may come; false: another one was named meanwhile. */
export function afterDraft(store: Store<PageState>): (name: string) => Promise<boolean> {
  let named = 0;
  return async (name) => {
    const mine = ++named;
    if (holdsDraft(store.read().desk)) {
      store.change(onDesk(() => ({ waits: name })));
      await draftGone(store);
      if (mine === named) store.change(onDesk(() => ({ waits: null })));
    }
    return mine === named;
  };
}

function draftGone(store: Store<PageState>): Promise<void> {
  return new Promise((resolve) => {
    const stop = store.subscribe(({ desk }) => {
      if (holdsDraft(desk)) return;
      stop();
      resolve();
    });
  });
}
