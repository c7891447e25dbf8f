// How long reading a list of 20,000 bikes takes, by what a page could do without the engine, in one run under Node:
//
//   node tests/benchmarks/reading-benchmark.mjs
//
// JSON: the engine as wasm against JSON.parse and the same checks of every field in plain JavaScript.
// CSV:  the engine as wasm, which judges every bike as well, against PapaParse, which only splits and names the cells
//       (header: true, skipEmptyLines: true, everything else as it comes; no worker, no conversion of figures).
// All start from the file's bytes. Every figure is a median, every ratio one of medians taken in turns.

import Papa from "papaparse";
import { openBareEngine } from "../support/built-engine.mjs";
import { makeList } from "../support/make-list.mjs";

const bikes = 20_000;
const turns = 15;

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

const list = makeList(bikes);
const cell = (value) =>
  Array.isArray(value) ? value.join(", ") : typeof value === "boolean" ? (value ? "yes" : "no") : value;
const rows = list.bikes.map((bike) =>
  Object.fromEntries(Object.entries(bike).map(([name, value]) => [name, cell(value)])),
);
const columns = [...new Set(list.bikes.flatMap((bike) => Object.keys(bike)))];
const encode = (text) => new TextEncoder().encode(text);
const decode = (bytes) => new TextDecoder("utf-8", { fatal: true }).decode(bytes);

const jsonFile = encode(JSON.stringify(list));
const csvFile = encode(
  `# units: ${list.units}\r\n# currency: ${list.currency}\r\n${Papa.unparse({ fields: columns, data: rows })}`,
);
const csvWithoutHead = encode(Papa.unparse({ fields: columns, data: rows }));

// The checks of core/lists/catalogue/bike_reader.cpp, in plain JavaScript.
const perUnit = { mm: 1, cm: 10, in: 25.4 };
const lengths = {
  saddle_lowest: [150, 1300],
  saddle_highest: [150, 1300],
  standover: [100, 1100],
  lever_reach: [20, 150],
  crank: [40, 250],
  bottom_bracket_height: [80, 450],
};
const figures = {
  mass_kg: [0.5, 60],
  rider_mass_limit_kg: [5, 300],
  seat_tube_angle_deg: [45, 90],
  price: [0, 1e9],
};
const counts = { gears: [0, 40], chainring: [8, 80], sprocket: [6, 80] };
const texts = new Set(["id", "name", "condition", "notes"]);
const brakes = new Set(["front hand", "rear hand", "coaster"]);
const within = (value, [low, high]) => value >= low && value <= high;
const short = (value) => typeof value === "string" && value.length <= 2000;

function isRight(name, value, unit) {
  if (name in lengths) return typeof value === "number" && within(value * unit, lengths[name]);
  if (name in figures) return typeof value === "number" && within(value, figures[name]);
  if (name in counts) return Number.isInteger(value) && within(value, counts[name]);
  if (texts.has(name)) return short(value);
  switch (name) {
    case "kind":
      return value === "pedal" || value === "balance";
    case "wheel":
      return /^(?:\d{2,3}-\d{3}|\d\d(?:\.\d)?)$/.test(value);
    case "brakes":
      return Array.isArray(value) && value.every((brake) => brakes.has(brake));
    case "colours":
      return Array.isArray(value) && value.every(short);
    case "available":
      return typeof value === "boolean";
    default:
      return true;
  }
}

function readPlainly(bytes) {
  const file = JSON.parse(decode(bytes));
  const unit = perUnit[file.units];
  const ids = new Set();
  const good = [];
  for (const bike of file.bikes) {
    let right = !ids.has(bike.id) && (bike.saddle_lowest ?? 0) <= (bike.saddle_highest ?? Infinity);
    for (const name in bike) right &&= isRight(name, bike[name], unit);
    ids.add(bike.id);
    if (right) good.push(bike);
  }
  return good.length;
}

function readWithPapa(bytes) {
  return Papa.parse(decode(bytes), { header: true, skipEmptyLines: true }).data.length;
}

const engine = await openBareEngine();
const readWithEngine = (bytes) => engine.ask({ do: "load" }, bytes).list.bikes;

const readers = {
  "JSON, engine": () => readWithEngine(jsonFile),
  "JSON, JSON.parse and the same checks": () => readPlainly(jsonFile),
  "CSV, engine": () => readWithEngine(csvFile),
  "CSV, PapaParse": () => readWithPapa(csvWithoutHead),
};
const times = Object.fromEntries(Object.keys(readers).map((name) => [name, []]));
for (let turn = 0; turn < turns + 3; ++turn) {
  for (const [name, read] of Object.entries(readers)) {
    const begin = performance.now();
    const count = read();
    const took = performance.now() - begin;
    if (count !== bikes) throw new Error(`${name} read ${count} of ${bikes} bikes`);
    if (turn >= 3) times[name].push(took); // the first turns warm up the compilers
  }
}

for (const [name, taken] of Object.entries(times))
  console.log(`${name.padEnd(40)} ${median(taken).toFixed(0).padStart(6)} ms`);
let failed = false;
function report(what, ratio, limit) {
  failed ||= ratio > limit;
  console.log(
    `${what.padEnd(40)} ${ratio.toFixed(2).padStart(6)}  (limit ${limit}${ratio > limit ? ", EXCEEDED" : ""})`,
  );
}
const ratio = (a, b) => median(times[a]) / median(times[b]);
report("JSON, engine by plain JavaScript", ratio("JSON, engine", "JSON, JSON.parse and the same checks"), 5);
report("CSV, engine by PapaParse", ratio("CSV, engine", "CSV, PapaParse"), 1);
process.exitCode = failed ? 1 : 0;
