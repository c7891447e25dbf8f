// The colours of the page's tokens against each other, by the formula of WCAG 2.2.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import test from "node:test";
import { root } from "../support/built-engine.mjs";

/** WCAG 2.2, "relative luminance": linear parts of sRGB, weighed by how bright each is seen. */
function luminance(colour) {
  const [red, green, blue] = [1, 3, 5]
    .map((place) => parseInt(colour.slice(place, place + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** WCAG 2.2, "contrast ratio". */
function contrast(one, other) {
  const [lighter, darker] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (lighter + 0.05) / (darker + 0.05);
}

const sheet = readFileSync(join(root, "web/style/tokens.css"), "utf8");

/** The colours of each theme: those of the plain one, and over them what its media query says. */
function theme(...queries) {
  const blocks = ["", ...queries].map((query) => {
    const start = query === "" ? 0 : sheet.indexOf(`@media ${query} {`);
    assert.notEqual(start, -1, `no theme for ${query}`);
    return sheet.slice(start, sheet.indexOf("}", start));
  });
  const colours = blocks.flatMap((block) => [
    ...block.matchAll(/--([\w-]+): (?:var\([\w-]+, )?(#[0-9a-f]{6})/g),
  ]);
  return Object.fromEntries(colours.map(([, name, colour]) => [name, colour]));
}

const dark = "(prefers-color-scheme: dark)";
const more = "(prefers-contrast: more)";
const themes = {
  light: theme(),
  dark: theme(dark),
  "more contrast": theme(more),
  "dark with more contrast": theme(dark, more, `${more} and ${dark}`),
  paper: theme("print"),
};

/** Letters on what is under them. WCAG 2.2, 1.4.3: at least 4.5; 1.4.6, for who asked for more contrast: at least 7. */
const letters = [
  ["ink", "ground"],
  ["ink", "sheet"],
  ["ink-soft", "ground"],
  ["ink-soft", "sheet"],
  ["rider", "ground"],
  ["rider", "sheet"],
  ["pencil", "sheet"],
  ["pencil", "ground"],
  ["on-bike", "bike"],
  ["on-rider", "rider"],
  ["on-bench", "bench"],
  ["ink", "rider-wash"],
];

/** Edges that must be seen to know what a thing is or does. WCAG 2.2, 1.4.11: at least 3. */
const edges = [
  ["edge", "ground"],
  ["edge", "sheet"],
  ["ink", "bike-pale"],
  ["ink", "rider-lane"],
  ["rider", "rider-lane"],
  // The ring of the focus, and the sign of the screen one is on.
  ["rider", "rider-wash"],
  ["bike", "bench"],
];

test("black on white has the contrast that WCAG 2.2 gives for it, 21 to 1", () => {
  assert.equal(contrast("#000000", "#ffffff"), 21);
  // From its technique G18: this grey is the lightest that letters on white may have.
  assert.ok(contrast("#767676", "#ffffff") >= 4.5 && contrast("#777777", "#ffffff") < 4.5);
});

for (const [name, colours] of Object.entries(themes)) {
  test(`letters and edges stand out from what is under them: ${name}`, () => {
    const least = name.includes("more contrast") ? 7 : 4.5;
    const faint = [...letters.map((pair) => [pair, least]), ...edges.map((pair) => [pair, 3])]
      .map(([[over, under], limit]) => ({ over, under, limit, is: contrast(colours[over], colours[under]) }))
      .filter(({ is, limit }) => is < limit)
      .map(({ over, under, limit, is }) => `${over} on ${under}: ${is.toFixed(2)}, not ${limit}`);
    assert.deepEqual(faint, []);
  });
}
