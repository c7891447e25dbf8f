// The riders of the family: one is in hand, the others wait with all that was typed about them.
import { firstRows, newRider, noWants } from "./page-state";
import type { PageState, WaitingRider } from "./page-state";
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

function tookInHand(state: PageState, taken: WaitingRider, waiting: WaitingRider[]): PageState {
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
