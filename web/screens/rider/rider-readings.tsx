// The readings of today, typed large.
import { Switch } from "../../parts/choices";
import { TextField } from "../../parts/fields";
import { Notes, worded } from "../../parts/notes";
import { usePage } from "../../page/page-context";
import { rackQuestion } from "../../engine/rack-question";
import { readingKeyOf } from "../../engine/questions";
import type { Figures } from "../../figures/format-figures";
import type { TypedUnit } from "../../engine/narrowed";
import type { RefusalNote } from "../../engine/refusal";
import {
  readingAdded,
  readingChanged,
  readingRemoved,
  riderUnitChosen,
  shoesChosen,
} from "../../state/rider-changes";
import { lastAnswer } from "../../state/answers";
import type { PageState, ReadingEntry } from "../../state/page-state";
import type { Texts } from "../../texts/texts";

const units: TypedUnit[] = ["cm", "in"];
const mostOfADay = 4;

/** What is wrong with one reading, in words; null where nothing is. */
export function problemOf(state: PageState, texts: Texts, figures: Figures, key: number): string | null {
  const { refusal } = lastAnswer(state, rackQuestion);
  return refusal !== null && readingKeyOf(state, refusal.where) === key
    ? worded(texts, figures, refusal)
    : null;
}

/** Questions about readings are with the readings. */
export function aboutReadings({ where }: RefusalNote): boolean {
  return where.startsWith("rider.readings");
}

export function TodaysReadings({ state }: { state: PageState }) {
  const { texts, figures, change } = usePage();
  const readings = state.rider.readings.filter((reading) => reading.on === state.today);
  const newest = readings.at(-1);
  const { answer, refusal } = lastAnswer(state, rackQuestion);
  const questions = refusal === null ? (answer?.rider.notes.filter(aboutReadings) ?? []) : [];
  const { unit } = newest?.figure ?? { unit: state.unit };
  return (
    <section class="stack">
      <div class="inseam">
        <div class="inseam-figures stack">
          {readings.length < mostOfADay && newest?.figure.text.trim() !== "" && (
            <button type="button" class="plain-link again" onClick={() => change(readingAdded(state.today))}>
              {texts.rider.again}
            </button>
          )}
          {readings.map((reading, place) => (
            <TodaysReading
              key={reading.key}
              reading={reading}
              number={place + 1}
              problem={problemOf(state, texts, figures, reading.key)}
            />
          ))}
        </div>
        <Switch
          name="unit"
          legend={texts.rider.unit}
          chosen={unit}
          onChoose={(chosen) => change(riderUnitChosen(chosen))}
          options={units.map((value) => ({ value, label: <UnitName unit={value} /> }))}
        />
        <Switch
          name="shoes"
          legend={texts.rider.shoes}
          chosen={newest?.shoes ?? true}
          onChoose={(shoes) => change(shoesChosen(shoes))}
          options={[
            { value: true, label: texts.rider.shoesOn },
            { value: false, label: texts.rider.shoesOff },
          ]}
        />
      </div>
      <div class="told">
        <Notes notes={questions} />
      </div>
    </section>
  );
}

function UnitName({ unit }: { unit: TypedUnit }) {
  const { texts } = usePage();
  return (
    <>
      <span aria-hidden="true">{texts.units[unit]}</span>
      <span class="aloud">{texts.unitNames[unit]}</span>
    </>
  );
}

interface TodaysReadingProps {
  reading: ReadingEntry;
  number: number;
  problem: string | null;
}

function TodaysReading({ reading, number, problem }: TodaysReadingProps) {
  const { texts, change } = usePage();
  const first = number === 1;
  return (
    <div class={first ? "reading" : "reading repeated"}>
      <TextField
        id={`reading-${reading.key}`}
        label={first ? texts.rider.inseam : texts.rider.inseamAgain({ number })}
        text={reading.figure.text}
        whenEmpty={texts.rider.inseamExample[reading.figure.unit]}
        problem={problem}
        big
        asked={!first}
        onType={(text) => change(readingChanged(reading.key, { figure: { ...reading.figure, text } }))}
      />
      {!first && (
        <button type="button" class="plain-link" onClick={() => change(readingRemoved(reading.key))}>
          {texts.rider.remove}
        </button>
      )}
    </div>
  );
}
