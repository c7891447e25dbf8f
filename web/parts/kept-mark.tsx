// Says of a list from a club's site that nothing newer could be fetched than the copy kept here.
import { usePage } from "../page/page-context";
import { listInHand } from "../state/list-desk";
import type { PageState } from "../state/page-state";

export function KeptMark({ state }: { state: PageState }) {
  const { texts, figures } = usePage();
  const keptOn = listInHand(state.desk)?.keptOn ?? null;
  if (keptOn === null) return null;
  const measured = state.list.loaded?.list?.measured_on ?? null;
  return (
    <p class="soft">
      {texts.list.keptCopy({
        measured: measured && figures.day(measured),
        kept: figures.day(keptOn),
      })}
    </p>
  );
}
