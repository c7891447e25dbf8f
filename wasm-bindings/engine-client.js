// Opens the engine's wasm and asks it. The only JavaScript that touches the engine's memory; runs in a page, in a worker
// and under Node alike, and needs nothing but WebAssembly itself.

import { EngineError } from "./engine-error.js";

/**
 * All that the module imports. The engine has no input, output or clock of its own; while it reads a file it says how far
 * it is, while it plans it asks whether there is time left, and it leaves only when it is giving up (out of memory), and then
 * says so instead of hanging.
 */
function hostImports(progress, mayGoOn) {
  return {
    env: {
      emscripten_notify_memory_growth() {},
      saddlerule_progress: progress,
      saddlerule_may_go_on: mayGoOn,
    },
    wasi_snapshot_preview1: {
      proc_exit(status) {
        throw new EngineError("engine_stopped", `the engine stopped (status ${status})`);
      },
    },
  };
}

/** Half a letter, as where a text was cut within one, is no Unicode: it is sent as a letter that cannot be read. */
function jsonOf(request) {
  const text = JSON.stringify(request);
  if (!/\\ud[89a-f]/.test(text)) return text;
  return JSON.stringify(request, (_, value) =>
    typeof value === "string" ? value.replace(/\p{Surrogate}/gu, "\ufffd") : value,
  );
}

/** @typedef {(done: number, total: number) => void} OnProgress in bytes of the file */
/** @typedef {{ ask(request: object | string, file?: Uint8Array, onProgress?: OnProgress): any, heapBytes(): number }} Engine */

/**
 * @param {BufferSource | WebAssembly.Module} wasm the bytes of saddlerule.wasm, or the module compiled from them
 * @returns {Promise<Engine>}
 */
export async function openEngine(wasm) {
  const module = wasm instanceof WebAssembly.Module ? wasm : await WebAssembly.compile(wasm);
  let onProgress;
  let asked = 0;
  const imports = hostImports(
    (done, total) => onProgress?.(done, total),
    (limit) => (performance.now() - asked < limit ? 1 : 0),
  );
  let instance = await start(module, imports);

  /** One exchange with a live instance: copies in, asks, copies out. */
  function exchange(request, file) {
    const { exports } = instance;
    const put = (bytes, buffer) => {
      // Asking for a buffer may grow the memory, so the view on it is made afterwards.
      const at = buffer(bytes.length) >>> 0;
      new Uint8Array(exports.memory.buffer, at, bytes.length).set(bytes);
    };
    put(file, exports.saddlerule_file_buffer);
    put(request, exports.saddlerule_request_buffer);
    asked = performance.now();
    exports.saddlerule_ask();
    const at = exports.saddlerule_answer() >>> 0;
    const answer = new Uint8Array(exports.memory.buffer, at, exports.saddlerule_answer_length());
    return JSON.parse(new TextDecoder().decode(answer));
  }

  return {
    /**
     * @param {object | string} request one request, an array of them, or the JSON text of either
     * @param {Uint8Array} [file] bytes of a catalogue file, for `load`
     * @param {OnProgress} [tell] told now and then while the file is read
     */
    ask(request, file = new Uint8Array(0), tell) {
      onProgress = tell;
      try {
        const text = typeof request === "string" ? request : jsonOf(request);
        return exchange(new TextEncoder().encode(text), file);
      } catch (cause) {
        // An instance that trapped is finished. The next call gets a fresh one, without a list.
        instance = new WebAssembly.Instance(module, imports);
        instance.exports._initialize?.();
        throw cause instanceof EngineError
          ? cause
          : new EngineError("engine_stopped", "the engine stopped and was started again", { cause });
      }
    },

    /** Size of the engine's memory: it grows and never shrinks. */
    heapBytes() {
      return instance.exports.memory.buffer.byteLength;
    },
  };
}

async function start(module, imports) {
  // A page may have to wait. A worker does it at once: in WebKit one with nothing else to do often never hears that it is done.
  const instance =
    typeof document === "undefined"
      ? new WebAssembly.Instance(module, imports)
      : await WebAssembly.instantiate(module, imports);
  instance.exports._initialize?.();
  return instance;
}
