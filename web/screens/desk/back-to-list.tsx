// The way from the work on a list back to its entries.
import { usePage } from "../../page/page-context";
import { viewed } from "../../state/list-steps";

export function BackToList() {
  const { texts, change } = usePage();
  return (
    <button type="button" class="plain-link back" onClick={() => change(viewed("entries"))}>
      <span aria-hidden="true">← </span>
      {texts.desk.toList}
    </button>
  );
}
