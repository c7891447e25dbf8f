// Another list beside the one in hand: what to take of each.
import type { CompareAnswer, Conflict, MergeRequest } from "../engine/wire";
import type { Merge, Side } from "./list-desk";
import { onDesk } from "./list-steps";
import type { PageState } from "./page-state";
import type { Change } from "./store";

type PageChange = Change<PageState>;

export function listsCompared(name: string, answer: CompareAnswer): PageChange {
  return onDesk(() => ({ refused: null, merge: { name, answer, all: "here", take: new Map(), add: true } }));
}

export function mergeDropped(): PageChange {
  return onDesk(() => ({ merge: null }));
}

function onMerge(part: (merge: Merge) => Partial<Merge>): PageChange {
  return onDesk(({ merge }) => (merge === null ? {} : { merge: { ...merge, ...part(merge) } }));
}

export function tookOne(id: string, side: Side): PageChange {
  return onMerge(({ take }) => ({ take: new Map(take).set(id, side) }));
}

/** What can be taken of that bike: the newer one where it is known, and fields where some are missing here. */
export function sidesOf({ newer, fills }: Conflict): Side[] {
  return [
    "here",
    "there",
    "both",
    ...(newer === null ? [] : (["newer"] as const)),
    ...(fills.length === 0 ? [] : (["fill"] as const)),
  ];
}

export function sideOf({ all, take }: Merge, { id }: Conflict): Side {
  return take.get(id) ?? all;
}

/** Where nobody knows which is newer, what was chosen before stays; where nothing is missing, there is nothing to fill. */
export function tookAll(all: Side): PageChange {
  return onMerge((merge) => ({
    all,
    take: new Map(
      merge.answer.conflicts
        .filter((conflict) => !sidesOf(conflict).includes(all))
        .map((conflict) => [conflict.id, all === "fill" ? "here" : sideOf(merge, conflict)]),
    ),
  }));
}

export function addingOthers(add: boolean): PageChange {
  return onMerge(() => ({ add }));
}

export function mergeRequest(merge: Merge): Pick<MergeRequest, "do" | "take" | "add"> {
  const sides = merge.answer.conflicts.map((conflict) => [conflict.id, sideOf(merge, conflict)] as const);
  return { do: "merge", take: Object.fromEntries(sides), add: merge.add };
}
