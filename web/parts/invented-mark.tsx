// Says of bikes from a sample that they do not exist.
import { usePage } from "../page/page-context";
import { listInHand } from "../state/list-desk";
import type { PageState } from "../state/page-state";

export function InventedMark({ state, taped = false }: { state: PageState; taped?: boolean }) {
  const { texts } = usePage();
  if (taped || listInHand(state.desk)?.sample !== true) return null;
  return <p class="sample-mark">{texts.list.sampleMark}</p>;
}
