// Before there is a verdict: what the rider's screen still has to be told, and the way to it.
import { usePage } from "../page/page-context";
import { riderTaken } from "../state/family-changes";
import type { RiderEntry } from "../state/page-state";
import { saysSomething } from "../state/request-building";
import { went } from "../state/screen-changes";
import type { Texts } from "../texts/texts";

/** The figures are there, and the way of riding is not. */
export function lacksOnlyStage(rider: RiderEntry): boolean {
  return rider.stage === null && saysSomething(rider);
}

export function missingWords(texts: Texts, rider: RiderEntry): string {
  return lacksOnlyStage(rider) ? texts.riding.chooseFirst : texts.rack.noReading;
}

export function ToRider({ rider }: { rider: RiderEntry }) {
  const { texts, change } = usePage();
  return (
    <button
      type="button"
      class="button main wide onward"
      onClick={() => {
        change(riderTaken(rider.key));
        change(went({ name: "rider" }));
      }}
    >
      {lacksOnlyStage(rider) ? texts.riding.toChoice : texts.rack.toRider}
    </button>
  );
}
