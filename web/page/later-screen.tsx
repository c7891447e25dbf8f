// What may not be here yet, in the place where it is shown.
import type { JSX } from "preact";
import type { ListState, PageState } from "../state/page-state";
import type { LaterParts } from "./later-parts";
import { usePage } from "./page-context";

export function LaterScreen({ state }: { state: PageState }) {
  const { parts, Waiting } = usePage().later;
  return parts ? <parts.LaterScreen state={state} /> : <Waiting place="screen" />;
}

/** What is inside something that is folded away at first. */
export function Inside({ children }: { children: (parts: LaterParts) => JSX.Element }) {
  const { parts, Waiting } = usePage().later;
  return parts ? children(parts) : <Waiting place="inside" />;
}

/** What is wrong with a list, on a screen that is here. */
export function ListRefused({ list }: { list: ListState }) {
  const { parts, Waiting } = usePage().later;
  if (list.refusal === null) return null;
  return parts ? <parts.ListRefused list={list} /> : <Waiting place="sheet" />;
}
