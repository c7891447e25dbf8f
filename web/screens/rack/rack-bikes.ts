// The bikes of the rack: judged ones in the engine's order, or, before there is a rider, those of the list as they are.
import type { AssessAnswer, JudgedBike, ListAnswer } from "../../engine/wire-answers";

export interface RackBike extends Pick<
  JudgedBike,
  "id" | "name" | "taped" | "price" | "currency" | "mass_kg"
> {
  wheelInches: number | null;
  span: { lowest: number | null; highest: number | null };
  judged: JudgedBike | null;
}

export function rackBikes(answer: AssessAnswer | null, list: ListAnswer | null): RackBike[] {
  if (answer !== null) {
    return answer.bikes.map((bike) => ({
      ...bike,
      wheelInches: bike.wheel_nominal_in,
      span: bike.span_mm,
      judged: bike,
    }));
  }
  return (list?.bikes ?? []).map((bike) => ({
    ...bike,
    taped: false,
    wheelInches: bike.wheel?.nominal_in ?? null,
    span: { lowest: bike.saddle_lowest_mm, highest: bike.saddle_highest_mm },
    judged: null,
  }));
}
