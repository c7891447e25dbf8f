// The filters and the order of the rack, to be chosen.
import type { AssessAnswer, Order } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { Select } from "../../parts/choices";
import { TextField, TickField } from "../../parts/fields";
import type { PageState } from "../../state/page-state";
import { printingBegun } from "../../state/printing";
import { shareOfPercent } from "../../state/request-building";
import { wanted, wantsCleared } from "../../state/screen-changes";
import { RackFilters } from "./rack-filters";

const orders: Order[] = ["lasts", "cost", "light", "closest"];

interface WishFieldsProps {
  state: PageState;
  counts: AssessAnswer["filter_counts"];
  /** How many bikes the wishes leave. */
  shown: number;
}

export function WishFields({ state, counts, shown }: WishFieldsProps) {
  const { texts, change } = usePage();
  const { wants } = state;
  const { resalePercent } = wants;
  const shareProblem = shareOfPercent(resalePercent) === null ? texts.wishes.notAPercentage : null;
  return (
    <>
      <Select
        label={texts.wishes.order}
        options={orders.map((value) => ({ value, label: texts.wishes.orders[value] }))}
        chosen={wants.order}
        onChoose={(order) => change(wanted({ order }))}
      />
      <RackFilters state={state} counts={counts} />
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
    </>
  );
}
