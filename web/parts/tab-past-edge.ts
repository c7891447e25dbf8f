// The Tab key in a long list: at the edge of what is drawn it waits for the next item instead of leaving the list.
import type { RefObject } from "preact";
import { useEffect, useRef } from "preact/hooks";

/** Milliseconds after which Tab leaves all the same: nobody is held in a list whose items do not come. */
const patience = 2000;

const controls = "button:not(:disabled), input:not(:disabled)";

interface Wanted {
  /** From 1, as the items say it. */
  place: number;
  back: boolean;
  since: number;
}

/**
 * Gives what is to hear the list's keys. `follows`: whether there is nothing else to come to between one item and another;
 * `draw` looks which items are near the screen.
 */
export function useTabPastEdge(
  list: RefObject<HTMLElement>,
  follows: (at: number, place: number) => boolean,
  draw: () => void,
): (event: KeyboardEvent) => void {
  const wanted = useRef<Wanted | null>(null);

  /** Where Tab comes to an item first, and where it leaves it. */
  function stops(place: number, back: boolean): (HTMLElement | undefined)[] {
    const item = list.current?.querySelector(`[aria-posinset="${place}"]`);
    const all = [...(item?.querySelectorAll<HTMLElement>(controls) ?? [])];
    return back ? [all.at(-1), all[0]] : [all[0], all.at(-1)];
  }

  useEffect(() => {
    if (wanted.current === null) return;
    const [stop] = stops(wanted.current.place, wanted.current.back);
    if (stop === undefined) return;
    wanted.current = null;
    stop.focus();
  });

  return (event) => {
    const at = Number((event.target as Element).closest("[role=listitem]")?.ariaPosInSet);
    const back = event.shiftKey;
    const place = back ? at - 1 : at + 1;
    const [next] = stops(place, back);
    const leaves = event.key === "Tab" && event.target === stops(at, back)[1];
    const since = wanted.current?.place === place ? wanted.current.since : event.timeStamp;
    wanted.current = null;
    if (!leaves || next !== undefined || !follows(at, place)) return;
    if (event.timeStamp - since > patience) return;
    event.preventDefault();
    wanted.current = { place, back, since };
    draw();
  };
}
