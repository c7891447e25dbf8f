// What makes the element's folder a package for developers: what it exports, its types, and a manifest for editors.
import { readFile, readdir } from "node:fs/promises";
import path from "node:path";
import { root, web } from "./places.mjs";

/** Attributes, each with its type and what it says. */
export const attributes = {
  list: [
    "string",
    "The address of the list of bikes, relative to the page. The property takes the list itself as well, as an object.",
  ],
  language: ['"en" | "de" | "fr" | "es" | "nl"', "The reader's own where it is left out."],
  units: ['"cm" | "in"', "By the reader's region where it is left out."],
  currency: ["string", "Of prices for which the list names none: a code of ISO 4217, such as EUR."],
  view: [
    '"rider" | "rack" | "tape" | "list" | "club" | "suits" | "years" | "keep"',
    "The screen to begin with.",
  ],
  "heading-level": ["1 | 2 | 3", "Of its title; the other headings are below."],
  "browser-back": ["boolean", "The browser's Back returns to the screen before, inside the element."],
};

const events = {
  "saddlerule-list": ["SaddleruleListDetail", "A list was opened or changed."],
  "saddlerule-verdict": ["SaddleruleVerdictDetail", "A verdict is shown or changes."],
  "saddlerule-problem": [
    "SaddleruleProblemDetail",
    "Something is wrong with a list, an attribute, or the element's own files.",
  ],
};

const cssProperties = {
  "--saddlerule-ground": "The ground.",
  "--saddlerule-sheet": "Sheets on the ground.",
  "--saddlerule-ink": "Letters.",
  "--saddlerule-bench": "Bars and buttons.",
  "--saddlerule-on-bench": "Letters on bars and buttons.",
  "--saddlerule-font": "The font.",
  "--saddlerule-text": "The size of text, 16 to 40 px.",
  "--saddlerule-round": "How round corners are.",
  "--saddlerule-inset-top": "How much of the screen's top a bar of the page covers.",
  "--saddlerule-inset-bottom": "How much of the screen's bottom a bar of the page covers.",
};

const propertyOf = (attribute) => attribute.replace(/-(.)/, (_, letter) => letter.toUpperCase());

/** As https://github.com/webcomponents/custom-elements-manifest has it. */
export function customElementsManifest() {
  const named = Object.entries(attributes).map(([name, [type, description]]) => ({
    name,
    fieldName: propertyOf(name),
    type: { text: type },
    description,
  }));
  const declaration = {
    kind: "class",
    customElement: true,
    name: "SaddleruleFit",
    tagName: "saddlerule-fit",
    description: "Which bike fits a growing child, how high to set the saddle, and how long it will last.",
    superclass: { name: "HTMLElement" },
    attributes: named,
    members: [
      ...named.map(({ name, fieldName, type, description }) => ({
        kind: "field",
        name: fieldName,
        attribute: name,
        reflects: true,
        type,
        description,
      })),
      {
        kind: "field",
        name: "told",
        readonly: true,
        type: { text: 'SaddleruleFit["told"]' },
        description: "What the last event of each kind said.",
      },
    ],
    events: Object.entries(events).map(([name, [type, description]]) => ({
      name,
      type: { text: `CustomEvent<${type}>` },
      description,
    })),
    slots: [{ name: "", description: "Shown until Saddlerule is loaded, and where it cannot be." }],
    cssProperties: Object.entries(cssProperties).map(([name, description]) => ({ name, description })),
    cssParts: ["head", "navigation", "screen", "sheet", "row", "button", "main"].map((name) => ({ name })),
  };
  const module = {
    kind: "javascript-module",
    path: "index.js",
    declarations: [declaration],
    exports: [
      {
        kind: "custom-element-definition",
        name: "saddlerule-fit",
        declaration: { name: "SaddleruleFit", module: "index.js" },
      },
    ],
  };
  return { schemaVersion: "1.0.0", modules: [module] };
}

/** @returns {Promise<Record<string, string | Buffer>>} what is beside the element's own files */
export async function packageFiles() {
  const { version, license } = JSON.parse(await readFile(path.join(web, "package.json"), "utf8"));
  const folder = path.join(web, "embedding/package");
  const names = (await readdir(folder)).sort();
  const framework = (name) => ({ types: `./${name}.d.ts`, default: "./index.js" });
  const description = {
    name: "saddlerule-fit",
    version,
    description: "Which bike fits a growing child: <saddlerule-fit> for any page",
    license,
    type: "module",
    exports: {
      ".": { types: "./index.d.ts", default: "./index.js" },
      "./react": framework("react"),
      "./vue": framework("vue"),
      "./svelte": framework("svelte"),
      "./saddlerule-fit.js": "./saddlerule-fit.js",
      "./saddlerule-frame.js": "./saddlerule-frame.js",
      "./custom-elements.json": "./custom-elements.json",
      "./package.json": "./package.json",
    },
    types: "./index.d.ts",
    customElements: "./custom-elements.json",
    sideEffects: ["./index.js", "./saddlerule-fit.js", "./saddlerule-frame.js"],
  };
  const json = (content) => `${JSON.stringify(content, null, 2)}\n`;
  return {
    "package.json": json(description),
    "custom-elements.json": json(customElementsManifest()),
    ...Object.fromEntries(
      await Promise.all(names.map(async (name) => [name, await readFile(path.join(folder, name))])),
    ),
    LICENSE: await readFile(path.join(root, "LICENSE")),
  };
}
