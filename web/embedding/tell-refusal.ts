// Why a list that the page names could not be opened, in the console: its readers are told what they can do, and its webmaster the
// cause.
import { createFigures } from "../figures/format-figures";
import { worded } from "../parts/notes";
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";
import { textsIn } from "../texts/texts";
import { tellWebmaster } from "./tell-webmaster";

/** @param list as the page names it */
export function tellRefusal(store: Store<PageState>, list: string): void {
  const { refusal } = store.read().list;
  if (refusal?.named !== true) return;
  const { code, where, figures } = refusal.problem;
  const english = textsIn("en", "en-GB");
  const sentence = worded(english, createFigures("en-GB", "cm", english.units), refusal.problem);
  const told = Object.entries(figures).flatMap(([name, figure]) =>
    typeof figure === "object" ? [] : [`${name}: ${figure}`],
  );
  const parts = [where, sentence, ...told].filter((part) => part);
  tellWebmaster(`the list ${list} is not opened (${code}): ${parts.join("; ")}`);
}
