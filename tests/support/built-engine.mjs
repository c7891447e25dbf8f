// Where the tests find what was built, and how they ask it.

import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { openEngine } from "../../wasm-bindings/engine-client.js";
import { assertBySchema, heldToSchema } from "./interface-schema.mjs";
import { openNativeEngine } from "./native-engine.mjs";

export const root = fileURLToPath(new URL("../../", import.meta.url));
export const wasmFile = join(root, "build/wasm/wasm-bindings/saddlerule.wasm");
/** The form that the page carries, without the answer to `about`. */
export const pageWasmFile = join(root, "build/wasm/wasm-bindings/saddlerule-page.wasm");
export const sample = (name) => join(root, "catalogue-samples", name);

/** The shipped engine, as it is. `NATIVE_ENGINE` names a native_ask to be asked in its place. */
export const openBareEngine = async () =>
  process.env.NATIVE_ENGINE === undefined
    ? openEngine(readFileSync(wasmFile))
    : openNativeEngine(process.env.NATIVE_ENGINE);

/** The same, with all that it is asked and answers held against the schema of the interface. */
export const openBuiltEngine = async () => heldToSchema(await openBareEngine());

/** Runs ask.mjs as a shell would; what it prints is held against the schema. */
export function askFromShell(stdin, ...args) {
  const run = spawnSync(process.execPath, [join(root, "wasm-bindings/ask.mjs"), ...args], {
    input: stdin,
    encoding: "utf8",
    maxBuffer: 1 << 30,
  });
  if (/^\s*[{[]/.test(run.stdout)) assertBySchema(stdin, JSON.parse(run.stdout));
  return { status: run.status, stdout: run.stdout, stderr: run.stderr };
}

/** The native build's answer, as text. */
export function askNatively(request, catalogue) {
  const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
  try {
    const file = join(folder, "request.json");
    writeFileSync(file, typeof request === "string" ? request : JSON.stringify(request));
    const program = join(root, "build/native/tests/native_ask");
    return execFileSync(program, catalogue ? [file, catalogue] : [file], {
      encoding: "utf8",
      maxBuffer: 1 << 28,
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
}
