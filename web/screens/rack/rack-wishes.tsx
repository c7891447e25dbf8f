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
  answer: AssessAnswer;
  /** How many bikes the wishes leave. */
  shown: number;
}

export function RackWishes({ state, answer, shown }: RackWishesProps) {
  const { texts } = usePage();
  return (
    <div class="wishes">
      <Fold title={texts.wishes.title}>
        <Inside>
          {({ WishFields }) => <WishFields state={state} counts={answer.filter_counts} shown={shown} />}
        </Inside>
      </Fold>
      {answer.left_out_counts.bikes > 0 && <Hidden leftOut={answer.left_out_counts} />}
    </div>
  );
}

/** One press shows them again. */
function Hidden({ leftOut }: { leftOut: LeftOut }): JSX.Element {
  const { texts, change } = usePage();
  const reasons = Object.entries(leftOut.because).map(
    ([reason, number]) => byCode(texts.wishes.because, reason, { number }) ?? reason,
  );
  return (
    <button type="button" class="sentence-link told" onClick={() => change(wantsCleared())}>
      <b>{texts.wishes.hidden({ number: leftOut.bikes })}</b>
      {texts.colon}
      {reasons.join(", ")}. <strong>{texts.wishes.showAll}</strong>
    </button>
  );
}
