// That nothing is kept on the device although that was wanted: why, and the way to where it is settled.
import type { KeepingState } from "../../keeping/keeping-state";
import { usePage } from "../../page/page-context";
import { went } from "../../state/screen-changes";

/** Over every other screen: the sentence, and the way to the screen where it is settled. */
export function KeepingTroubleLine({ keeping: { trouble } }: { keeping: KeepingState }) {
  const { texts, change } = usePage();
  return (
    <div role="alert" class="trouble-place">
      {trouble !== null && (
        <p class="trouble">
          {texts.keep.troubles[trouble]}{" "}
          <button type="button" class="plain-link" onClick={() => change(went({ name: "keep" }))}>
            {texts.keep.toKeep}
          </button>
        </p>
      )}
    </div>
  );
}
