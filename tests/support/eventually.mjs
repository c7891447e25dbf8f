// Waiting for a state: of a page, of a server, of anything that can be asked.
import { setTimeout as pause } from "node:timers/promises";

/** How long a state may take, in ms. Only a test that fails waits so long; a busy build server is slower than anyone's machine. */
export const patience = 120_000;

/** How long a whole test or a group of them may take in ms. It ends what hangs, and judges no speed. */
export const wholeTest = 900_000;

/** Asks again until `check` throws no more. */
export async function eventually(check) {
  const deadline = Date.now() + patience;
  for (;;) {
    try {
      return await check();
    } catch (failure) {
      if (Date.now() > deadline) throw failure;
      await pause(100);
    }
  }
}

/** Asks again until the answer is neither null nor false, and hands it back; `late` is asked what to do when patience ends. */
export async function until(ask, { late }) {
  const deadline = Date.now() + patience;
  for (;;) {
    const answer = await ask();
    if (answer !== null && answer !== false) return answer;
    if (Date.now() > deadline) return late();
    await pause(50);
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
