// What is said to Saddlerule while it is open: only what was changed takes effect, so that a reader's own choice stays.
import type { ListSource } from "../engine/list-opening";
import { usualSettings } from "../page/mount-saddlerule";
import type { Mounted } from "../page/mount-saddlerule";
import { shownIn } from "../state/rider-changes";
import { currencyIs, languageChosen, went } from "../state/screen-changes";
import { tagAwaitsNothing, tagOf, tagScanned } from "../state/suits";
import type { Settings } from "./settings";

/**
 * Opens the list that `first` names; `sourceOf` makes it from its address as it was written. Gives the way to say something
 * else.
 */
export function followSettings(
  { store, openList }: Mounted,
  first: Settings,
  sourceOf: (list: string) => ListSource,
): (next: Settings) => void {
  let before = first;
  const open = (list: string): void =>
    void openList(sourceOf(list)).then(() => store.change(tagAwaitsNothing()));
  if (first.list !== null) open(first.list);
  return (next) => {
    const { list, language, units, currency, view, bike } = next;
    const last = before;
    before = next;
    const usual = usualSettings();
    if (language !== last.language) store.change(languageChosen(language ?? usual.language));
    if (units !== last.units) store.change(shownIn(units ?? usual.units));
    if (currency !== last.currency) store.change(currencyIs(currency));
    const otherList = list !== null && (list !== last.list || currency !== last.currency);
    const tag = bike === last.bike ? null : tagOf(bike, otherList ? list : null);
    if (tag !== null) store.change(tagScanned(tag));
    else if (view !== last.view) store.change(went({ name: view ?? "rider" }));
    // Prices are read with their currency.
    if (otherList) open(list);
  };
}
