#!/usr/bin/env node
// Asks the built engine from a shell:
//
//   node wasm-bindings/ask.mjs --catalogue catalogue-samples/loan-shed.json < request.json
//
// Reads one request, or a JSON array of requests, and prints the answer or an array of them.
// Exit 0: every request was answered; 1: one was refused (the answer says why); 2: wrong usage.

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { openEngine } from "./engine-client.js";

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
      options: { catalogue: { type: "string" }, wasm: { type: "string" }, help: { type: "boolean" } },
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
const file = options.catalogue === undefined ? undefined : readOrStop(options.catalogue, "the list");
const request = readOrStop(0, "the request").toString("utf8");

/**
 * The requests of an array as texts of their own, or null where there is no well-formed array. They are asked one at a
 * time, since answers about long lists are large.
 */
function requestsIn(text) {
  try {
    if (!Array.isArray(JSON.parse(text))) return null;
  } catch {
    return null; // the engine says what is wrong, and where
  }
  const requests = [];
  let depth = 0;
  let start = 0;
  for (const match of text.matchAll(/"(?:[^"\\]|\\.)*"|[[\]{},]/gs)) {
    const token = match[0];
    if (token === "[" || token === "{") {
      if (++depth === 1) start = match.index + 1;
    } else if ((token === "]" || token === "}") && --depth > 0) {
      continue;
    } else if (token === "]" || (token === "," && depth === 1)) {
      requests.push(text.slice(start, match.index));
      start = match.index + 1;
    }
  }
  return requests.length === 1 && requests[0].trim() === "" ? [] : requests;
}

// A list that cannot be loaded is the answer to everything that was asked about it. Where it can, a `load` among the
// requests loads the same file once more, and so prints what was set aside.
const loaded = file ? engine.ask({ do: "load" }, file) : {};
let refused = false;

function answerTo(one) {
  const answer = loaded.error ? loaded : engine.ask(one, file);
  refused ||= answer.error !== undefined;
  return JSON.stringify(answer, null, 2);
}

const requests = requestsIn(request);
if (requests === null) {
  process.stdout.write(answerTo(request) + "\n");
} else {
  process.stdout.write("[");
  requests.forEach((one, place) => process.stdout.write((place > 0 ? ",\n" : "\n") + answerTo(one)));
  process.stdout.write("\n]\n");
}
process.exitCode = refused ? 1 : 0;
