// Filters and order of the rack, and how many bikes they hide, and why.
import type { JSX } from "preact";
import type { BikeFacts, BikeKind, LeftOut } from "../../engine/wire-answers";
import type { BrakeWish, Order } from "../../engine/wire-requests";
import { usePage } from "../../page/page-context";
import { Select } from "../../parts/choices";
import { TextField, TickField } from "../../parts/fields";
import { Fold } from "../../parts/fold";
import type { PageState } from "../../state/page-state";
import { plainNumber } from "../../state/request-building";
import { wanted, wantsCleared } from "../../state/screen-changes";

const orders: Order[] = ["lasts", "cost", "light", "closest"];
const brakeWishes: BrakeWish[] = ["any", "two_hand", "coaster"];
const kinds: (BikeKind | "any")[] = ["any", "pedal", "balance"];

/** The different values in a list, in order. */
function different<Value>(values: (Value | null)[], order: (a: Value, b: Value) => number): Value[] {
  return [...new Set(values.filter((value) => value !== null))].sort(order);
}

function wheelsOf(bikes: BikeFacts[]): number[] {
  return different(
    bikes.map((bike) => bike.wheel?.nominal_in ?? null),
    (a, b) => a - b,
  );
}

function coloursOf(bikes: BikeFacts[], locale: string): string[] {
  const { compare } = new Intl.Collator(locale);
  return different(
    bikes.flatMap((bike) => bike.colours),
    compare,
  );
}

export function RackWishes({ state, leftOut }: { state: PageState; leftOut: LeftOut[] }) {
  const { texts, figures, change } = usePage();
  const { wants } = state;
  const bikes = state.list.loaded?.bikes ?? [];
  const numberProblem = (text: string): string | null =>
    text.trim() === "" || plainNumber(text) !== null ? null : texts.wishes.notANumber;
  return (
    <div class="wishes">
      <Fold title={texts.wishes.title}>
        <Select
          label={texts.wishes.order}
          options={orders.map((value) => ({ value, label: texts.wishes.orders[value] }))}
          chosen={wants.order}
          onChoose={(order) => change(wanted({ order }))}
        />
        <div class="pair">
          <TextField
            id="max-price"
            label={texts.wishes.maxPrice}
            text={wants.maxPrice}
            problem={numberProblem(wants.maxPrice)}
            onType={(maxPrice) => change(wanted({ maxPrice }))}
          />
          <TextField
            id="max-mass"
            label={texts.wishes.maxMass}
            text={wants.maxMassKg}
            problem={numberProblem(wants.maxMassKg)}
            onType={(maxMassKg) => change(wanted({ maxMassKg }))}
          />
          <Select
            label={texts.wishes.wheel}
            options={[
              { value: null, label: texts.wishes.anyWheel },
              ...wheelsOf(bikes).map((value) => ({ value, label: texts.rack.wheel(figures.number(value)) })),
            ]}
            chosen={wants.wheel}
            onChoose={(wheel) => change(wanted({ wheel }))}
          />
          <Select
            label={texts.wishes.brakes}
            options={brakeWishes.map((value) => ({ value, label: texts.wishes.brakeWishes[value] }))}
            chosen={wants.brakes}
            onChoose={(brakes) => change(wanted({ brakes }))}
          />
          <Select
            label={texts.wishes.kind}
            options={kinds.map((value) => ({ value, label: texts.wishes.kinds[value] }))}
            chosen={wants.kind}
            onChoose={(kind) => change(wanted({ kind }))}
          />
          <Select
            label={texts.wishes.colour}
            options={[
              { value: null, label: texts.wishes.anyColour },
              ...coloursOf(bikes, figures.locale).map((value) => ({ value, label: value })),
            ]}
            chosen={wants.colour}
            onChoose={(colour) => change(wanted({ colour }))}
          />
        </div>
        <TickField
          label={texts.wishes.availableOnly}
          ticked={wants.availableOnly}
          onTick={(availableOnly) => change(wanted({ availableOnly }))}
        />
      </Fold>
      {leftOut.length > 0 && <Hidden leftOut={leftOut} />}
    </div>
  );
}

function Hidden({ leftOut }: { leftOut: LeftOut[] }): JSX.Element {
  const { texts, change } = usePage();
  const counts = new Map<string, number>();
  for (const reason of leftOut.flatMap((bike) => bike.because)) {
    counts.set(reason, (counts.get(reason) ?? 0) + 1);
  }
  const reasons = [...counts].map(([reason, number]) => texts.wishes.because[reason]?.(number) ?? reason);
  return (
    <div class="hidden-bikes">
      <p>
        <strong>{texts.wishes.hidden(leftOut.length)}</strong>: {reasons.join(", ")}.
      </p>
      <button type="button" class="plain-link" onClick={() => change(wantsCleared())}>
        {texts.wishes.showAll}
      </button>
    </div>
  );
}
