// What nobody has to say about a rider, and why it helps.
import { Switch } from "../../parts/choices";
import { MonthField, TextField } from "../../parts/fields";
import { MassField } from "../../parts/mass-field";
import { worded } from "../../parts/notes";
import { rackQuestion } from "../../engine/rack-question";
import { usePage } from "../../page/page-context";
import { movesOn } from "../../state/request-building";
import { riderSaid } from "../../state/rider-changes";
import { lastAnswer } from "../../state/answers";
import type { PageState, RiderEntry } from "../../state/page-state";
import type { Figures } from "../../figures/format-figures";
import type { Texts } from "../../texts/texts";

const oldestRider = 18;
const yearsAhead = 4;
const populations = ["us", "gb", "nl", "any"] as const;

/** Whole years from `first`, `count` of them, upwards or downwards. */
function yearsFrom(first: number, count: number, step: 1 | -1): string[] {
  return Array.from({ length: count }, (_, place) => String(first + step * place));
}

function massProblemOf(state: PageState, texts: Texts, figures: Figures): string | null {
  const { refusal } = lastAnswer(state, rackQuestion);
  return refusal?.where.startsWith("rider.mass") === true ? worded(texts, figures, refusal) : null;
}

interface RiderMoreProps {
  state: PageState;
  /** Somebody came here to type the weight. */
  massAsked: boolean;
}

export function RiderMore({ state, massAsked }: RiderMoreProps) {
  const { texts, figures, change } = usePage();
  const { rider, today } = state;
  const thisYear = Number(today.slice(0, 4));
  const { refusal } = lastAnswer(state, rackQuestion);
  const statureProblem =
    refusal?.where.startsWith("rider.stature") === true ? worded(texts, figures, refusal) : null;
  const massProblem = massProblemOf(state, texts, figures);
  return (
    <div class="stack">
      <p class="soft">{texts.rider.moreWhy}</p>
      <MonthField
        legend={texts.rider.born}
        chosen={rider.born}
        years={yearsFrom(thisYear, oldestRider + 1, -1)}
        onChoose={(born) => change(riderSaid({ born }))}
      />
      <Switch<RiderEntry["sex"]>
        name="sex"
        legend={texts.rider.sex}
        chosen={rider.sex}
        onChoose={(sex) => change(riderSaid({ sex }))}
        options={[
          { value: null, label: texts.rider.notSaid },
          { value: "girl", label: texts.rider.girl },
          { value: "boy", label: texts.rider.boy },
        ]}
      />
      <p class="soft">{texts.rider.sexWhy}</p>
      <Switch
        name="population"
        legend={texts.rider.population}
        chosen={rider.population}
        onChoose={(population) => change(riderSaid({ population }))}
        options={populations.map((value) => ({ value, label: texts.rider.populations[value] }))}
      />
      <p class="soft">{texts.rider.populationWhy}</p>
      <TextField
        id="stature"
        label={`${texts.rider.stature} (${texts.units[rider.stature.unit]})`}
        text={rider.stature.text}
        problem={statureProblem}
        onType={(text) => change(riderSaid({ stature: { ...rider.stature, text } }))}
      />
      <MassField
        id="rider-mass"
        label={texts.rider.mass}
        hint={texts.rider.massWhy}
        text={rider.massKg}
        problem={massProblem}
        asked={massAsked}
        onType={(massKg) => change(riderSaid({ massKg }))}
      />
      {movesOn(rider.stage) && (
        <MonthField
          legend={texts.rider.ridingFrom[rider.stage]}
          hint={texts.rider.ridingFromWhy}
          chosen={rider.ridingFrom}
          years={yearsFrom(thisYear, yearsAhead, 1)}
          onChoose={(month) => change(riderSaid({ ridingFrom: month }))}
        />
      )}
    </div>
  );
}
