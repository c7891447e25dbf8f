// Says of a list that it may be out of date: from a club's site, that nothing newer could be fetched than the copy kept here; of any,
// that it was measured more than a year ago.
import { usePage } from "../page/page-context";
import { listInHand } from "../state/list-desk";
import type { PageState } from "../state/page-state";

export function ListAge({ state }: { state: PageState }) {
  const { texts, figures } = usePage();
  const keptOn = listInHand(state.desk)?.keptOn ?? null;
  const measured = state.list.loaded?.list?.measured_on ?? null;
  return (
    <>
      {keptOn !== null && (
        <p class="soft">
          {texts.list.keptCopy({
            measured: measured && figures.day(measured),
            kept: figures.day(keptOn),
          })}
        </p>
      )}
      {measured !== null && measured < aYearBefore(state.today) && <p>{texts.list.overAYearOld}</p>}
    </>
  );
}

/** ISO 8601 writes days so that they sort as texts. */
function aYearBefore(day: string): string {
  return `${Number(day.slice(0, 4)) - 1}${day.slice(4)}`;
}
