// Filters and order of the rack, and how many bikes they hide, and why.
import type { JSX } from "preact";
import type { AssessAnswer } from "../../engine/wire";
import { Inside } from "../../page/later-screen";
import { usePage } from "../../page/page-context";
import { Fold } from "../../parts/fold";
import type { PageState } from "../../state/page-state";
import { wantsCleared } from "../../state/screen-changes";
import { byCode } from "../../texts/texts";

type LeftOut = AssessAnswer["left_out_counts"];

interface RackWishesProps {
  state: PageState;
  leftOut: LeftOut;
  /** How many bikes the wishes leave. */
  shown: number;
}

export function RackWishes({ state, leftOut, shown }: RackWishesProps) {
  const { texts } = usePage();
  return (
    <div class="wishes">
      <Fold title={texts.wishes.title}>
        <Inside>{({ WishFields }) => <WishFields state={state} shown={shown} />}</Inside>
      </Fold>
      {leftOut.bikes > 0 && <Hidden leftOut={leftOut} />}
    </div>
  );
}

function Hidden({ leftOut }: { leftOut: LeftOut }): JSX.Element {
  const { texts, change } = usePage();
  const reasons = Object.entries(leftOut.because).map(
    ([reason, number]) => byCode(texts.wishes.because, reason, { number }) ?? reason,
  );
  return (
    <div class="hidden-bikes told">
      <p>
        <strong>{texts.wishes.hidden({ number: leftOut.bikes })}</strong>
        {texts.colon}
        {reasons.join(", ")}.
      </p>
      <button type="button" class="plain-link" onClick={() => change(wantsCleared())}>
        {texts.wishes.showAll}
      </button>
    </div>
  );
}
