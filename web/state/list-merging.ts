// Another list beside the one in hand: what to take of each.
import type { CompareAnswer, MergeRequest } from "../engine/wire";
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

export function tookAll(all: Side): PageChange {
  return onMerge(() => ({ all, take: new Map() }));
}

export function addingOthers(add: boolean): PageChange {
  return onMerge(() => ({ add }));
}

export function mergeRequest({ answer, all, take, add }: Merge): Pick<MergeRequest, "do" | "take" | "add"> {
  const sides = answer.conflicts.map(({ id }) => [id, take.get(id) ?? all] as const);
  return { do: "merge", take: Object.fromEntries(sides), add };
}
