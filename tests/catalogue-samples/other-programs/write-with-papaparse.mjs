// Writes list.json as tables with PapaParse.

import { readFileSync, writeFileSync } from "node:fs";
import Papa from "papaparse";

const here = new URL("./", import.meta.url);
const { bikes, ...facts } = JSON.parse(readFileSync(new URL("list.json", here), "utf8"));
const fields = [...new Set(bikes.flatMap((bike) => Object.keys(bike)))];
const cell = (value) =>
  Array.isArray(value)
    ? value.join(", ") || "none"
    : typeof value === "boolean"
      ? value
        ? "TRUE"
        : "FALSE"
      : value;
const rows = bikes.map((bike) => fields.map((name) => cell(bike[name] ?? "")));
const head = Object.entries(facts).map(([key, value]) => [`# ${key}: ${value}`]);

const write = (name, config) =>
  writeFileSync(new URL(`papaparse-${name}.csv`, here), Papa.unparse([...head, fields, ...rows], config));
write("plain", { escapeFormulae: true });
write("quotes-semicolon", { quotes: true, delimiter: ";", escapeFormulae: true });
write("tab-lf", { delimiter: "\t", newline: "\n", escapeFormulae: true });
