// The JSON Schema of the engine's requests and answers, read by ajv.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";

const read = (path) => JSON.parse(readFileSync(new URL(`../../${path}`, import.meta.url), "utf8"));

export const interfaceSchema = read("wasm-bindings/interface.schema.json");
const { $id } = interfaceSchema;

const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, strictTypes: false, strictRequired: false });
ajv.addSchema(read("catalogue-samples/catalogue.schema.json"));
ajv.addSchema(interfaceSchema);

/** A function that says whether a value is what the schema calls by this name. */
export const validatorOf = (name) => ajv.getSchema(`${$id}#/$defs/${name}`);

const isRequest = validatorOf("EngineRequest");
const isRefusal = ajv.compile({
  anyOf: ["ErrorAnswer", "LoadRefusal"].map((name) => ({ $ref: `${$id}#/$defs/${name}` })),
});
const isExchange = ajv.getSchema($id);

export const requestIsValid = (request) => isRequest(request);
export const exchangeIsValid = (request, answer) => isExchange({ request, answer });

/** What a request holds, or undefined where its text is not JSON. */
function contentOf(request) {
  try {
    return JSON.parse(typeof request === "string" ? request : JSON.stringify(request));
  } catch {
    return undefined;
  }
}

const excerpt = (value) => JSON.stringify(value).slice(0, 800);

/** What is wrong, of all that a value might have been: what was found furthest inside. */
function faultIn({ errors }) {
  const depth = ({ instancePath }) => instancePath.split("/").length;
  const deepest = Math.max(...errors.map(depth));
  return ajv.errorsText(errors.filter((error) => depth(error) === deepest));
}

/** Of an answer that was not refused, request and answer are what the schema says; a refusal may answer anything. */
function assertOne(request, answer) {
  const refused = answer.error !== undefined;
  const [isValid, held] = refused ? [isRefusal, answer] : [isExchange, { request, answer }];
  if (!isValid(held)) assert.fail(`${faultIn(isValid)}\n${excerpt(held)}`);
}

/** Fails where a request that was answered, or its answer, is not what the schema says. */
export function assertBySchema(request, answer) {
  const asked = contentOf(request);
  if (!Array.isArray(asked) || !Array.isArray(answer)) {
    assertOne(asked, answer);
    return;
  }
  assert.equal(answer.length, asked.length);
  for (const [place, one] of asked.entries()) assertOne(one, answer[place]);
}

/** The same engine, all that it is asked and answers held against the schema. */
export function heldToSchema(engine) {
  return {
    ...engine,
    ask(request, ...more) {
      const answer = engine.ask(request, ...more);
      assertBySchema(request, answer);
      return answer;
    },
  };
}
