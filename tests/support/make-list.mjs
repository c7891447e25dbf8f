#!/usr/bin/env node
// Writes a list of as many invented bikes as wanted, the same on every run, for benchmarks and limits:
//
//   node make-list.mjs 20000 > list.json        lengths as numbers of centimetres
//   node make-list.mjs 1000 in > list.json      lengths as texts such as "19 1/2 in"

import { fileURLToPath } from "node:url";

/** Spans by nominal wheel size in inches: lowest saddle and length of the span in mm (common practice, from memory). */
const sizes = [
  { wheel: 12, lowest: 360, span: 100, kg: 6.2, crank: 85, bottomBracket: 178, teeth: [25, 13] },
  { wheel: 14, lowest: 420, span: 120, kg: 6.8, crank: 95, bottomBracket: 196, teeth: [28, 15] },
  { wheel: 16, lowest: 480, span: 140, kg: 7.4, crank: 105, bottomBracket: 216, teeth: [32, 16] },
  { wheel: 18, lowest: 530, span: 150, kg: 8.1, crank: 114, bottomBracket: 230, teeth: [32, 17] },
  { wheel: 20, lowest: 570, span: 190, kg: 9.3, crank: 130, bottomBracket: 248, teeth: [34, 18] },
  { wheel: 24, lowest: 660, span: 200, kg: 10.8, crank: 145, bottomBracket: 268, teeth: [36, 30] },
  { wheel: 26, lowest: 740, span: 210, kg: 12.1, crank: 160, bottomBracket: 286, teeth: [38, 32] },
];
const marking = {
  12: "47-203",
  14: "47-254",
  16: "47-305",
  18: "47-355",
  20: "47-406",
  24: "50-507",
  26: "50-559",
};
const colours = ["green", "red", "blue", "yellow", "orange", "white", "black", "silver"];
const conditions = ["as new", "good", "used", "well used", "needs new tyres"];
const eighths = ["", " 1/8", " 1/4", " 3/8", " 1/2", " 5/8", " 3/4", " 7/8"];

/** A linear congruential generator modulo 2^32 (constants of Numerical Recipes): the same numbers everywhere. */
function repeatableRandom(seed) {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

function lengthWriter(units) {
  if (units === "cm") return (mm) => Math.round(mm / 5) / 2;
  return (mm) => {
    const count = Math.round((mm / 25.4) * 8);
    return `${Math.floor(count / 8)}${eighths[count % 8]} in`;
  };
}

/** A list as a plain object, ready for JSON.stringify. */
export function makeList(count, units = "cm") {
  const random = repeatableRandom(count);
  const pick = (list) => list[Math.floor(random() * list.length)];
  const around = (middle, spread) => middle + (random() + random() - 1) * spread;
  const length = lengthWriter(units);

  const bikes = Array.from({ length: count }, (_, index) => {
    const size = pick(sizes);
    const id = `B${String(index + 1).padStart(5, "0")}`;
    const lowest = around(size.lowest, 35);
    const bike = {
      id,
      name: `Bike ${id.slice(1)}, ${size.wheel} in`,
      kind: "pedal",
      wheel: random() < 0.7 ? marking[size.wheel] : String(size.wheel),
      saddle_lowest: length(lowest),
      saddle_highest: length(lowest + around(size.span, 30)),
      standover: length(lowest - around(70, 20)),
      mass_kg: Math.round(around(size.kg, 1.5) * 10) / 10,
      brakes: pick([["front hand", "rear hand"], ["front hand", "coaster"], ["coaster"]]),
      lever_reach: length(around(55, 10)),
      gears: pick([1, 1, 1, 3, 7]),
      chainring: size.teeth[0],
      sprocket: size.teeth[1],
      crank: length(size.crank),
      bottom_bracket_height: length(around(size.bottomBracket, 10)),
      price: Math.round(around(120, 90) / 5) * 5,
      colours: [pick(colours)],
      condition: pick(conditions),
      available: random() < 0.8,
    };
    if (random() < 0.1) delete bike.saddle_highest;
    if (random() < 0.3) delete bike.price;
    return bike;
  });
  const title = `${count} invented bikes`;
  return { format: "saddlerule-catalogue", version: 1, title, units, currency: "EUR", bikes };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const count = Number(process.argv[2]);
  const units = process.argv[3] ?? "cm";
  if (!Number.isInteger(count) || count < 1 || !["cm", "in"].includes(units)) {
    console.error("usage: node make-list.mjs COUNT [cm|in] > list.json");
    process.exit(2);
  }
  process.stdout.write(JSON.stringify(makeList(count, units)) + "\n");
}
