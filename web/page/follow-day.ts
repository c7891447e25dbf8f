// Today is today, also on a page that stays open over night: the day is asked again at midnight, and when somebody comes back.
import { dayIs } from "../state/family-changes";
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";
import { deviceDay } from "./device-day";

/** Returns the way to stop. */
export function followDay(store: Store<PageState>): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;

  function look(): void {
    clearTimeout(timer);
    store.change(dayIs(deviceDay()));
    const now = new Date();
    const midnight = new Date(now.getFullYear(), now.getMonth(), now.getDate() + 1);
    timer = setTimeout(look, midnight.getTime() - now.getTime());
  }

  // A device that sleeps lets no timer run, and one that changes its time zone lets it run too late.
  const comings: [EventTarget, string][] = [
    [document, "visibilitychange"],
    [window, "focus"],
    [window, "pageshow"],
  ];
  for (const [target, kind] of comings) target.addEventListener(kind, look);
  look();
  return () => {
    clearTimeout(timer);
    for (const [target, kind] of comings) target.removeEventListener(kind, look);
  };
}
