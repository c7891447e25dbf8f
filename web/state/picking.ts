// Bikes that are picked to be seen side by side.
import type { PageState } from "./page-state";
import type { Change } from "./store";

/** As many columns as can still be read. */
export const mostPicked = 4;

export function bikePicked(id: string, on: boolean): Change<PageState> {
  return (state) => {
    const others = state.picked.filter((picked) => picked !== id);
    if (on && others.length >= mostPicked) return state;
    return { ...state, picked: on ? [...others, id] : others };
  };
}

export function picksCleared(): Change<PageState> {
  return (state) => ({ ...state, picked: [], screen: { name: "rack" } });
}
