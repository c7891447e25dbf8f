// Time that a test lets pass, for modules that wait by the clock.

import { mock } from "node:test";

/** To be called before anything of the module under test runs. */
export function virtualTime() {
  mock.timers.enable({ apis: ["setTimeout", "setInterval"] });
  /** Lets `time` ms pass, with room after every tenth of it for what follows from it. */
  return async function pass(time) {
    for (let turn = 0; turn < 10; ++turn) {
      mock.timers.tick(time / 10);
      for (let rest = 0; rest < 10; ++rest) await new Promise((resolve) => setImmediate(resolve));
    }
  };
}
