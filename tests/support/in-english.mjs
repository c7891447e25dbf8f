// Answers with the English sentences that ask.mjs puts into them, for tests that hold what people read of problems.

import { readFileSync } from "node:fs";
import { inEnglish } from "../../wasm-bindings/in-english.js";

const file = new URL("../../wasm-bindings/english.json", import.meta.url);

/** Of checks the limits are left out: they come from the engine. */
export const worded = inEnglish(JSON.parse(readFileSync(file, "utf8")), []);
