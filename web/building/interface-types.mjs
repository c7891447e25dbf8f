// Writes web/engine/wire.ts, the TypeScript of the engine's requests and answers, from their JSON Schema:
//
//   node web/building/interface-types.mjs
//
// Each definition of the schema becomes a type of the same name, each description a comment. What types cannot say
// (limits, patterns, conditions) is left to the schema.

import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { format, resolveConfig } from "prettier";

const pathOf = (place) => fileURLToPath(new URL(`../../${place}`, import.meta.url));
const schemaOf = (place) => JSON.parse(readFileSync(pathOf(place), "utf8"));

const schemas = ["wasm-bindings/interface.schema.json", "catalogue-samples/catalogue.schema.json"].map(
  schemaOf,
);
export const typesFile = pathOf("web/engine/wire.ts");

const head = `// The engine's requests and answers, as they are on the wire.
//
// Written by web/building/interface-types.mjs from wasm-bindings/interface.schema.json: change that one.
`;

const comment = ({ description }) =>
  description === undefined ? "" : `/** ${description.replaceAll("*/", "*\\/")} */\n`;

/** What "#/$defs/name" or "other.schema.json#/$defs/name" refers to. */
function referred(ref, document) {
  const [id, path] = ref.split("#");
  const where = id === "" ? document : schemas.find(({ $id }) => $id === id);
  return { name: path.split("/").at(-1), document: where };
}

const union = (types) => [...new Set(types)].join(" | ");
const inBrackets = (type) => (/[|&]/.test(type) ? `(${type})` : type);
const property = (name) => (/^[A-Za-z_]\w*$/.test(name) ? name : JSON.stringify(name));

function typeOfArray(schema, document) {
  if (schema.prefixItems) return `[${schema.prefixItems.map((item) => typeOf(item, document)).join(", ")}]`;
  return `${inBrackets(schema.items ? typeOf(schema.items, document) : "unknown")}[]`;
}

/** The names that a map may have; of a pattern only how it begins. */
function keysOf({ propertyNames }, document) {
  return propertyNames?.$ref ? typeOf(propertyNames, document) : "string";
}

function membersOf(schema, document) {
  const required = new Set(schema.required);
  const members = Object.entries(schema.properties ?? {}).map(
    ([name, value]) =>
      `${comment(value)}${property(name)}${required.has(name) ? "" : "?"}: ${typeOf(value, document)};`,
  );
  for (const [pattern, value] of Object.entries(schema.patternProperties ?? {})) {
    const [beginning] = /^\w+?(?=_?\(|$)/.exec(pattern.slice(1));
    members.push(`${comment(value)}[name: \`${beginning}_\${string}\`]: ${typeOf(value, document)};`);
  }
  return members;
}

function typeOfObject(schema, document) {
  const members = membersOf(schema, document);
  const rest = schema.additionalProperties;
  if (members.length > 0) return `{\n${members.join("\n")}\n}`;
  if (typeof rest !== "object") return "object";
  const keys = keysOf(schema, document);
  const map = `Record<${keys}, ${typeOf(rest, document)}>`;
  return keys === "string" ? map : `Partial<${map}>`;
}

function typeOfKind(kind, schema, document) {
  switch (kind) {
    case "object":
      return typeOfObject(schema, document);
    case "array":
      return typeOfArray(schema, document);
    case "integer":
      return "number";
    default:
      return kind;
  }
}

function typeOf(schema, document) {
  if (schema.$ref) {
    const { name, document: there } = referred(schema.$ref, document);
    // Of another schema the content is written out: its names are not this one's.
    return there === document && document === schemas[0] ? name : typeOf(there.$defs[name], there);
  }
  if ("const" in schema) return JSON.stringify(schema.const);
  if (schema.enum) return union(schema.enum.map((value) => JSON.stringify(value)));
  if (schema.type) return union([schema.type].flat().map((kind) => typeOfKind(kind, schema, document)));
  if (schema.anyOf) return union(schema.anyOf.map((one) => typeOf(one, document)));
  return "unknown";
}

/** An object that takes over the fields of others, or a type by another name. */
function declaration(name, schema, document) {
  if (schema.$ref && !schema.$ref.startsWith("#")) {
    const other = referred(schema.$ref, document);
    return `export interface ${name} ${typeOf(other.document.$defs[other.name], other.document)}`;
  }
  const parts = (schema.allOf ?? []).filter(({ $ref }) => $ref).map((part) => typeOf(part, document));
  if (schema.type !== "object" || typeof schema.additionalProperties === "object")
    return `export type ${name} = ${typeOf(schema, document)};`;
  const members = membersOf(schema, document);
  if (members.length === 0) return `export type ${name} = ${parts.join(" & ")};`;
  const extended = parts.length > 0 ? ` extends ${parts.join(", ")}` : "";
  return `export interface ${name}${extended} {\n${members.join("\n")}\n}`;
}

export async function interfaceTypes() {
  const [document] = schemas;
  const declarations = Object.entries(document.$defs).map(
    ([name, schema]) => comment(schema) + declaration(name, schema, document),
  );
  const options = await resolveConfig(typesFile);
  return format([head, ...declarations].join("\n\n"), { ...options, filepath: typesFile });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(typesFile, await interfaceTypes());
