// The riders of the family in a row, the one in hand marked: another one tap away. One rider alone needs no switch.
import { usePage } from "../page/page-context";
import { familyOf, riderTaken } from "../state/family-changes";
import type { PageState, RiderEntry } from "../state/page-state";
import type { Texts } from "../texts/texts";
import { Switch } from "./choices";

/** The name that was typed, or "Rider 2". */
export function riderName(texts: Texts, { name, key }: RiderEntry): string {
  return name.trim() === "" ? texts.family.unnamed({ number: key }) : name.trim();
}

export function RiderSwitch({ state }: { state: PageState }) {
  const { texts, change } = usePage();
  if (state.waiting.length === 0) return null;
  return (
    <div class="rider-switch">
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
