// The page on a device four times as slow, and what its readers would notice: long tasks, late frames, things that jump.

import { inEveryThread } from "./engine-thread.mjs";
import { openPage, screens } from "./open-page.mjs";

export const usualSlowdown = 4;

/**
 * The browser slows only the page's own thread down. The engine's thread is held up here before everything it says, for as
 * much longer as it is to be slower.
 */
function slowThread(slowdown) {
  const { postMessage } = self;
  let from = 0;
  let listener;
  Object.defineProperty(self, "onmessage", {
    set(given) {
      listener = given;
    },
  });
  self.addEventListener("message", (event) => {
    from = performance.now();
    listener(event);
  });
  self.postMessage = (message) => {
    const now = performance.now();
    const until = now + (slowdown - 1) * (now - from);
    while (performance.now() < until);
    from = performance.now();
    postMessage.call(self, message);
  };
}

/** Gathers what the browser says about itself: tasks, frames, events, shifts. */
function watchful() {
  window.noticed = { tasks: [], frames: [], events: [], shifts: [] };
  const { noticed } = window;
  const watch = (type, keep, options = {}) =>
    new PerformanceObserver((list) => list.getEntries().forEach(keep)).observe({ type, ...options });
  watch("longtask", ({ duration }) => noticed.tasks.push(duration));
  watch("long-animation-frame", ({ duration }) => noticed.frames.push(duration));
  watch(
    "event",
    ({ name, duration, interactionId }) => interactionId > 0 && noticed.events.push({ name, duration }),
    { durationThreshold: 16 },
  );
  watch("layout-shift", ({ value, hadRecentInput, sources }) => {
    if (hadRecentInput) return;
    const what = sources.map(({ node }) => node?.className ?? node?.nodeName ?? "").join(", ");
    noticed.shifts.push({ value, what });
  });
}

/** `noticed` gives what came up since it was called last. */
export async function openSlowly(
  browser,
  viewport = screens.phone,
  { slowdown = usualSlowdown, ...options } = {},
) {
  const opened = await openPage(browser, viewport, {
    bypassCSP: true,
    ...options,
    prepare: async (context) => {
      await inEveryThread(context, slowThread, slowdown);
      await context.addInitScript(watchful);
    },
  });
  const session = await opened.page.context().newCDPSession(opened.page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slowdown });
  const noticed = () =>
    opened.page.evaluate(() => {
      const { tasks, frames, events, shifts } = window.noticed;
      const taken = { tasks: [...tasks], frames: [...frames], events: [...events], shifts: [...shifts] };
      for (const list of [tasks, frames, events, shifts]) list.length = 0;
      return taken;
    });
  return { ...opened, session, noticed };
}
