// A page that is fed with what strangers wrote, and what must not come of it: a script that runs, a request to anybody else, a
// typed figure that is gone, a stall.

import assert from "node:assert/strict";
import { clubSite } from "./club-site.mjs";

/** In milliseconds, on a machine of which nothing else is asked. */
const longestStall = 1000;

/** A server to which nothing may be sent. */
export function stranger() {
  const answer = (request, response) =>
    response
      .writeHead(200, { "access-control-allow-origin": "*", "content-type": "application/json" })
      .end("[]");
  const paths = ["address", "bikes.json", "css", "formula", "frame", "image", "picture", "style", "x"];
  return clubSite(Object.fromEntries(paths.map((path) => [`/${path}`, answer])), { policy: null });
}

/** Gathers what goes wrong around a page: to be called before it opens anything. `own` are the origins it may ask. */
export async function watched(page, own = []) {
  const faults = [];
  page.on("pageerror", (error) => faults.push(`script error: ${error.message}`));
  page.on("dialog", (dialog) => {
    if (dialog.type() !== "beforeunload") faults.push(`dialog: ${dialog.message()}`);
    void dialog.accept();
  });
  page.on("popup", () => faults.push("another window"));
  page.on("request", (request) => {
    const address = request.url();
    if (!/^(data|blob|file):/.test(address) && !own.includes(new URL(address).origin))
      faults.push(`request: ${address.slice(0, 200)}`);
  });
  await page.addInitScript(driver);
  return faults;
}

/** Runs in the page: ways to press and to wait, and the browser's own word for how long it was busy without a pause. */
export function driver() {
  const work = { longest: 0 };
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) work.longest = Math.max(work.longest, duration);
  }).observe({ type: "longtask" });

  /** How many times slower than an idle machine: a loop that takes 15 ms on one. */
  const slowness = () => {
    const begun = performance.now();
    let sum = 0;
    for (let i = 0; i < 1e7; ++i) sum = (Math.imul(sum, 31) + i) | 0;
    return Math.max(1, (performance.now() - begun + (sum === 1 ? 1 : 0)) / 15);
  };

  const room = () =>
    [...document.querySelectorAll("*")].find((one) => one.shadowRoot?.querySelector(".frame"))?.shadowRoot;
  const find = (selector) => room()?.querySelector(selector) ?? null;

  /** Until `look` gives something. */
  const until = (what, look) =>
    new Promise((resolve, reject) => {
      const begun = performance.now();
      const again = () => {
        const seen = look();
        if (seen !== null && seen !== false && seen !== undefined) resolve(seen);
        else if (performance.now() - begun > 60_000) reject(new Error(`${what} did not come`));
        else requestAnimationFrame(again);
      };
      again();
    });

  const press = async (selector) => (await until(selector, () => find(selector))).click();

  /** A screen is there, with all of its answers. */
  const stands = (name) =>
    until(name, () => find(`.screen.${name}.current:not(.asking):not(.stale) .screen-title`));

  const goTo = async (tab) => {
    await press(`.navigation .to-${tab}`);
    await stands(tab);
  };

  const type = (selector, text) => {
    const field = find(selector);
    field.value = text;
    field.dispatchEvent(new Event("input", { bubbles: true }));
  };

  /** Gives a file to a field for one, as a file chooser does. */
  const give = (field, name, content) => {
    const given = new window.DataTransfer();
    given.items.add(new File([typeof content === "string" ? content : Uint8Array.from(content)], name));
    field.files = given.files;
    field.dispatchEvent(new Event("change", { bubbles: true }));
  };

  window.drive = { find, give, goTo, press, room, slowness, stands, type, until, work };
}

/** What one case did to the page; `faults` are taken out. */
export function toldOf(faults, { longest, slowness, ran, polluted, typed }, wanted) {
  const told = faults.splice(0);
  if (ran) told.push("a script ran");
  if (polluted) told.push("the prototype of all objects has a field more");
  if (typed !== wanted) told.push(`the typed figure is ${typed}`);
  const limit = longestStall * slowness;
  if (longest > limit)
    told.push(`a stall of ${Math.round(longest)} ms, where ${Math.round(limit)} are allowed`);
  return told;
}

/** Runs in the page after a case, and begins the next one. */
export function caseEnds() {
  const { work, find, slowness } = window.drive;
  const ends = {
    longest: work.longest,
    slowness: work.longest > 1000 ? slowness() : 1,
    ran: "ran" in window,
    polluted: "polluted" in {},
    typed: find(".screen.rider input[id^=reading-]")?.value ?? null,
  };
  work.longest = 0;
  return ends;
}

/** Feeds every case through `feed`, which throws where something does not come, and tells of all that went wrong. */
export async function fedAll({ page, faults, cases, typed, server }, feed) {
  const found = {};
  let longest = 0;
  for (const one of cases) {
    const failure = await feed(one).then(
      () => [],
      (cause) => [cause.message.split("\n")[0]],
    );
    const ends = await page.evaluate(caseEnds);
    longest = Math.max(longest, ends.longest);
    const sent = server.requests.splice(0).map((path) => `sent to the stranger: ${path}`);
    const told = [...failure, ...sent, ...toldOf(faults, ends, typed)];
    if (told.length > 0) found[one.what] = told;
    if (failure.length > 0) break;
  }
  assert.deepEqual(found, {});
  return longest;
}
