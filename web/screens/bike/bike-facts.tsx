// What the list says about one bike. What it does not say is left out.
import type { BikeFacts } from "../../engine/wire";
import type { Figures } from "../../figures/format-figures";
import { usePage } from "../../page/page-context";
import { Fold } from "../../parts/fold";
import type { Texts } from "../../texts/texts";

/** A fact's name and what is known of it. */
export type FactText = [name: string, value: string | null];

export function factRows(texts: Texts, figures: Figures, facts: Partial<BikeFacts>): FactText[] {
  const { fact } = texts.bike;
  const when = <Value,>(value: Value | null | undefined, form: (value: Value) => string): string | null =>
    value == null ? null : form(value);
  const length = (mm: number | null | undefined): string | null => when(mm, figures.length);
  const { saddle_lowest_mm: lowest = null, saddle_highest_mm: highest = null, colours = [] } = facts;
  return [
    [fact.wheel, when(facts.wheel, (wheel) => wheel.text)],
    [
      fact.span,
      lowest !== null && highest !== null
        ? texts.window.range({ low: figures.bareLength(lowest), high: figures.length(highest) })
        : texts.rack.bar({ lowest: length(lowest), highest: length(highest) }),
    ],
    [fact.standover, length(facts.standover_mm)],
    [fact.mass, when(facts.mass_kg, figures.mass)],
    [fact.brakes, when(facts.brakes, (brakes) => brakes.map((brake) => texts.bike.brakes[brake]).join(", "))],
    [fact.gears, when(facts.gears, figures.number)],
    [fact.price, when(facts.price, (price) => figures.money(price, facts.currency ?? null))],
    [fact.colours, colours.length === 0 ? null : colours.join(", ")],
    [fact.condition, facts.condition ?? null],
    [fact.riderLimit, when(facts.rider_mass_limit_kg, figures.mass)],
    [fact.available, when(facts.available, (available) => (available ? texts.bike.yes : texts.bike.no))],
    [fact.notes, facts.notes ?? null],
  ];
}

export function BikeFactsTable({ facts }: { facts: BikeFacts }) {
  const { texts, figures } = usePage();
  return (
    <section class="sheet">
      <Fold title={texts.bike.facts} open>
        <FactList rows={factRows(texts, figures, facts)} />
      </Fold>
    </section>
  );
}

export function FactList({ rows }: { rows: FactText[] }) {
  return (
    <dl class="facts">
      {rows.map(
        ([name, value]) =>
          value !== null && (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ),
      )}
    </dl>
  );
}
