// Three made-up children to look round with, where a family has not said anything of its own yet.
import { familyOf, tookInHand } from "./family-changes";
import { newRider, noWants } from "./page-state";
import type { PageState, RiderEntry, WaitingRider } from "./page-state";
import { saysSomething } from "./request-building";
import type { Change } from "./store";

/** A first bike, a bike to learn on, and the one after: three children who show what a plan is. */
const inventedChildren = [
  { inseam: "38.5", stage: "gliding", age: 3 },
  { inseam: "49.5", stage: "starting", age: 5 },
  { inseam: "62", stage: "riding", age: 8 },
] as const;

/** Adds the made-up children, as if they had been measured today. A child of whom nothing was said makes room for them. */
export function childrenInvented(nameOf: (number: number) => string): Change<PageState> {
  return (state) => {
    const { today, unit } = state;
    const said = familyOf(state).filter(({ rider }) => rider.name !== "" || saysSomething(rider));
    const free = Math.max(0, ...familyOf(state).map(({ rider }) => rider.key)) + 1;
    const invented = inventedChildren.map(({ inseam, stage, age }, place): WaitingRider => {
      const rider = newRider(free + place, today, unit, state.rider.population);
      const figure = { text: inseam, unit: "cm" as const };
      return {
        rider: {
          ...rider,
          name: nameOf(place + 1),
          stage,
          readings: rider.readings.map((reading) => ({ ...reading, figure })),
          born: { year: String(Number(today.slice(0, 4)) - age), month: today.slice(5, 7) },
        },
        wants: noWants,
      };
    });
    const years = { ...state.years, invented: invented.map(({ rider: { key, name } }) => ({ key, name })) };
    return withFamily({ ...state, years }, [...said, ...invented]);
  };
}

/** One that was given another name is a child of the family's own; another child may have got the number of one that was removed. */
export function isInvented({ years }: PageState, rider: RiderEntry): boolean {
  return years.invented.some(({ key, name }) => key === rider.key && name === rider.name);
}

/** Takes the made-up children out again. */
export function inventedRemoved(): Change<PageState> {
  return (state) => {
    const others = familyOf(state).filter(({ rider }) => !isInvented(state, rider));
    const nobody = {
      rider: newRider(1, state.today, state.unit, state.rider.population),
      wants: noWants,
    };
    const years = { ...state.years, invented: [] };
    return withFamily({ ...state, years }, others.length === 0 ? [nobody] : others);
  };
}

/** The one in hand stays so, if it is among them. */
function withFamily(state: PageState, family: WaitingRider[]): PageState {
  const inHand = family.find(({ rider }) => rider.key === state.rider.key) ?? family[0];
  return inHand === undefined
    ? state
    : tookInHand(
        state,
        inHand,
        family.filter((one) => one !== inHand),
      );
}
