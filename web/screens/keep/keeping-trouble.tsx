// Why nothing is kept on the device although that was wanted, and what can be done: one sentence, never the page.
import type { KeepingState } from "../../keeping/keeping-state";
import { waitsForWord } from "../../keeping/keeping-state";
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

export function SettleTrouble({ keeping: { trouble } }: { keeping: KeepingState }) {
  const { texts, keeper } = usePage();
  return (
    <div role="alert" class="stack">
      {trouble !== null && <p class="problem at-once">{texts.keep.troubles[trouble]}</p>}
      {waitsForWord(trouble) && (
        <div class="buttons">
          {trouble === "elsewhere" && (
            <button type="button" class="button" onClick={() => keeper.settle("device")}>
              {texts.keep.stayDevice}
            </button>
          )}
          <button type="button" class="button" onClick={() => keeper.settle("here")}>
            {texts.keep.stayHere}
          </button>
        </div>
      )}
    </div>
  );
}
