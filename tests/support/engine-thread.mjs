// Ways to meddle with the engine's worker from a test: its script is a text that the page puts into a Blob.

/** Runs `script` with `given` in every worker of the page before the worker's own. To be called before the page is opened. */
export function inEveryThread(context, script, given) {
  return context.addInitScript(
    (text) => {
      const RealBlob = Blob;
      window.Blob = class extends RealBlob {
        constructor(parts = [], options = {}) {
          super(options.type === "text/javascript" ? [text, ...parts] : parts, options);
        }
      };
    },
    `(${script.toString()})(${JSON.stringify(given)});\n`,
  );
}

/** A device that reads slowly: 30 ms at every step of the way. */
export function readsSlowly() {
  const { Instance } = WebAssembly;
  WebAssembly.Instance = function (module, imports) {
    const { saddlerule_progress: progress } = imports.env;
    imports.env.saddlerule_progress = (done, total) => {
      const until = performance.now() + 30;
      while (performance.now() < until);
      progress(done, total);
    };
    return new Instance(module, imports);
  };
}

/** An engine that breaks down at the next question once `breakDown` is set in its worker. */
export function canBreakDown() {
  const { Instance } = WebAssembly;
  WebAssembly.Instance = function (module, imports) {
    const { exports } = new Instance(module, imports);
    const saddlerule_ask = () => {
      if (self.breakDown) throw new WebAssembly.RuntimeError("unreachable");
      exports.saddlerule_ask();
    };
    return { exports: { ...exports, saddlerule_ask } };
  };
}
