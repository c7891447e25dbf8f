// What riders and bikes of a morning are called.
import type { ClubDayAnswer } from "../../engine/wire";
import type { ClubState } from "../../state/club-day";

export const ridersHere = ({ riders, gone }: ClubState) => riders.filter(({ id }) => !gone.includes(id));

/** The name of a bike, with its mark where the two differ. */
export function bikeName(plan: ClubDayAnswer, id: string): string {
  const name = plan.bikes.find((bike) => bike.id === id)?.name ?? "";
  return name === "" || name === id ? id : `${id} · ${name}`;
}

/** The rider's name, or its place in the table where names are not to be seen. */
export function riderCalled({ riders, numbersOnly }: ClubState, id: string): string {
  if (!numbersOnly) return id;
  return String(riders.findIndex((rider) => rider.id === id) + 1);
}
