// What can happen to the rider's entry.
import type { TypedUnit } from "../engine/narrowed";
import type { PageState, ReadingEntry, RiderEntry } from "./page-state";
import type { Change } from "./store";

type PageChange = Change<PageState>;

export function riderSaid(part: Partial<RiderEntry>): PageChange {
  return (state) => ({ ...state, rider: { ...state.rider, ...part } });
}

function withReadings(state: PageState, readings: ReadingEntry[]): PageState {
  return { ...state, rider: { ...state.rider, readings } };
}

export function readingChanged(key: number, part: Partial<Omit<ReadingEntry, "key">>): PageChange {
  return (state) =>
    withReadings(
      state,
      state.rider.readings.map((reading) => (reading.key === key ? { ...reading, ...part } : reading)),
    );
}

/** One more figure for `on`, in the unit and with the shoes of the newest one. */
export function readingAdded(on: string): PageChange {
  return (state) => {
    const { readings } = state.rider;
    const key = Math.max(0, ...readings.map((reading) => reading.key)) + 1;
    const newest = readings.at(-1);
    const figure = { text: "", unit: newest?.figure.unit ?? state.unit };
    return withReadings(state, [...readings, { key, on, figure, shoes: newest?.shoes ?? true }]);
  };
}

export function readingRemoved(key: number): PageChange {
  return (state) =>
    withReadings(
      state,
      state.rider.readings.filter((reading) => reading.key !== key),
    );
}

/**
 * The unit switch beside today's readings: it says what their figures are, and how lengths are shown from now on. Fields
 * that are still empty, here and on the tape, follow it.
 */
export function riderUnitChosen(unit: TypedUnit): PageChange {
  return (state) => {
    const { rider, tape } = state;
    const readings = rider.readings.map((reading) =>
      reading.on === state.today || reading.figure.text === ""
        ? { ...reading, figure: { ...reading.figure, unit } }
        : reading,
    );
    const stature = rider.stature.text === "" ? { ...rider.stature, unit } : rider.stature;
    const { draft } = tape;
    const untouched = draft.lowest === "" && draft.highest === "" && draft.standover === "";
    return {
      ...state,
      unit,
      rider: { ...rider, readings, stature },
      tape: untouched ? { ...tape, draft: { ...draft, unit } } : tape,
    };
  };
}

/** Shoes on or off, for all readings of today. */
export function shoesChosen(shoes: boolean): PageChange {
  return (state) =>
    withReadings(
      state,
      state.rider.readings.map((reading) => (reading.on === state.today ? { ...reading, shoes } : reading)),
    );
}

export function shownIn(unit: TypedUnit): PageChange {
  return (state) => ({ ...state, unit });
}
