// The schema of the interface refuses what the engine refuses and takes what the engine takes, but for the differences listed
// here; of answers it lets nothing through that is not one.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test from "node:test";
import { openBareEngine } from "../support/built-engine.mjs";
import { everyExchange, otherShed, shed } from "../support/every-exchange.mjs";
import { exchangeIsValid, interfaceSchema, requestIsValid } from "../support/interface-schema.mjs";
import { interfaceTypes, typesFile } from "../../web/building/interface-types.mjs";

/** What the engine refuses and no schema can say. */
const beyondAnySchema = {
  figure_not_a_number: "typed text",
  figure_unit_unknown: "typed text",
  figure_empty: "typed text",
  rider_without_measure: "a date of birth counts up to today",
  request_bike_unknown: "what is in the list",
  request_given_twice: "one rider against another",
  club_rider_twice: "one rider against another",
  club_rider_unknown: "a pair against the riders",
  riders_none: "what a table says",
  message_heights_unclear: "what a message says",
  json_empty: "what the text of an entry says",
  json_not_json: "what the text of an entry says",
  json_figure_malformed: "what the text of an entry says",
  bike_figure_out_of_range: "a length against the unit beside it",
};

/** What the engine takes and the schema does not, by path: what nobody should send, and the engine has no need to refuse. */
const takenAllTheSame = [
  {
    path: /\.(from|count|rounds|round|max_bikes|number|before|copy|remove|origin|horizon_months)$/,
    value: 1.5,
    why: "cut",
  },
  { path: /\.taped\.\d+\.\w+$/, why: "what a bike can do without is left open where it cannot be read" },
];

const engine = await openBareEngine();
const [list, other] = [shed, otherShed].map((one) => new TextEncoder().encode(JSON.stringify(one)));

/** An answer to the request about the list as it is in its file. */
function answerTo(request) {
  engine.ask({ do: "load" }, list);
  return engine.ask(request, request?.do === "load" ? list : other);
}

/** Faults of taped bikes put them aside, faults of what a list says of itself are noted. */
function refusal({ do: task, taped }, { error, set_aside: aside, notes }) {
  if (error !== undefined) return error;
  if (Array.isArray(taped)) return aside?.find(({ where }) => where.startsWith("taped["));
  return task === "new_list" ? notes.find(({ code }) => code.startsWith("file_")) : undefined;
}

const odd = [null, true, -1, 0, 1.5, 1e9, "", "x", "2026-02-31", [], {}, [null], [7], { x: 1 }];

/** Every value inside, with its path and a way to put another in its place. */
function* placesIn(value, path = "") {
  if (typeof value !== "object" || value === null) return;
  for (const key of Object.keys(value)) {
    yield { of: value, key, path: `${path}.${key}` };
    yield* placesIn(value[key], `${path}.${key}`);
  }
}

/** The value again and again, each time with one thing changed. */
function* mutations(original) {
  const value = structuredClone(original);
  for (const { of, key, path } of placesIn(value)) {
    const before = of[key];
    if (Array.isArray(of)) {
      for (const put of odd) {
        of[key] = put;
        yield { value, path, put };
      }
    } else {
      for (const put of odd) {
        of[key] = put;
        yield { value, path, put };
      }
      delete of[key];
      yield { value, path, put: "nothing" };
      of[`${key}_`] = before;
      yield { value, path, put: "another name" };
      delete of[`${key}_`];
    }
    of[key] = before;
  }
  value.surplus = 1;
  yield { value, path: ".surplus", put: 1 };
}

for (const { name, request } of everyExchange) {
  test(`schema and engine agree on requests: ${name}`, () => {
    assert.ok(requestIsValid(request));
    assert.equal(answerTo(request).error, undefined);
    for (const { value, path, put } of mutations(request)) {
      const answer = answerTo(value);
      const refused = refusal(value, answer);
      const valid = requestIsValid(value);
      if ((refused === undefined) === valid) continue;
      const said = `${path} = ${JSON.stringify(put)}: ${JSON.stringify(refused ?? "answered")}`;
      if (valid) assert.ok(refused.code in beyondAnySchema, `the schema takes ${said}`);
      else
        assert.ok(
          takenAllTheSame.some((one) => one.path.test(path) && (!("value" in one) || one.value === put)),
          `the schema refuses ${said}`,
        );
    }
  });

  test(`the schema knows an answer from what is none: ${name}`, () => {
    const whole = answerTo(request);
    assert.ok(exchangeIsValid(request, whole));
    const answer = shortened(whole);
    assert.ok(exchangeIsValid(request, answer));
    for (const { of, key, path } of placesIn(answer)) {
      if (Array.isArray(of) || isMap(path)) continue;
      const before = of[key];
      const stillValid = (put, change) => {
        change();
        const valid = exchangeIsValid(request, answer);
        delete of[`${key}_`];
        of[key] = before;
        assert.ok(!valid || sometimesAbsent.test(path), `${path} may be ${put}`);
      };
      stillValid("missing", () => delete of[key]);
      stillValid("called otherwise", () => {
        delete of[key];
        of[`${key}_`] = before;
      });
      stillValid("of another kind", () => {
        of[key] = before === null ? { surplus: 1 } : typeof before === "boolean" ? "true" : true;
      });
    }
    assert.ok(!exchangeIsValid(request, { ...answer, surplus: 1 }));
    assert.ok(!exchangeIsValid(request, { error: "no" }));
  });
}

/** Of every list in it only the first two. */
function shortened(value) {
  if (Array.isArray(value)) return value.slice(0, 2).map(shortened);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, field]) => [name, shortened(field)]));
}

/** Groups whose names are not fixed: figures by name, cells by field, counts by reason. */
const isMap = (path) => /\.(figures|cells|set|because|stages|undo\.\d+\.list)\.\w+$/.test(path);

/** Fields that an answer may lack, or have beside its fixed ones. */
const sometimesAbsent = new RegExp(
  `(${[
    "\\.raise\\.\\d+\\.stage",
    "\\.bikes\\.\\d+\\.(notes|saddle_likely_mm|cost_gap|cost_per_month_range)",
    "\\.standing\\.(beaten_by|beaten_by_name)",
    "\\.left\\.\\d+\\.bikes",
    "\\.undo\\.\\d+\\.origin",
    "\\.surely_mm",
    "\\.(value|limit|limit_low|limit_high)_\\w+",
  ].join("|")})$`,
);

test("every field has a description, and every task an example", () => {
  const fieldsOf = function* (node, path) {
    if (typeof node !== "object" || node === null) return;
    for (const [name, field] of Object.entries(node.properties ?? {}))
      yield { path: `${path}.${name}`, field };
    for (const [name, child] of Object.entries(node)) yield* fieldsOf(child, `${path}/${name}`);
  };
  for (const [name, definition] of Object.entries(interfaceSchema.$defs)) {
    assert.ok(definition.description, name);
    for (const { path, field } of fieldsOf(definition, name))
      if (!/\/(if|then|else|not|anyOf\/\d+)\.|\/(if|not)\//.test(path)) assert.ok(field.description, path);
  }
  const { requests, problems } = engine.ask({ do: "about" });
  assert.deepEqual([...new Set(everyExchange.map(({ request }) => request.do))].sort(), [...requests].sort());
  assert.deepEqual(
    interfaceSchema.$defs.ProblemCode.enum,
    problems.map(({ code }) => code),
  );
});

test("the types of the page are those of the schema (node web/building/interface-types.mjs writes them)", async () => {
  assert.equal(readFileSync(typesFile, "utf8"), await interfaceTypes());
});
