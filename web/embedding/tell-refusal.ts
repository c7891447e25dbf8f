// Why a list that the page names could not be opened, in the console: its readers are told what they can do, and its webmaster the
// cause.
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";
import { tellWebmaster } from "./tell-webmaster";

/** @param list as the page names it */
export function tellRefusal(store: Store<PageState>, list: string): void {
  const { refusal } = store.read().list;
  if (refusal?.named !== true) return;
  const { code, where, problem, expected, figures } = refusal.problem;
  const told = Object.entries(figures).map(([name, figure]) => `${name}: ${figure}`);
  const parts = [where, problem, expected && `expected: ${expected}`, ...told].filter((part) => part);
  tellWebmaster(`the list ${list} is not opened (${code}): ${parts.join("; ")}.`);
}
