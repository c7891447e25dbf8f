// The filters and the order of the rack, to be chosen.
import { useMemo } from "preact/hooks";
import type { BikeKind, BrakeWish, GearsWish, Order } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { Select } from "../../parts/choices";
import { NumberField, TextField, TickField } from "../../parts/fields";
import { MassField } from "../../parts/mass-field";
import type { LoadedList, PageState } from "../../state/page-state";
import { printingBegun } from "../../state/printing";
import { shareOfPercent } from "../../state/request-building";
import { wanted } from "../../state/screen-changes";

const orders: Order[] = ["lasts", "cost", "light", "closest"];
const brakeWishes: BrakeWish[] = ["any", "two_hand", "coaster"];
const gearsWishes: GearsWish[] = ["any", "single", "several"];
const kinds: (BikeKind | "any")[] = ["any", "pedal", "balance"];

function wheelsOf(list: LoadedList | null) {
  return [...(list?.offers.wheels ?? [])].sort((a, b) => a.nominal_in - b.nominal_in);
}

function coloursOf(list: LoadedList | null, locale: string) {
  const { compare } = new Intl.Collator(locale);
  return [...(list?.offers.colours ?? [])].sort((a, b) => compare(a.colour, b.colour));
}

/** What there is to choose says how many bikes of the list have it, before it is chosen. */
const counted = (label: string, count: number): string => `${label} (${count})`;

interface WishFieldsProps {
  state: PageState;
  /** How many bikes the wishes leave. */
  shown: number;
}

export function WishFields({ state, shown }: WishFieldsProps) {
  const { texts, figures, change } = usePage();
  const { wants } = state;
  const { loaded } = state.list;
  const wheels = useMemo(() => wheelsOf(loaded), [loaded]);
  const colours = useMemo(() => coloursOf(loaded, figures.locale), [loaded, figures.locale]);
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
      <div class="pair">
        <NumberField
          id="max-price"
          label={texts.wishes.maxPrice}
          text={wants.maxPrice}
          onType={(maxPrice) => change(wanted({ maxPrice }))}
        />
        <MassField
          id="max-mass"
          label={texts.wishes.maxMass}
          text={wants.maxMassKg}
          onType={(maxMassKg) => change(wanted({ maxMassKg }))}
        />
        <Select
          label={texts.wishes.wheel}
          options={[
            { value: null, label: texts.wishes.anyWheel },
            ...wheels.map(({ nominal_in: value, count }) => ({
              value,
              label: counted(texts.rack.wheel({ nominal: value }), count),
            })),
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
          label={texts.wishes.gears}
          options={gearsWishes.map((value) => ({ value, label: texts.wishes.gearsWishes[value] }))}
          chosen={wants.gears}
          onChoose={(gears) => change(wanted({ gears }))}
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
            ...colours.map(({ colour, count }) => ({ value: colour, label: counted(colour, count) })),
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
