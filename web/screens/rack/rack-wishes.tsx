// Filters and order of the rack, and how many bikes they hide, and why.
import type { JSX } from "preact";
import type { AssessAnswer, Order } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { Select } from "../../parts/choices";
import { TextField, TickField } from "../../parts/fields";
import { Fold } from "../../parts/fold";
import type { PageState } from "../../state/page-state";
import { shareOfPercent } from "../../state/request-building";
import { printingBegun } from "../../state/printing";
import { wanted, wantsCleared } from "../../state/screen-changes";
import { byCode } from "../../texts/texts";
import { RackFilters } from "./rack-filters";

const orders: Order[] = ["lasts", "cost", "light", "closest"];

type LeftOut = AssessAnswer["left_out_counts"];

interface RackWishesProps {
  state: PageState;
  answer: AssessAnswer;
  /** How many bikes the wishes leave. */
  shown: number;
}

export function RackWishes({ state, answer, shown }: RackWishesProps) {
  const { texts, change } = usePage();
  const { wants } = state;
  const { resalePercent } = wants;
  const shareProblem = shareOfPercent(resalePercent) === null ? texts.wishes.notAPercentage : null;
  return (
    <div class="wishes">
      <Fold title={texts.wishes.title}>
        <Select
          label={texts.wishes.order}
          options={orders.map((value) => ({ value, label: texts.wishes.orders[value] }))}
          chosen={wants.order}
          onChoose={(order) => change(wanted({ order }))}
        />
        <RackFilters state={state} counts={answer.filter_counts} />
        <button type="button" class="button wide" onClick={() => change(wantsCleared())}>
          {texts.wishes.clear}
        </button>
        <TickField
          label={texts.wishes.offRoad}
          ticked={wants.offRoad}
          onTick={(offRoad) => change(wanted({ offRoad }))}
        />
        <TextField
          id="resale"
          label={texts.wishes.resale}
          hint={texts.wishes.resaleWhy}
          text={resalePercent}
          problem={shareProblem}
          onType={(resalePercent) => change(wanted({ resalePercent }))}
        />
        {shown > 0 && (
          <button type="button" class="button wide print" onClick={() => change(printingBegun(true))}>
            {texts.rack.print({ number: shown })}
          </button>
        )}
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
