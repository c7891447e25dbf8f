// In the place of what is not here yet: that it is on its way, or that it did not come, with the way to try again.
import { useEffect } from "preact/hooks";
import { ScreenHead } from "../parts/screen-head";
import type { WaitingProps } from "./later-parts";
import { usePage } from "./page-context";

export function Waiting({ place }: WaitingProps) {
  const { texts, later } = usePage();
  const { fetch, lost } = later;
  // What did not come is asked for again once somebody says so, or comes anew.
  useEffect(fetch, [fetch]);
  const words = lost ? texts.later.lost : texts.later.coming;
  return (
    <>
      {place === "screen" && <ScreenHead title={words} />}
      <div
        class={place === "inside" ? "stack" : place === "sheet" ? "sheet stack" : "inset stack"}
        role="alert"
      >
        {place !== "screen" && <p>{words}</p>}
        {lost && (
          <>
            <p>{texts.later.lostWhy}</p>
            <button type="button" class="button main" onClick={fetch}>
              {texts.list.tryAgain}
            </button>
          </>
        )}
      </div>
    </>
  );
}
