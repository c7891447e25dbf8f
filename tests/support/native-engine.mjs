// The engine built natively, behind the door of engine-client.js. With sanitizers in it, it sees what wasm cannot: there a
// write beside its object stays inside the engine's memory.

import { execFileSync, spawn } from "node:child_process";
import { accessSync, constants, mkdtempSync, openSync, readSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Where the length of an answer is expected: how far a file is read comes first. */
const progressMark = 0xffffffff;

/** @param {string} program a built native_ask */
export function openNativeEngine(program) {
  accessSync(program, constants.X_OK);
  const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
  const pipes = ["questions", "answers"].map((name) => join(folder, name));
  execFileSync("mkfifo", pipes);
  const engine = spawn(program, ["--serve", ...pipes], { stdio: ["ignore", "ignore", "inherit"] });
  // It ends with the pipe, and so with the test.
  engine.unref();
  const [questions, answers] = [openSync(pipes[0], "w"), openSync(pipes[1], "r")];
  rmSync(folder, { recursive: true });

  function put(bytes) {
    for (let at = 0; at < bytes.length;) at += writeSync(questions, bytes, at);
  }

  function take(length) {
    const bytes = Buffer.alloc(length);
    for (let at = 0; at < length;) {
      const read = readSync(answers, bytes, at, length - at, null);
      if (read === 0) throw new Error("the native engine stopped; what it said is on standard error");
      at += read;
    }
    return bytes;
  }

  const behindLength = (bytes) => {
    const length = Buffer.alloc(4);
    length.writeUInt32LE(bytes.length);
    return Buffer.concat([length, bytes]);
  };

  return {
    ask(request, file = new Uint8Array(0), tell = undefined) {
      const text = typeof request === "string" ? request : JSON.stringify(request);
      put(behindLength(Buffer.from(text)));
      put(behindLength(file));
      for (;;) {
        const length = take(4).readUInt32LE();
        if (length !== progressMark) return JSON.parse(take(length).toString("utf8"));
        const progress = take(8);
        tell?.(progress.readUInt32LE(0), progress.readUInt32LE(4));
      }
    },
  };
}
