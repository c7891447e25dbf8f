// Workers that answer as engine-thread.ts does, without an engine.

/** Workers of which each knows its number and what it was told. */
export function workers() {
  const made = [];
  const start = () => {
    const worker = {
      number: made.length,
      told: [],
      ended: false,
      terminate: () => (worker.ended = true),
      postMessage(message) {
        const { engine } = message;
        worker.told.push(message);
        const say = (said) =>
          setImmediate(() => worker.ended || worker.onmessage({ data: { engine, ...said } }));
        if ("module" in message) say({ module: message.module });
        else if (message.request?.do === "break") say({ failure: "unreachable" });
        else if (message.request?.do !== "wait" && "request" in message)
          say({ answer: { worker: worker.number, engine, text: "" } });
      },
    };
    setImmediate(() => worker.onmessage({ data: { engine: 0, started: true } }));
    made.push(worker);
    return worker;
  };
  return { made, start };
}
