// The filters of the rack, each value with the number of bikes that it leaves beside the other filters.
import { useState } from "preact/hooks";
import type { FilterCounts } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { ChipChoice, ChipTick } from "../../parts/chips";
import { NumberField } from "../../parts/fields";
import { MassField } from "../../parts/mass-field";
import type { PageState, WantsEntry } from "../../state/page-state";
import { plainNumber } from "../../state/request-building";
import { wanted } from "../../state/screen-changes";
import { massSent, massUnitBeside } from "../../state/typed-mass";

interface RackFiltersProps {
  state: PageState;
  counts: FilterCounts;
}

interface FilterProps<Name extends keyof FilterCounts> {
  wants: WantsEntry;
  counts: FilterCounts[Name];
}

export function RackFilters({ state, counts }: RackFiltersProps) {
  const { texts, change } = usePage();
  const { wants, list } = state;
  const { wheel } = counts;
  const wish = (name: "brakes" | "gears" | "kind", words: Record<string, string>) => (
    <ChipChoice<string>
      name={name}
      legend={texts.wishes[name]}
      none="any"
      any={counts[name].any}
      chips={Object.entries(words).map(([value, label]) => ({
        value,
        label,
        bikes: (counts[name] as Record<string, number>)[value] ?? 0,
      }))}
      chosen={wants[name]}
      onChoose={(value) => change(wanted({ [name]: value }))}
    />
  );
  return (
    <div class="filters">
      <PriceFilter wants={wants} counts={counts.max_price} currency={list.loaded?.list?.currency ?? null} />
      <MassFilter wants={wants} counts={counts.max_mass} />
      {wheel.sizes.length > 0 && (
        <ChipChoice
          name="wheel"
          legend={texts.wishes.wheel}
          none={null}
          any={wheel.any}
          chips={wheel.sizes.map(({ nominal_in: value, bikes }) => ({
            value,
            label: texts.rack.wheel({ nominal: value }),
            bikes,
          }))}
          chosen={wants.wheel}
          onChoose={(wheel) => change(wanted({ wheel }))}
        />
      )}
      {wish("brakes", texts.wishes.brakeWishes)}
      {wish("gears", texts.wishes.gearsWishes)}
      {wish("kind", texts.wishes.kinds)}
      <ColourFilter wants={wants} counts={counts.colour} />
      <ChipTick
        label={texts.wishes.availableOnly}
        bikes={counts.available_only.available}
        ticked={wants.availableOnly}
        onTick={(availableOnly) => change(wanted({ availableOnly }))}
      />
    </div>
  );
}

/** Any limit can be typed; a few round ones are there to press. */
function PriceFilter({ wants, counts, currency }: FilterProps<"max_price"> & { currency: string | null }) {
  const { texts, figures, change } = usePage();
  return (
    <div>
      <NumberField
        id="max-price"
        label={texts.wishes.maxPrice}
        text={wants.maxPrice}
        onType={(maxPrice) => change(wanted({ maxPrice }))}
      />
      <ChipChoice
        name="price"
        legend={texts.wishes.maxPrice}
        legendShown={false}
        none={null}
        any={counts.any}
        chips={counts.limits.map(({ limit: value, bikes }) => ({
          value,
          label: figures.money(value, currency),
          bikes,
        }))}
        chosen={plainNumber(wants.maxPrice)}
        onChoose={(limit) => change(wanted({ maxPrice: String(limit ?? "") }))}
      />
    </div>
  );
}

function MassFilter({ wants, counts }: FilterProps<"max_mass">) {
  const { texts, figures, change } = usePage();
  const inPounds = massUnitBeside(figures.unit) === "lb";
  const limits = inPounds ? counts.limits_lb : counts.limits_kg;
  return (
    <div>
      <MassField
        id="max-mass"
        label={texts.wishes.maxMass}
        text={wants.maxMassKg}
        onType={(maxMassKg) => change(wanted({ maxMassKg }))}
      />
      <ChipChoice
        name="mass"
        legend={texts.wishes.maxMass({ unit: figures.massUnit })}
        legendShown={false}
        none={null}
        any={counts.any}
        chips={limits.map(({ limit, bikes }) => ({
          value: inPounds ? `${limit} lb` : limit,
          label: `${figures.number(limit)}\u00a0${figures.massUnit}`,
          bikes,
        }))}
        chosen={massSent(wants.maxMassKg)}
        onChoose={(limit) => change(wanted({ maxMassKg: String(limit ?? "") }))}
      />
    </div>
  );
}

/** So many are seen at first, the most frequent ones. */
const firstColours = 10;

function ColourFilter({ wants, counts }: FilterProps<"colour">) {
  const { texts, change } = usePage();
  const [all, showAll] = useState(false);
  const { colours, more_colours: rarer } = counts;
  if (colours.length === 0) return null;
  const shown = colours.filter(({ colour }, place) => all || place < firstColours || colour === wants.colour);
  const more = texts.wishes.moreColours({ number: colours.length - shown.length + rarer });
  return (
    <ChipChoice
      name="colour"
      legend={texts.wishes.colour}
      none={null}
      any={counts.any}
      chips={shown.map(({ colour: value, bikes }) => ({ value, label: value, bikes }))}
      chosen={wants.colour}
      onChoose={(colour) => change(wanted({ colour }))}
    >
      {shown.length < colours.length ? (
        <button type="button" class="plain-link" onClick={() => showAll(true)}>
          {more}
        </button>
      ) : (
        rarer > 0 && <p class="soft">{more}</p>
      )}
    </ChipChoice>
  );
}
