// What is said to Saddlerule while it is open: only what was changed takes effect, so that a reader's own choice stays.
import type { ListSource } from "../engine/list-opening";
import { usualSettings } from "../page/mount-saddlerule";
import type { Mounted } from "../page/mount-saddlerule";
import { shownIn } from "../state/rider-changes";
import { currencyIs, languageChosen, went } from "../state/screen-changes";
import { tagAwaitsNothing, tagOf, tagScanned } from "../state/suits";
import { screenSaid } from "./settings";
import type { Settings } from "./settings";
import { tellRefusal } from "./tell-refusal";

/** Says something else; `toScreen`: goes to the screen that is said, which is usual where it is another one. */
export type Follow = (next: Settings, toScreen?: boolean) => void;

/** Opens the list that `first` names; `sourceOf` makes it from its address as it was written. */
export function followSettings(
  mounted: Mounted,
  first: Settings,
  sourceOf: (list: string) => ListSource,
): Follow {
  let before = first;
  const { store, openList } = mounted;
  const open = (list: string): void =>
    void openList(sourceOf(list)).then(() => {
      store.change(tagAwaitsNothing());
      return tellRefusal(mounted, list);
    });
  if (first.list !== null) open(first.list);
  return (next, toScreen = isOtherScreen(next, before)) => {
    const { list, language, units, currency, bike } = next;
    const last = before;
    before = next;
    const usual = usualSettings();
    if (language !== last.language) store.change(languageChosen(language ?? usual.language));
    if (units !== last.units) store.change(shownIn(units ?? usual.units));
    if (currency !== last.currency) store.change(currencyIs(currency));
    const otherList = list !== null && (list !== last.list || currency !== last.currency);
    if (toScreen) {
      const tag = tagOf(bike, otherList ? list : null);
      store.change(tag === null ? went(screenSaid(next)) : tagScanned(tag, screenSaid(next)));
    }
    // Prices are read with their currency.
    if (otherList) open(list);
  };
}

function isOtherScreen({ view, bike }: Settings, last: Settings): boolean {
  return view !== last.view || (bike !== null && bike !== last.bike);
}
