// Screens as entries of the browser's history: Back returns to the screen before, as it was scrolled, and Forward to the one
// after. What is opened on top of a screen, such as one entry of a list, is an entry too, so that Back closes it first.
import type { DeskView } from "../state/list-desk";
import type { PageState, Screen } from "../state/page-state";
import { went } from "../state/screen-changes";
import { viewed } from "../state/list-steps";
import type { Change, Store } from "../state/store";

/** What an entry of the history comes back to. */
interface Place {
  screen: Screen;
  /** What is open on the screen of the list. */
  view: DeskView;
}

/** What an entry of the history holds; nothing that was typed is in it. */
interface Mark {
  key: number;
  place: Place;
  /** The entry before it, where that is known to be ours. */
  before: { key: number; place: Place } | null;
}

/** By the name of whoever made them: several elements of a page share one history, with each other and with the page. */
type Marks = Record<string, Mark>;

export interface HistoryOptions {
  /** Tells the marks of one from those of another. */
  name: string;
  /** The address of the document with a screen in it; left out, the address stays as it is. */
  addressOf?: (state: PageState) => string;
  /** An entry that nobody here made has come up: somebody followed a link, or wrote into the address bar. */
  onStranger?: () => void;
}

const marksIn = (entry: unknown): Marks => (Object(entry) as { saddlerule?: Marks }).saddlerule ?? {};

/** Follows the screens that are shown, and shows those that the browser goes back or forward to. Returns the way to stop. */
export function followHistory(store: Store<PageState>, options: HistoryOptions): () => void {
  const { name, addressOf, onStranger } = options;
  const scrolledTo = new Map<number, number>();
  let shown = placeOf(store.read());
  let here = 0;
  let scrolled = scrollY;
  /** The page's own way back was pressed, and the browser is on its way there. */
  let goingBack = false;

  const mark = (): Mark | undefined => marksIn(history.state)[name];

  function write(how: "pushState" | "replaceState", mark: Mark, address?: string): void {
    here = mark.key;
    const others = Object.entries(marksIn(history.state)).map(([whose, theirs]) => [
      whose,
      // The entry before this one is not theirs.
      how === "pushState" ? { ...theirs, before: null } : theirs,
    ]);
    const saddlerule = { ...Object.fromEntries(others), [name]: mark } as Marks;
    const entry = { ...(history.state as object | null), saddlerule };
    try {
      history[how](entry, "", address);
    } catch {
      // Browsers refuse too many in a short time, and all of them in some documents: there Back leaves the page, as ever.
    }
  }

  /** The entry that is open becomes ours: at first, and where the page around has made or rewritten one without a word. */
  function claim(): void {
    const known = mark();
    // Loaded anew, the page still knows what it was opened from.
    const before = known !== undefined && isSame(known.place, shown) ? known.before : null;
    write("replaceState", { key: Math.random(), place: shown, before });
  }

  /** Listens to the store after what draws it. */
  function follow(state: PageState): void {
    const next = placeOf(state);
    if (goingBack || isSame(next, shown)) return;
    if (mark() === undefined) claim();
    const before = mark()?.before ?? null;
    const last = { key: here, place: shown };
    scrolledTo.set(here, scrolled);
    shown = next;
    if (before !== null && isSame(next, before.place) && isOpenedFrom(last.place)) {
      goingBack = true;
      history.back();
      // From a form the list comes back at the entry that was worked on.
      if (last.place.view !== "entries") scrolledTo.delete(before.key);
      scrollBack(before.key);
      return;
    }
    write("pushState", { key: Math.random(), place: next, before: last }, addressOf?.(state));
  }

  /** Browsers tell of an entry twice where its address is another one. */
  function arrived(): void {
    const there = mark();
    if (there?.key === here) return;
    if (!goingBack) scrolledTo.set(here, scrollY);
    if (there === undefined) {
      onStranger?.();
      shown = placeOf(store.read());
      claim();
      return;
    }
    here = there.key;
    if (!goingBack) store.change(cameTo(there.place));
    shown = goingBack ? there.place : placeOf(store.read());
    // What was open on top is gone for good, and its entry is passed over.
    goingBack = !isSame(shown, there.place) && there.before !== null && isSame(shown, there.before.place);
    if (goingBack) history.back();
    // Once it is drawn. On the way back by the page's own way, somebody may have gone on meanwhile.
    queueMicrotask(() => {
      scrollBack(here);
      follow(store.read());
    });
  }

  function scrollBack(key: number): void {
    const top = scrolledTo.get(key);
    if (top !== undefined) scrollTo({ top, behavior: "instant" });
  }

  /** Before anything that is pressed shows another screen. */
  const kinds = ["scroll", "click", "keydown"];
  const notice = (): void => {
    scrolled = scrollY;
  };
  // A browser restores what was scrolled before the screen is drawn that was scrolled. Loading the page anew is left to it.
  const restoreOurselves = (): void => {
    history.scrollRestoration = "manual";
  };
  const usual = history.scrollRestoration;
  const letRestore = (): void => {
    history.scrollRestoration = usual;
  };
  const stopFollowing = store.subscribe(follow);
  addEventListener("popstate", arrived);
  addEventListener("hashchange", arrived);
  for (const kind of kinds) addEventListener(kind, notice, true);
  addEventListener("pagehide", letRestore);
  addEventListener("pageshow", restoreOurselves);
  restoreOurselves();
  claim();
  return () => {
    stopFollowing();
    removeEventListener("popstate", arrived);
    removeEventListener("hashchange", arrived);
    for (const kind of kinds) removeEventListener(kind, notice, true);
    removeEventListener("pagehide", letRestore);
    removeEventListener("pageshow", restoreOurselves);
    letRestore();
  };
}

function placeOf({ screen, desk }: PageState): Place {
  return { screen, view: screen.name === "list" ? desk.view : "entries" };
}

function isSame(one: Place, other: Place): boolean {
  const idIn = ({ screen }: Place): string | null => ("id" in screen ? screen.id : null);
  return one.screen.name === other.screen.name && idIn(one) === idIn(other) && one.view === other.view;
}

/** Whether it has a way back of its own, over its heading, to what it was opened from. */
function isOpenedFrom({ screen, view }: Place): boolean {
  return ["bike", "card", "beside"].includes(screen.name) || view !== "entries";
}

function cameTo({ screen, view }: Place): Change<PageState> {
  return (state) => {
    const there = went(screen)(state);
    if (screen.name !== "list") return there;
    const { desk } = there;
    // What was typed there may have been saved since, or its list closed.
    const canOpen = ["entry", "workshop"].includes(view) ? desk.draft !== null : desk.inHand !== 0;
    const next = canOpen ? view : "entries";
    return desk.view === next ? there : viewed(next)(there);
  };
}
