// The way back to the rack, over what was opened from it.
import { usePage } from "../../page/page-context";
import { went } from "../../state/screen-changes";

export function BackToRack() {
  const { texts, change } = usePage();
  return (
    <button type="button" class="plain-link back" onClick={() => change(went({ name: "rack" }))}>
      <span aria-hidden="true">← </span>
      {texts.bike.back}
    </button>
  );
}
