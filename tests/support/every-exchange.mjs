// One request of every task and form, about a small list; compare and merge take the other one.

import { measuredBike } from "./measured-bike.mjs";

const bikes = [
  {
    id: "L01",
    name: "Red balance bike",
    kind: "balance",
    wheel: "12",
    saddle_lowest: 31,
    saddle_highest: 43,
    mass_kg: 3.4,
    price: 30,
    colours: ["red"],
  },
  {
    id: "L02",
    name: "Two in one",
    ...measuredBike,
    price: 120,
  },
  {
    id: "L03",
    name: "Blue",
    wheel: "20",
    saddle_lowest: 58,
    saddle_highest: 74,
    mass_kg: 8.9,
    available: false,
  },
  { id: "L04", name: "Green", wheel: "16", saddle_lowest: 49, price: 60 },
  { id: "L05", saddle_lowest: 495, saddle_highest: 62 },
  { id: "L06", name: "Grown", wheel: "24", saddle_lowest: 68, saddle_highest: 90, price: 140, brakes: [] },
];

export const shed = {
  title: "Shed",
  measured_on: "2026-10-03",
  units: "cm",
  currency: "EUR",
  hall: 1,
  bikes,
};

export const otherShed = {
  title: "Barn",
  units: "cm",
  bikes: [{ ...bikes[1], saddle_lowest: 48 }, { id: "N1", saddle_lowest: 52 }, { id: "N2" }],
};

const today = "2026-11-25";
const reading = { on: "2026-11-20", inseam_mm: 495, shoes: true };
const rider = {
  stage: "starting",
  readings: [reading],
  born: "2021-09",
  sex: "girl",
  stature_mm: 1105,
  mass_kg: 18.5,
  population: "nl",
  confidence: "usual",
  riding_from: "2027-05-01",
  sole_mm: 15,
  sole_sd_mm: 5,
  reading_sd_mm: 8,
};
const typed = {
  stage: "side_wheels",
  confidence: "bold",
  readings: [{ on: "2026-11-20", inseam: "19 1/2", unit: "in" }],
  stature: "110",
  stature_unit: "cm",
  mass: "40",
  mass_unit: "lb",
};
const guessed = { stage: "riding", born: "2018-04-12", sex: "boy" };
const taped = [
  {
    id: "T",
    name: "16 in",
    kind: "pedal",
    wheel: "47-305",
    saddle_lowest: 49,
    saddle_highest: "63 cm",
    price: 60,
  },
];
const wants = {
  max_price: 150,
  max_mass_kg: 9,
  brakes: "any",
  kind: "any",
  gears: "any",
  available_only: true,
  wheel: 16,
  colour: "red",
  off_road: true,
  order: "cost",
};
const rows = { from: 0, count: 5 };
const club = {
  today,
  riders: [
    { id: "1", rider },
    { id: "2", rider: guessed },
    { id: "3" },
    { id: "4", rider: { born: "2025-01" } },
  ],
};

/** Each with a name of its own. */
export const everyExchange = [
  { name: "load", request: { do: "load" } },
  {
    name: "load, rows",
    request: {
      do: "load",
      rows,
      show: "bikes",
      find: "a",
      table_units: "cm",
      columns: { name: 1, wheel: null },
      to_mend: true,
    },
  },
  {
    name: "new_list",
    request: { do: "new_list", title: "Barn", measured_on: "2026-11-01", units: "in", currency: "EUR" },
  },
  { name: "new_list, rows", request: { do: "new_list", title: null, rows } },
  { name: "list", request: { do: "list" } },
  { name: "list, rows", request: { do: "list", rows, show: "all", find: "T" } },
  { name: "entry by number", request: { do: "entry", number: 2 } },
  { name: "entry by id", request: { do: "entry", id: "L02" } },
  {
    name: "check_entry",
    request: { do: "check_entry", cells: { id: "N", saddle_lowest: "495" }, number: 1 },
  },
  {
    name: "edit",
    request: {
      do: "edit",
      rows,
      changes: [
        { set: { saddle_lowest: "19 1/2 in", notes: null }, number: 1 },
        { add: { id: "N", saddle_highest: "60" }, before: 1 },
        { copy: 2 },
        { remove: 3 },
        { put: '{"id":"X","saddle_lowest":50}', number: 1, origin: 3 },
        { insert: '{"id":"Y","saddle_lowest":50}', before: 2 },
        { list: { title: "Barn", units: "cm" } },
      ],
    },
  },
  { name: "edit, a kind of slip mended", request: { do: "edit", changes: [{ repair_all: "slip_unit" }] } },
  { name: "compare", request: { do: "compare", table_units: "mm" } },
  { name: "merge", request: { do: "merge", rows, add: true, to_mend: false } },
  { name: "save", request: { do: "save", form: "json", only: "set_aside" } },
  { name: "save, a table", request: { do: "save", form: "csv", separator: ";", decimal: "," } },
  { name: "assess", request: { do: "assess", today, rider, resale_share: 0.5, taped, taped_units: "cm" } },
  { name: "assess, wishes", request: { do: "assess", today, rider: guessed, wants, only: ["L01", "L02"] } },
  { name: "assess, brief rows", request: { do: "assess", today, rider: typed, detail: "brief", rows } },
  { name: "assess, spans", request: { do: "assess", today, rider: guessed, detail: "spans", rows } },
  { name: "changes", request: { do: "changes", today, rider, wants: { max_price: 100 } } },
  { name: "forecast", request: { do: "forecast", today, rider, months: 12 } },
  {
    name: "forecast among other children",
    request: { do: "forecast", today, rider: { ...rider, born: "2020-03" }, months: 1, centiles: true },
  },
  { name: "side_view", request: { do: "side_view", today, rider, bike: "T", taped, taped_units: "cm" } },
  {
    name: "read_bike",
    request: { do: "read_bike", text: "#L07: saddle 52-66 cm, wheel 16, 80 EUR", units: "cm" },
  },
  {
    name: "read_riders",
    request: {
      do: "read_riders",
      today,
      text: "name,inseam,stage\nAda,49.5,starting\nBo,x,\nTotal,2,\n",
      units: "cm",
    },
  },
  {
    name: "write_riders",
    request: { do: "write_riders", riders: [{ name: "Ada", inseam: "49.5", age: "5" }] },
  },
  {
    name: "club_day",
    request: {
      do: "club_day",
      ...club,
      rounds: 2,
      off_road: false,
      available_only: false,
      absent: ["L04"],
      locked: [{ rider: "1", bike: "L02", round: 1 }],
      not: [{ rider: "2", bike: "L03" }],
      before: [{ rider: "2", bike: "L06" }],
    },
  },
  { name: "suits", request: { do: "suits", rows, reading_sd_mm: 8 } },
  { name: "suits, a table", request: { do: "suits", form: "csv" } },
  {
    name: "years_ahead",
    request: {
      do: "years_ahead",
      today,
      riders: [
        { id: "a", rider, pedals_from: "2027-03" },
        { id: "b", rider: guessed },
      ],
      horizon_months: 24,
      owned: ["L01"],
      keep: ["L03"],
      not: ["L02"],
      prices: { L03: 80 },
      currency: "EUR",
      taped,
      taped_units: "cm",
      resale_share: 0.5,
      min_probability: 0.8,
      max_per_year: 300,
      max_bikes: 4,
      buy_from: "2026-12",
      limit_ms: 60_000,
      skip_unknown: false,
    },
  },
  { name: "about", request: { do: "about" } },
];
