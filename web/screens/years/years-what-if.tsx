// What the plan may be asked to allow for: years, money, bikes at a time, and what the family has already.
import { foundQuestion } from "../../engine/years-questions";
import type { YearsAnswer } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { Select } from "../../parts/choices";
import { MonthField, NumberField, TextField } from "../../parts/fields";
import { Fold } from "../../parts/fold";
import { answerTo } from "../../state/answers";
import type { PageState } from "../../state/page-state";
import { bikeMarked, markOf, marksHere, yearsWished } from "../../state/years-ahead";
import type { BikeStanding } from "../../state/years-ahead";

const upTo = (most: number): number[] => Array.from({ length: most }, (_, place) => place + 1);
const standings: BikeStanding[] = ["", "owned", "keep", "not"];

interface WhatIfProps {
  state: PageState;
  plan: YearsAnswer | null;
}

export function YearsWhatIf({ state, plan }: WhatIfProps) {
  const { texts, change } = usePage();
  const { years, perYear, mostBikes, buyFrom } = state.years;
  const words = texts.years;
  const thisYear = Number(state.today.slice(0, 4));
  return (
    <div class="what-if stack">
      <Fold title={words.whatIf}>
        <div class="pair">
          <Select
            label={words.title}
            options={upTo(10).map((value) => ({ value, label: String(value) }))}
            chosen={years}
            onChoose={(years) => change(yearsWished({ years }))}
          />
          <Select
            label={words.mostBikes}
            options={[
              { value: null, label: texts.rider.notSaid },
              ...upTo(8).map((value) => ({ value, label: String(value) })),
            ]}
            chosen={mostBikes}
            onChoose={(mostBikes) => change(yearsWished({ mostBikes }))}
          />
        </div>
        <NumberField
          id="years-money"
          label={words.perYear}
          text={perYear}
          onType={(perYear) => change(yearsWished({ perYear }))}
        />
        <MonthField
          legend={words.buyFrom}
          chosen={buyFrom}
          years={upTo(10).map((ahead) => String(thisYear + ahead - 1))}
          onChoose={(buyFrom) => change(yearsWished({ buyFrom }))}
        />
      </Fold>
      <Fold title={words.yours}>
        <YourBikes state={state} plan={plan} />
      </Fold>
    </div>
  );
}

interface KnownBike {
  name: string;
  /** Is there one without the family's word? */
  priced: boolean;
}

/** Those that the family measured, marked, or has in its plan, and some of the list. */
function bikesToMark(state: PageState, plan: YearsAnswer | null): Map<string, KnownBike> {
  const bikes = new Map<string, KnownBike>();
  for (const { id, bike } of state.tape.kept) bikes.set(id, { name: bike.name, priced: bike.price !== "" });
  const typed = new Set(marksHere(state).flatMap(({ id, price }) => (price === "" ? [] : id)));
  const others = [...(plan?.bikes ?? []), ...(answerTo(state, foundQuestion).answer?.entries ?? [])];
  for (const { id, name, price } of others)
    if (id !== null && !bikes.has(id))
      bikes.set(id, {
        name: name === null || name === "" ? id : name,
        priced: price !== null && !typed.has(id),
      });
  return bikes;
}

/** By their names, so that none moves while somebody is at it. */
function inOrder(bikes: Map<string, KnownBike>, locale: string): [string, KnownBike][] {
  const { compare } = new Intl.Collator(locale, { numeric: true });
  return [...bikes].sort(([, one], [, other]) => compare(one.name, other.name));
}

function YourBikes({ state, plan }: WhatIfProps) {
  const { texts, figures, change } = usePage();
  const words = texts.years;
  return (
    <>
      <p class="soft">{words.yoursWhy}</p>
      {state.list.loaded !== null && (
        <TextField
          id="years-find"
          label={texts.desk.find}
          kind="plain"
          text={state.years.find}
          onType={(find) => change(yearsWished({ find }))}
        />
      )}
      <ul class="stack">
        {inOrder(bikesToMark(state, plan), figures.locale).map(([id, { name, priced }]) => {
          const mark = markOf(state, id);
          return (
            <li key={id} class="pair">
              <Select
                label={name}
                options={standings.map((value) => ({ value, label: words.standings[value || "open"] }))}
                chosen={mark.is}
                onChoose={(is) => change(bikeMarked(id, { is }))}
              />
              {!priced && mark.is !== "not" && (
                <NumberField
                  id={`years-price-${encodeURIComponent(id)}`}
                  label={texts.bike.fact.price + texts.colon + name}
                  text={mark.price}
                  onType={(price) => change(bikeMarked(id, { price }))}
                />
              )}
            </li>
          );
        })}
      </ul>
    </>
  );
}
