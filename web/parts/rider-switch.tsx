// The riders of the family in a row, the one in hand marked: another one tap away. One rider alone needs no switch.
import { useEffect, useRef } from "preact/hooks";
import { usePage } from "../page/page-context";
import { familyOf, riderTaken } from "../state/family-changes";
import type { PageState, RiderEntry } from "../state/page-state";
import type { Texts } from "../texts/texts";
import { Switch } from "./choices";

/** The name that was typed, or "Rider 2". */
export function riderName(texts: Texts, { name, key }: RiderEntry): string {
  return name.trim() === "" ? texts.family.unnamed({ number: key }) : name.trim();
}

/** Scrolls the row, and nothing else, to the rider in hand. */
function showChosen(row: HTMLElement | null): void {
  const label = row?.querySelector<HTMLElement>(":checked")?.parentElement;
  if (row == null || label == null) return;
  const { offsetLeft, offsetWidth } = label;
  row.scrollLeft = Math.min(Math.max(row.scrollLeft, offsetLeft + offsetWidth - row.clientWidth), offsetLeft);
}

export function RiderSwitch({ state }: { state: PageState }) {
  const { texts, change } = usePage();
  const place = useRef<HTMLDivElement>(null);
  const { key } = state.rider;
  useEffect(() => {
    showChosen(place.current);
  }, [key]);
  if (state.waiting.length === 0) return null;
  return (
    <div ref={place} class="rider-switch">
      <Switch
        name="rider-in-hand"
        legend={texts.family.switch}
        legendShown={false}
        chosen={state.rider.key}
        onChoose={(key) => change(riderTaken(key))}
        options={familyOf(state).map(({ rider }) => ({ value: rider.key, label: riderName(texts, rider) }))}
      />
    </div>
  );
}
