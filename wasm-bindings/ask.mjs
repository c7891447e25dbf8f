#!/usr/bin/env node
// Asks the built engine from a shell:
//
//   node wasm-bindings/ask.mjs --catalogue catalogue-samples/loan-shed.json < request.json
//
// Reads one request, or a JSON array of requests, and prints the answer or an array of them, with English sentences beside codes.
// Exit 0: every request was answered; 1: one was refused (the answer says why); 2: wrong usage.

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { openEngine } from "./engine-client.js";
import { inEnglish } from "./in-english.js";

const usage = `usage: node ask.mjs [--catalogue FILE] [--wasm FILE] < request.json

  --catalogue FILE  load this list of bikes first
  --wasm FILE       the engine (default: build/wasm/wasm-bindings/saddlerule.wasm)
  --help            this text`;

function stopWithUsage(message) {
  console.error(`ask.mjs: ${message}\n${usage}`);
  process.exit(2);
}

function readArguments() {
  try {
    return parseArgs({
      options: {
        catalogue: { type: "string" },
        wasm: { type: "string" },
        help: { type: "boolean" },
      },
    }).values;
  } catch (error) {
    return stopWithUsage(error.message);
  }
}

function readOrStop(path, what) {
  try {
    return readFileSync(path);
  } catch (error) {
    return stopWithUsage(`${what} cannot be read: ${error.message}`);
  }
}

const options = readArguments();
if (options.help) {
  console.log(usage);
  process.exit(0);
}

const builtWasm = fileURLToPath(new URL("../build/wasm/wasm-bindings/saddlerule.wasm", import.meta.url));
const engine = await openEngine(readOrStop(options.wasm ?? builtWasm, "the engine"));
const english = JSON.parse(readFileSync(new URL("./english.json", import.meta.url), "utf8"));
const worded = inEnglish(english, engine.ask({ do: "about" }).constants);
const file = options.catalogue === undefined ? undefined : readOrStop(options.catalogue, "the list");
const request = readOrStop(0, "the request").toString("utf8");

/**
 * The requests of an array, or null where there is no well-formed array: then the engine says what is wrong, and where. They
 * are asked one at a time, since answers about long lists are large. A figure too large for a double has no form in JSON
 * any more once it is read; as a text the engine refuses it in its place.
 */
function requestsIn(text) {
  try {
    const read = JSON.parse(text, (key, value) =>
      value === Infinity || value === -Infinity ? String(value) : value,
    );
    return Array.isArray(read) ? read.map((one) => JSON.stringify(one)) : null;
  } catch {
    return null;
  }
}

// A list that cannot be loaded is the answer to everything that was asked about it. Where it can, a `load` among the
// requests loads the same file once more, and so prints what was set aside.
const loaded = file ? engine.ask({ do: "load" }, file) : {};
let refused = false;

function answerTo(one) {
  const answer = loaded.error ? loaded : engine.ask(one, file);
  refused ||= answer.error !== undefined;
  return JSON.stringify(worded(answer), null, 2);
}

// Whoever reads the answers may have enough of them (`| head`): no reason to go on, nor to complain.
process.stdout.on("error", (error) => {
  if (error.code !== "EPIPE") throw error;
  process.exit();
});

const print = (text) => new Promise((printed) => process.stdout.write(text, printed));

const requests = requestsIn(request);
if (requests === null) {
  await print(answerTo(request) + "\n");
} else {
  await print("[");
  for (const [place, one] of requests.entries()) await print((place > 0 ? ",\n" : "\n") + answerTo(one));
  await print("\n]\n");
}
process.exitCode = refused ? 1 : 0;
