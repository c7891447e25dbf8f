// Readings of other days, kept by date.
import { TextField, TickField } from "../../parts/fields";
import { usePage } from "../../page/page-context";
import { readingAdded, readingChanged, readingRemoved } from "../../state/rider-changes";
import type { PageState, ReadingEntry } from "../../state/page-state";
import { problemOf } from "./rider-readings";

export function EarlierReadings({ state }: { state: PageState }) {
  const { texts, figures, change } = usePage();
  const earlier = state.rider.readings.filter((reading) => reading.on !== state.today);
  return (
    <>
      <p class="soft">{texts.rider.earlierWhy}</p>
      <ul class="stack">
        {earlier.map((reading) => (
          <li key={reading.key}>
            <EarlierReading
              reading={reading}
              today={state.today}
              problem={problemOf(state, texts, figures, reading.key)}
            />
          </li>
        ))}
      </ul>
      <button type="button" class="button wide" onClick={() => change(readingAdded(""))}>
        {texts.rider.addEarlier}
      </button>
    </>
  );
}

interface EarlierReadingProps {
  reading: ReadingEntry;
  today: string;
  problem: string | null;
}

function EarlierReading({ reading, today, problem }: EarlierReadingProps) {
  const { texts, figures, change } = usePage();
  const { key, figure, on, shoes } = reading;
  return (
    <div class="earlier stack">
      <div class="pair">
        <label class="field">
          <span class="label">{texts.rider.readOn}</span>
          <input
            type="date"
            value={on}
            max={today}
            onChange={(event) => change(readingChanged(key, { on: event.currentTarget.value }))}
          />
        </label>
        <TextField
          id={`reading-${key}`}
          label={`${texts.rider.inseam} (${texts.units[figure.unit]})`}
          text={figure.text}
          whenEmpty={texts.rider.inseamExample[figure.unit]}
          problem={problem}
          onType={(text) => change(readingChanged(key, { figure: { ...figure, text } }))}
        />
      </div>
      <div class="title-row">
        <TickField
          label={texts.rider.withShoes}
          ticked={shoes}
          onTick={(on) => change(readingChanged(key, { shoes: on }))}
        />
        <button
          type="button"
          class="plain-link"
          aria-label={texts.rider.removeReading({
            figure: figure.text,
            on: on === "" ? "" : figures.day(on),
          })}
          onClick={() => change(readingRemoved(key))}
        >
          {texts.rider.remove}
        </button>
      </div>
    </div>
  );
}
