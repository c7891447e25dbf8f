// Where the focus goes when the page changes under it, so that nobody on a keyboard or a screen reader is left nowhere.
import type { RefObject } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import type { Screen } from "../state/page-state";

/**
 * On arriving at a screen, or at a rack with other bikes on it, the focus goes to the heading; coming back from one bike,
 * to that bike's place on the rack. The first screen takes no focus: nobody went anywhere yet.
 */
export function useArrival(place: RefObject<HTMLElement>, screen: Screen, edition: number): void {
  const before = useRef({ screen, edition });
  useLayoutEffect(() => {
    const { screen: from, edition: lastEdition } = before.current;
    before.current = { screen, edition };
    const newRack = edition !== lastEdition && screen.name === "rack";
    if ((from === screen && !newRack) || place.current === null) return;
    const backTo = from.name === "bike" && screen.name === "rack" ? bikeOnRack(place.current, from.id) : null;
    if (backTo !== null) {
      backTo.focus({ preventScroll: true });
      backTo.scrollIntoView({ block: "center" });
      return;
    }
    focusTitle(place.current);
    place.current.scrollIntoView({ block: "start" });
  }, [place, screen, edition]);
}

/** When what had the focus is gone (a button that did its work), the heading takes it. */
export function useFocusKept(place: RefObject<HTMLElement>): void {
  const last = useRef<EventTarget | null>(null);
  useLayoutEffect(() => {
    const root = place.current;
    const remember = ({ target }: FocusEvent): void => {
      last.current = target;
    };
    root?.addEventListener("focusin", remember);
    return () => root?.removeEventListener("focusin", remember);
  }, [place]);
  useLayoutEffect(() => {
    if (!(last.current instanceof Element) || last.current.isConnected || place.current === null) return;
    last.current = null;
    focusTitle(place.current);
  });
}

function focusTitle(root: Element): void {
  root.querySelector<HTMLElement>(".screen.current .screen-title")?.focus({ preventScroll: true });
}

function bikeOnRack(root: Element, id: string): HTMLElement | null {
  const names = root.querySelectorAll<HTMLElement>(".row-name");
  return [...names].find((name) => name.dataset.bike === id) ?? null;
}
