// What a page may write at and in <saddlerule-fit>: { what, name, value } for an attribute, { what, inside } for the list in it.

import { list } from "./lists.mjs";
import { inEachPlace } from "./texts.mjs";

const attribute = (name) => (value) => ({ name, value });

const places = {
  "the address of the list": attribute("list"),
  "the language": attribute("language"),
  "the currency": attribute("currency"),
  "a bike inside": (text) => ({
    inside: list([{ id: text, name: text, saddle_lowest: 48, saddle_highest: 60, colours: [text] }], {
      title: text,
    }),
  }),
};

const attributes = {
  "a heading of level 99": ["heading-level", "99"],
  "a heading that is a script": ["heading-level", "1<script>"],
  "units of nobody": ["units", "ells"],
  "a view that every object has": ["view", "toString"],
  "a view of 100,000 letters": ["view", "rack".repeat(25_000)],
  "a title with markup": ["title", "<img src=x onerror=top.ran=true>"],
  "a style that hides it": ["style", "display: none; all: unset"],
  "a class of the page's own": ["class", "room screen current"],
  "a part": ["part", "row"],
  "a slot": ["slot", "x"],
  "another language by the page": ["lang", "<b>"],
};

const insides = {
  nothing: "",
  "no list": "null",
  markup: "<b>Our bikes</b>",
  "the end of its own element": list([
    { name: "</script><script>top.ran = true</script>", saddle_lowest: 48 },
  ]),
  "ten thousand brackets": "[".repeat(10_000),
  "a prototype": '{"__proto__": {"polluted": true}, "bikes": []}',
  "five thousand bikes": list(
    Array.from({ length: 5000 }, (_, place) => ({
      name: `<b>${place}</b>`,
      saddle_lowest: 40 + (place % 30),
    })),
  ),
};

export const hostileElements = (stranger) => [
  ...inEachPlace(stranger, places),
  ...Object.entries(attributes).map(([what, [name, value]]) => ({ what, name, value })),
  ...Object.entries(insides).map(([what, inside]) => ({ what: `${what} inside`, inside })),
];
