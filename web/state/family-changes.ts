// The riders of the family: one is in hand, the others wait with all that was typed about them.
import type { TypedUnit } from "../engine/narrowed";
import { firstRows, newRider, noWants } from "./page-state";
import type { PageState, RiderEntry, WaitingRider } from "./page-state";
import type { Change } from "./store";

type PageChange = Change<PageState>;

/** Everybody, in the order in which they were added. */
export function familyOf({
  rider,
  wants,
  waiting,
}: Pick<PageState, "rider" | "wants" | "waiting">): WaitingRider[] {
  return [...waiting, { rider, wants }].sort((a, b) => a.rider.key - b.rider.key);
}

export function tookInHand(state: PageState, taken: WaitingRider, waiting: WaitingRider[]): PageState {
  return { ...state, ...taken, waiting, removed: null, rows: firstRows };
}

export function riderTaken(key: number): PageChange {
  return (state) => {
    const family = familyOf(state);
    const taken = family.find(({ rider }) => rider.key === key);
    const others = family.filter((one) => one !== taken);
    return taken === undefined || key === state.rider.key ? state : tookInHand(state, taken, others);
  };
}

export function riderAdded(): PageChange {
  return (state) => {
    const family = familyOf(state);
    const key = Math.max(...family.map(({ rider }) => rider.key), state.removed?.rider.key ?? 0) + 1;
    const added = { rider: newRider(key, state.today, state.unit, state.rider.population), wants: noWants };
    return { ...tookInHand(state, added, family), screen: { name: "rider" } };
  };
}

/** Takes out the rider in hand; the first of the others comes in its place. The last one stays. */
export function riderRemoved(): PageChange {
  return (state) => {
    const { rider, wants } = state;
    const [next, ...others] = familyOf(state).filter((one) => one.rider.key !== rider.key);
    return next === undefined ? state : { ...tookInHand(state, next, others), removed: { rider, wants } };
  };
}

export function riderBroughtBack(): PageChange {
  return (state) => {
    const { removed, rider, wants, waiting } = state;
    return removed === null ? state : tookInHand(state, removed, [...waiting, { rider, wants }]);
  };
}

/**
 * The readings as another day finds them: one that was left empty is none, and there is one to be typed today.
 */
export function onDay(rider: RiderEntry, today: string, unit: TypedUnit): RiderEntry {
  const readings = rider.readings.filter(({ on, figure }) => on === today || figure.text.trim() !== "");
  const newest = readings.at(-1);
  if (!readings.some(({ on }) => on === today)) {
    const key = Math.max(0, ...readings.map((reading) => reading.key)) + 1;
    const figure = { text: "", unit: newest?.figure.unit ?? unit };
    readings.push({ key, on: today, figure, shoes: newest?.shoes ?? true });
  }
  return { ...rider, readings };
}

/** Midnight has passed, or the device's clock was set: what was typed stays of its own day. */
export function dayIs(today: string): PageChange {
  return (state) => {
    if (today === state.today) return state;
    const onIt = <One extends WaitingRider>(one: One): One => ({
      ...one,
      rider: onDay(one.rider, today, state.unit),
    });
    return {
      ...onIt(state),
      today,
      waiting: state.waiting.map(onIt),
      removed: state.removed && onIt(state.removed),
    };
  };
}
