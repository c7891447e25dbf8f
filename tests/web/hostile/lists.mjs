// Lists of bikes that mean harm, or are broken: { what, name, content }.

import { inEachPlace } from "./texts.mjs";

const bike = {
  id: "A1",
  name: "Red one",
  wheel: 16,
  saddle_lowest: 48,
  saddle_highest: 60,
  colours: ["red"],
};

export const list = (bikes, head = {}) =>
  JSON.stringify({ format: "saddlerule-catalogue", version: 1, title: "List", units: "cm", ...head, bikes });

const one = (part) =>
  list([
    { ...bike, ...part },
    { ...bike, id: "B2", name: "Blue one" },
  ]);
const json = (content) => ({ name: "list.json", content });
const table = (content) => ({ name: "list.csv", content });

const places = {
  "the title": (text) => json(list([bike], { title: text })),
  "an id": (text) => json(one({ id: text })),
  "a name": (text) => json(one({ name: text })),
  "a colour, a brake and a price": (text) => json(one({ colours: [text], brakes: text, price: text })),
  "a field that nobody knows": (text) => json(one({ [text.slice(0, 200)]: text, notes: text })),
};

const deep = (levels) => `${"[".repeat(levels)}${"]".repeat(levels)}`;
const many = (count, make) => Array.from({ length: count }, (_, place) => make(place));

const broken = {
  "nothing at all": json(""),
  "one bracket": json("{"),
  "ten thousand brackets": json(deep(10_000)),
  "brackets in a field": json(one({ notes: JSON.parse(deep(30)) })),
  "brackets in a field, one level too deep": json(list([bike]).replace('"red"', deep(40))),
  "a field twice": json(list([bike]).replace('"A1"', '"A1", "id": "A2"')),
  "a prototype with a field of its own": json(
    '{"__proto__": {"polluted": true}, "bikes": [{"__proto__": {"polluted": true}}]}',
  ),
  "figures beyond all numbers": json(one({ saddle_lowest: 1e308, price: 1e300, mass_kg: -1e300 })),
  "a figure of a hundred thousand digits": json(list([bike]).replace("48", "4".repeat(100_000))),
  "figures that are none": json(list([bike]).replace("48", "NaN").replace("60", "-Infinity")),
  "texts for everything": json(one({ saddle_lowest: "<b>48</b>", wheel: "16<script>", gears: {} })),
  "five thousand bikes of one id": json(list(many(5000, () => bike))),
  "five thousand bikes without wheels": json(
    list(many(5000, (place) => ({ id: `W${place}`, saddle_lowest: 40 + (place % 30), saddle_highest: 70 }))),
  ),
  "two thousand ids, the first of them last": json(
    list(many(2000, (place) => ({ ...bike, id: `N${place === 1999 ? 0 : place + 1}` }))),
  ),
  "ninety fields of their own": json(
    one(Object.fromEntries(many(90, (place) => [`<i>${place}</i>`, "<script>top.ran = true</script>"]))),
  ),
  "two thousand colours": json(
    list(many(2000, (place) => ({ ...bike, id: `C${place}`, colours: [`<b>${place}</b>`] }))),
  ),
  "bytes that are no text": { name: "list.json", content: [0xff, 0xfe, 0xfd, 0x80, 0xc0, 0xaf] },
  "a text cut in the middle of a letter": { name: "list.json", content: [0x7b, 0x22, 0xe2, 0x82] },
  "a picture called a list": {
    name: "list.json",
    content: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0],
  },
  "a web page called a list": json("<!doctype html><script>top.ran = true</script>"),
  "a table of formulas": table("id;name;saddle_lowest\n=1+1;=cmd|' /C calc'!A0;48 cm\n@x;+1;49 cm\n"),
  "a table with one endless cell": table(`id,name,saddle_lowest\nA,"${"x".repeat(300_000)}`),
  "a table of nothing but quotes": table('"'.repeat(100_001)),
  "a table of three thousand columns": table(`${many(3000, (place) => `c${place}`).join(",")}\n1,2,3\n`),
  "a table with markup for a head": table("<script>top.ran = true</script>,saddle_lowest\nA,48 cm\n"),
  "a name of a file with markup": { name: "<img src=x onerror=top.ran=true>.json", content: "{" },
  "a name of a file that turns the line round": { name: "\u202enosj.tsil.csv", content: "{" },
};

export const hostileLists = (stranger) => [
  ...inEachPlace(stranger, places),
  ...Object.entries(broken).map(([what, file]) => ({ what, ...file })),
];
