// Where the focus goes when the page changes under it, so that nobody on a keyboard or a screen reader is left nowhere.
import type { RefObject } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import type { DeskState } from "../state/list-desk";
import type { Screen } from "../state/page-state";

/**
 * On arriving at a screen, or at a rack with other bikes on it, the focus goes to the heading; coming back from one bike,
 * to that bike's place on the rack or in the list. The first screen takes no focus: nobody went anywhere yet. Neither does
 * what comes by itself, or by the page around, while the reader is busy elsewhere on that page.
 */
export function useArrival(
  place: RefObject<HTMLElement>,
  screen: Screen,
  edition: number,
  { view, lastNumber }: Pick<DeskState, "view" | "lastNumber">,
): void {
  const before = useRef({ screen, edition, view });
  const busyHere = useBusyHere(place);
  useLayoutEffect(() => {
    const { screen: from, edition: lastEdition, view: lastView } = before.current;
    before.current = { screen, edition, view };
    const newRack = edition !== lastEdition && screen.name === "rack";
    const otherView = view !== lastView && screen.name === "list";
    if ((from === screen && !newRack && !otherView) || place.current === null || !busyHere.current) return;
    const backTo =
      from.name === "bike" && screen.name === "rack"
        ? bikeOnRack(place.current, from.id)
        : otherView && view === "entries"
          ? entryInList(place.current, lastNumber)
          : null;
    if (backTo !== null) {
      backTo.focus({ preventScroll: true });
      backTo.scrollIntoView({ block: "center" });
      return;
    }
    focusTitle(place.current);
    place.current.scrollIntoView({ block: "start" });
  }, [place, screen, edition, view, lastNumber, busyHere]);
}

/** Whether the last thing that was pressed or typed was so in here. */
function useBusyHere(place: RefObject<HTMLElement>): RefObject<boolean> {
  const busyHere = useRef(false);
  useLayoutEffect(() => {
    const notice = (event: Event): void => {
      busyHere.current = place.current !== null && event.composedPath().includes(place.current);
    };
    for (const kind of kindsOfWork) addEventListener(kind, notice, true);
    return () => {
      for (const kind of kindsOfWork) removeEventListener(kind, notice, true);
    };
  }, [place]);
  return busyHere;
}

/** A click without a press is that of an assistive technology. */
const kindsOfWork = ["pointerdown", "keydown", "click", "change"] as const;

/** When what had the focus is gone (a button that did its work), the first thing to press beside it takes it, or the heading. */
export function useFocusKept(place: RefObject<HTMLElement>): void {
  const last = useRef<EventTarget | null>(null);
  const around = useRef<Element | null>(null);
  useLayoutEffect(() => {
    const root = place.current;
    const remember = ({ target }: FocusEvent): void => {
      last.current = target;
      around.current = target instanceof Element ? target.closest("article") : null;
    };
    root?.addEventListener("focusin", remember);
    return () => root?.removeEventListener("focusin", remember);
  }, [place]);
  useLayoutEffect(() => {
    if (!(last.current instanceof Element) || last.current.isConnected || place.current === null) return;
    last.current = null;
    const beside = around.current?.isConnected === true ? around.current.querySelector("button") : null;
    if (beside === null) focusTitle(place.current);
    else beside.focus();
  });
}

/** Of the screen that is shown inside `root`. */
export function focusTitle(root: Element): void {
  root
    .querySelector<HTMLElement>(".screen.current .screen-title:not(.out-of-view *)")
    ?.focus({ preventScroll: true });
}

/** The entry worked on last, or what takes the last step back. */
function entryInList(root: Element, number: number | null): HTMLElement | null {
  return root.querySelector(number === null ? ".screen.current .undo" : `[data-entry="${number}"]`);
}

function bikeOnRack(root: Element, id: string): HTMLElement | null {
  const names = root.querySelectorAll<HTMLElement>(".row-name");
  return [...names].find((name) => name.dataset.bike === id) ?? null;
}
