// Waiting for a state: of a page, of a server, of anything that can be asked.
import { setTimeout as pause } from "node:timers/promises";

/** Asks again until `check` throws no more. */
export async function eventually(check, { tries = 50, every = 100 } = {}) {
  for (let left = tries; ; --left) {
    try {
      return await check();
    } catch (failure) {
      if (left === 0) throw failure;
      await pause(every);
    }
  }
}

/** Asks again until the answer is neither null nor false, and hands it back; `late` is asked what to do after `patience` ms. */
export async function until(ask, { patience = 5000, every = 50, late }) {
  const deadline = Date.now() + patience;
  for (;;) {
    const answer = await ask();
    if (answer !== null && answer !== false) return answer;
    if (Date.now() > deadline) return late();
    await pause(every);
  }
}

/** Runs in a page: a browser that draws a second time has laid out and drawn all that was changed before the first. */
const twoFrames = () =>
  new Promise((resolve) => {
    requestAnimationFrame(() => requestAnimationFrame(() => resolve(true)));
  });

/** Until a page of Playwright's has drawn what changed. */
export const drawn = (page) => page.evaluate(twoFrames);

/** The same for a page of tests/support/browsers. */
export const drawnIn = (page) => page.run(twoFrames);
