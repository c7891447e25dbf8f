// Why a list that the page names could not be opened, in the console: its readers are told what they can do, and its webmaster the
// cause.
import type { RefusalNote } from "../engine/refusal";
import { createFigures } from "../figures/format-figures";
import type { Mounted } from "../page/mount-saddlerule";
import { worded } from "../parts/notes";
import type { Texts } from "../texts/texts";
import { tellWebmaster } from "./tell-webmaster";

/** What was refused, for a webmaster: the place, the sentence, and the figures that the sentence may leave out. */
export function causeOf(english: Texts, refusal: RefusalNote): string {
  const sentence = worded(english, createFigures("en-GB", "cm", english.units), refusal);
  const told = Object.entries(refusal.figures).flatMap(([name, figure]) =>
    typeof figure === "object" ? [] : [`${name}: ${figure}`],
  );
  return [refusal.where, sentence, ...told].filter((part) => part).join("; ");
}

/** @param list as the page names it */
export async function tellRefusal({ store, whole, inEnglish }: Mounted, list: string): Promise<void> {
  const { refusal } = store.read().list;
  if (refusal?.named !== true) return;
  const { problem } = refusal;
  // Where its sentence does not come, the code says it.
  await whole().catch(() => undefined);
  tellWebmaster(`the list ${list} is not opened (${problem.code}): ${causeOf(inEnglish(), problem)}`);
}
