// The bikes of the rack: judged ones in the engine's order, or, before there is a rider, those of the list as they are.
import type { BikeFacts, JudgedBike, NamedBike } from "../../engine/wire-answers";
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

export function rackBikes({ judged, list }: Pick<PageState, "judged" | "list">): RackBikes {
  const { answer, from } = judged;
  if (answer !== null) {
    const length = Object.values(answer.counts).reduce((sum, count) => sum + count, 0);
    return { length, at: (place) => judgedOnRack(answer.bikes[place - from]) };
  }
  const bikes = list.loaded?.bikes ?? [];
  return { length: bikes.length, at: (place) => listedOnRack(bikes[place]) };
}

function judgedOnRack(bike: JudgedBike | undefined): RackBike | null {
  return bike === undefined
    ? null
    : { ...bike, wheelInches: bike.wheel_nominal_in, span: bike.span_mm, judged: bike };
}

function listedOnRack(bike: BikeFacts | undefined): RackBike | null {
  return bike === undefined
    ? null
    : {
        ...bike,
        taped: false,
        wheelInches: bike.wheel?.nominal_in ?? null,
        span: { lowest: bike.saddle_lowest_mm, highest: bike.saddle_highest_mm },
        judged: null,
      };
}

/** A bike by its id: of the list, or taped by the family. */
export function namedBike({ list, tape }: PageState, id: string | undefined): NamedBike | null {
  if (id === undefined) return null;
  const listed = list.loaded?.bikes.find((bike) => bike.id === id);
  const kept = tape.kept.find((bike) => bike.id === id);
  return listed ?? (kept === undefined ? null : { id, name: kept.bike.name });
}
