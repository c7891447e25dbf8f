// The page with an engine that is slow by a clock of its own: answers wait until the test lets the time pass.

/** For the page, before its own script: every answer of an engine's thread comes `window.held.delay` ms of that clock late. */
export function holdAnswers() {
  const RealWorker = Worker;
  const held = { delay: 0, now: 0, waiting: [], open: 0, list: null };
  window.held = held;
  /** What each engine was asked last; they are asked one thing at a time. */
  const asked = new Map();

  function deliver({ listener, event, request }) {
    --held.open;
    const { answer } = event.data;
    if (["load", "new_list"].includes(request?.do) && answer.list) held.list = answer.list.title;
    listener(event);
  }

  held.pass = async (time) => {
    held.now += time;
    while (held.waiting[0]?.due <= held.now) {
      deliver(held.waiting.shift());
      // What follows from it is asked in its own turn.
      await new Promise((resolve) => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = resolve;
        port2.postMessage(null);
      });
    }
  };

  window.Worker = class extends RealWorker {
    postMessage(message, ...others) {
      if ("request" in message) {
        ++held.open;
        asked.set(this.key(message.engine), message.request);
      }
      super.postMessage(message, ...others);
    }
    key(engine) {
      this.number ??= ++held.threads || (held.threads = 1);
      return `${this.number} ${engine}`;
    }
    set onmessage(listener) {
      super.onmessage = (event) => {
        if (!("answer" in event.data)) {
          listener(event);
          return;
        }
        const late = { listener, event, request: asked.get(this.key(event.data.engine)) };
        if (held.delay === 0) deliver(late);
        else held.waiting.push({ ...late, due: held.now + held.delay });
      };
    }
  };
}

export const slowBy = (page, delay) => page.evaluate((delay) => void (window.held.delay = delay), delay);

export const letPass = (page, time) => page.evaluate((time) => window.held.pass(time), time);

/** Until everything is answered, and nothing on screen waits any more. */
export async function settle(page) {
  const isSettled = () =>
    page.evaluate(async () => {
      await window.held.pass(60_000);
      const { shadowRoot } = document.querySelector("#saddlerule");
      return window.held.open === 0 && shadowRoot.querySelector(".screen.current.asking") === null;
    });
  while (!(await isSettled()));
}
