// The bikes of the rack: judged ones in the engine's order, or, before there is a rider, those of the list as they are.
import { hanging } from "../../engine/list-questions";
import { rackQuestion } from "../../engine/rack-question";
import type { JudgedBike, ListedEntry, NamedBike } from "../../engine/wire";
import { lastAnswer } from "../../state/answers";
import type { PageState } from "../../state/page-state";

export interface RackBike extends Pick<
  JudgedBike,
  "id" | "name" | "taped" | "price" | "currency" | "mass_kg"
> {
  wheelInches: number | null;
  span: { lowest: number | null; highest: number | null };
  judged: JudgedBike | null;
}

export interface RackBikes {
  length: number;
  /** null: a bike that the engine has not told about yet. */
  at: (place: number) => RackBike | null;
}

export function rackBikes(state: Pick<PageState, "answers" | "list">): RackBikes {
  const { answer, from } = lastAnswer(state, rackQuestion);
  if (answer !== null) {
    const length = Object.values(answer.counts).reduce((sum, count) => sum + count, 0);
    return { length, at: (place) => judgedOnRack(answer.bikes[place - from]) };
  }
  const listed = lastAnswer(state, hanging);
  return {
    length: state.list.loaded?.counts.bikes ?? 0,
    at: (place) => listedOnRack(listed.answer?.entries[place - listed.from]),
  };
}

/** The same object for the same bike, so that its row is not drawn again. */
const onRack = new WeakMap<JudgedBike | ListedEntry, RackBike>();

function keptOnRack<Bike extends JudgedBike | ListedEntry>(
  bike: Bike | undefined,
  make: (bike: Bike) => RackBike,
): RackBike | null {
  if (bike === undefined) return null;
  const kept = onRack.get(bike) ?? make(bike);
  onRack.set(bike, kept);
  return kept;
}

const judgedOnRack = (bike: JudgedBike | undefined): RackBike | null =>
  keptOnRack(bike, (bike) => ({
    ...bike,
    wheelInches: bike.wheel_nominal_in,
    span: bike.span_mm,
    judged: bike,
  }));

const listedOnRack = (bike: ListedEntry | undefined): RackBike | null =>
  keptOnRack(bike, (bike) => ({
    ...bike,
    // A usable bike has both: the engine gives it an id where the file has none.
    id: bike.id ?? "",
    name: bike.name ?? "",
    taped: false,
    wheelInches: bike.wheel?.nominal_in ?? null,
    span: { lowest: bike.saddle_lowest_mm, highest: bike.saddle_highest_mm },
    judged: null,
  }));

/** The bike that puts this one behind. */
export function beatenBy(judged: JudgedBike | null): NamedBike | null {
  const { beaten_by: id, beaten_by_name: name } = judged?.standing ?? {};
  return id === undefined || name === undefined ? null : { id, name };
}
