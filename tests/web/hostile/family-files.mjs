// Files of a family that mean harm, or are broken: { what, content }. `whole` is one that the page saved itself.

import { inEachPlace } from "./texts.mjs";
import { list } from "./lists.mjs";

/** A copy of `whole` with a change. */
const changed = (whole, change) => {
  const copy = structuredClone(whole);
  change(copy, copy.riders[0].rider, copy.riders[0].wants);
  return { content: JSON.stringify(copy) };
};

const kept = (id) => ({
  id,
  bike: {
    name: id,
    kind: "pedal",
    unit: "cm",
    lowest: "48",
    highest: "60",
    standover: "",
    wheel: "16",
    massKg: "",
    price: "",
  },
});

const carried = (name, text) => ({ name, sample: false, inHand: true, encoding: null, text, base64: null });

const row = (id) => ({
  row: 2,
  id,
  measured: true,
  cells: { name: id, inseam: "49.5", shoes: "", stage: "riding", age: id, born: "", weight: "", height: "" },
  rider: {
    readings: [{ on: "2026-11-25", inseam_mm: 495, shoes: true }],
    born: null,
    stature_mm: null,
    mass_kg: null,
    stage: "riding",
  },
  problems: [],
});

const places = (whole) => {
  const to = (change) => (text) => changed(whole, (...parts) => change(text, ...parts));
  return {
    "what was typed": to((text, _file, rider) => {
      rider.name = text;
      rider.massKg = text;
      rider.readings[0].figure.text = text;
      rider.born = { year: text.slice(0, 4), month: text.slice(0, 2) };
    }),
    "what was wished": to((text, _file, _rider, wants) => {
      wants.colour = text;
      wants.maxPrice = text;
    }),
    "bikes that were measured and picked": to((text, file) => {
      file.tape.kept = [kept(text)];
      file.picked = [text];
      file.years.marks = [{ id: text, list: text, is: "owned", price: text }];
    }),
    "a list and a club's child": to((text, file) => {
      file.lists = [
        carried(
          text,
          list([{ id: text, name: text, saddle_lowest: 48, saddle_highest: 60 }], { title: text }),
        ),
      ];
      file.club.riders = [row(text)];
      file.club.fixed = [{ rider: text, bike: text, out: true }];
    }),
  };
};

const broken = (whole) => {
  const to = (change) => changed(whole, change);
  const text = JSON.stringify(whole);
  return {
    "nothing at all": { content: "" },
    "the half of a file": { content: text.slice(0, text.length / 2) },
    "a list of bikes": { content: list([{ name: "Red", saddle_lowest: 48 }]) },
    "ten thousand brackets": { content: "[".repeat(10_000) },
    "brackets in the form's own": {
      content: text.replace('"riders":', `"x": ${"[".repeat(5000)}${"]".repeat(5000)}, "riders":`),
    },
    "a prototype with a field of its own": {
      content: text.replace("{", '{"__proto__": {"polluted": true, "isAdmin": true},'),
    },
    "a prototype in a rider": {
      content: text.replace('"rider":{', '"rider":{"__proto__":{"polluted":true},'),
    },
    "a newer version": to((file) => (file.version = 99)),
    "a version that is no number": to((file) => (file.version = "2; drop")),
    "riders that are a text": to((file) => (file.riders = "all")),
    "no riders": to((file) => (file.riders = [])),
    "a rider in hand that is none": to((file) => (file.inHand = 77)),
    "two riders of one key": to((file) => file.riders.push(file.riders[0])),
    "five hundred riders": to((file, rider) => {
      file.riders = Array.from({ length: 500 }, (_, place) => ({
        ...file.riders[0],
        rider: { ...rider, key: place + 1, name: `<b>${place}</b>` },
      }));
      file.inHand = 1;
    }),
    "a thousand readings": to((_file, rider) => {
      rider.readings = Array.from({ length: 1000 }, (_, place) => ({
        ...rider.readings[0],
        key: place + 1,
        on: `20${String(place % 26).padStart(2, "0")}-01-15`,
      }));
    }),
    "a reading on no day": to((_file, rider) => (rider.readings[0].on = "2026-02-30")),
    "a reading on a day that is markup": to((_file, rider) => (rider.readings[0].on = "<b>2026</b>")),
    "a reading of the year 9999": to((_file, rider) => (rider.readings[0].on = "9999-12-31")),
    "keys at the end of all numbers": to((file, rider) => {
      rider.readings[0].key = Number.MAX_SAFE_INTEGER;
      rider.key = Number.MAX_SAFE_INTEGER;
      file.inHand = Number.MAX_SAFE_INTEGER;
    }),
    "a next number beyond all numbers": to((file) => (file.tape.nextNumber = 1e300)),
    "a wheel beyond all numbers": to((_file, _rider, wants) => (wants.wheel = 1e300)),
    "five picks": to((file) => (file.picked = [..."ABCDE"])),
    "two thousand measured bikes": to((file) => {
      file.tape.kept = Array.from({ length: 2000 }, (_, place) => kept(`taped-${place}`));
    }),
    "a list that is no list": to(
      (file) => (file.lists = [carried("x.json", "<script>top.ran = true</script>")]),
    ),
    "a list in base64 that is none": to(
      (file) => (file.lists = [{ ...carried("x.json", null), base64: "%%%" }]),
    ),
    "a list of bytes that are no text": to(
      (file) => (file.lists = [{ ...carried("x.json", null), base64: "//79" }]),
    ),
    "ten lists in hand": to((file) => {
      file.lists = Array.from({ length: 10 }, (_, place) =>
        carried(`${place}.json`, list([{ name: "Red", saddle_lowest: 48 }])),
      );
    }),
    "two thousand children of a club": to((file) => {
      file.club.riders = Array.from({ length: 2000 }, (_, place) => row(`<i>${place}</i>`));
    }),
    "rounds without an end": to((file) => (file.club.rounds = 999_999_999)),
    "years without an end": to((file) => (file.years.years = 999_999_999)),
  };
};

export const hostileFamilyFiles = (stranger, whole) => [
  ...inEachPlace(stranger, places(whole)),
  ...Object.entries(broken(whole)).map(([what, file]) => ({ what, ...file })),
];
