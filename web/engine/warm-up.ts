// Makes engines quick before they are needed: browsers compile a module piece by piece, as it is first used, and keep what they
// compiled for all engines made of it. What reading a list and judging its bikes goes through is used here on an invented one.
import type { OwnEngine } from "./thread";
import type { SaveAnswer } from "./wire-lists";
import type { AssessRequest } from "./wire-requests";

/** Bikes enough to be sorted, with what most lists say of theirs. */
const bikes = [36, 42, 48, 54, 60].map((lowest, number) => ({
  id: `W${number}`,
  name: `Bike ${number}`,
  kind: "pedal",
  wheel: "47-305",
  saddle_lowest: lowest,
  saddle_highest: lowest + 16.5,
  standover: lowest - 7,
  mass_kg: 7.5 + number,
  brakes: ["front hand", "coaster"],
  lever_reach: 5.5,
  gears: 3,
  chainring: 32,
  sprocket: 16,
  crank: 12.7,
  bottom_bracket_height: 22,
  price: 90,
  colours: ["red"],
  available: true,
}));

const list = { format: "saddlerule-catalogue", version: 1, units: "cm", currency: "EUR", bikes };

const rows = { from: 0, count: 1 };

const judged: AssessRequest = {
  do: "assess",
  today: "2026-01-01",
  rider: { stage: "starting", readings: [{ on: "2026-01-01", shoes: true, inseam: "50", unit: "cm" }] },
  wants: { order: "lasts" },
  detail: "brief",
  rows,
};

/** Goes on while `wanted` says so, and ends the engine. */
export async function warmUp(engine: OwnEngine, wanted: () => boolean): Promise<void> {
  const load = (list: string): Promise<object> =>
    engine.ask({ do: "load", rows }, new TextEncoder().encode(list));
  const steps: (() => Promise<unknown>)[] = [
    () => load(JSON.stringify(list)),
    () => engine.ask(judged),
    async () => {
      const { text } = (await engine.ask({ do: "save", form: "csv" })) as SaveAnswer;
      await load(text);
    },
  ];
  for (const step of steps) if (wanted()) await step();
  engine.end();
}
