// Seeded random actions over all screens with a list of 5,000 bikes: nothing on the console, no script error, and what is left
// behind is freed. ACTIONS and SEED ask for a longer run or another one:
//
//   ACTIONS=10000 SEED=7 node --test tests/web/random-actions.browser.test.mjs

import assert from "node:assert/strict";
import test, { after, before } from "node:test";
import { wholeTest } from "../support/eventually.mjs";
import { launchBrowser, openPage, screens } from "../support/open-page.mjs";
import { makeList } from "../support/make-list.mjs";
import { driver } from "../support/hostile.mjs";

const actions = Number(process.env.ACTIONS ?? 1500);
const seed = Number(process.env.SEED ?? 22);
/** By then every screen was seen and what is made once has been made. */
const settled = Math.min(300, actions / 2);
const mostGrowth = 1.2;
/** About two screens, which the browser and the page keep for a while; a leak would leave nodes behind at every action. */
const mostNodesLeft = 1000;

let browser;
// Without compilers: what they write for often-used functions is in the heap too, and is no leak.
before(async () => (browser = await launchBrowser("--js-flags=--no-sparkplug --no-maglev --no-turbofan")));
after(() => browser.close());

/** Runs in the page: as many actions, each on something that a reader could press or type into now. */
async function act({ count, seed }) {
  const { find, room, until } = window.drive;
  let state = seed >>> 0;
  const chance = (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
  const texts = [
    "",
    "49.5",
    "19 1/2 in",
    "forty",
    "-3",
    "1e9",
    "B00",
    "Red \u{1F6B2}",
    "<b>",
    "90",
    "2021",
    "12,5 kg",
  ];
  const used = {};
  // What leaves the page, prints, or takes the list away.
  const notThese =
    /Save|file|Print|Open|Close|Delete|Discard|Start a new|sample|Try|Share|Copy|Merge|Remove/i;
  const pressable = () =>
    [...room().querySelectorAll("button, summary, input, select")].filter(
      (one) =>
        one.checkVisibility() &&
        one.type !== "file" &&
        !one.disabled &&
        !one.matches(".language-choice") &&
        !notThese.test(`${one.getAttribute("aria-label") ?? ""} ${one.textContent}`),
    );
  const one = () => {
    // Screens are left often, or most of the time goes to one.
    const tabs = [...room().querySelectorAll(".navigation > button")];
    const things = pressable();
    // A screen has many fields and rows, and few ways on.
    const ways = things.filter((thing) => thing.matches("button.wide, .row-name, summary"));
    const kind = chance(6);
    const all = kind === 0 ? tabs : kind <= 3 && ways.length > 0 ? ways : things;
    const taken = all[chance(all.length)];
    const name = find(".screen.current").className.split(" ")[1];
    used[name] = (used[name] ?? 0) + 1;
    if (taken.localName === "select") {
      taken.selectedIndex = chance(taken.options.length);
      taken.dispatchEvent(new Event("change", { bubbles: true }));
    } else if (taken.localName === "input" && taken.type === "text") {
      taken.value = texts[chance(texts.length)];
      taken.dispatchEvent(new Event("input", { bubbles: true }));
    } else {
      taken.click();
    }
  };
  for (let done = 0; done < count; ++done) {
    one();
    await new Promise(requestAnimationFrame);
    // Questions that were not answered yet are given up for newer ones now and then, as by hasty readers.
    if (chance(4) === 0) await until("answers", () => find(".screen.current:not(.asking)"));
  }
  return { state, used };
}

test(
  "random actions leave nothing on the console and nothing in memory",
  { timeout: wholeTest },
  async (test) => {
    const { page, faults, close } = await openPage(browser, screens.phone, {
      prepare: (context) => context.addInitScript(driver),
    });
    await page.evaluate(
      async (list) => {
        const { find, give, goTo, type, until } = window.drive;
        find(".screen.rider input[type=radio][value=cm]").click();
        type(".screen.rider input[id^=reading-]", "49.5");
        await goTo("list");
        give(find(".screen.list input[type=file]"), "many.json", list);
        await until("the list", () => find(".screen.list [data-entry]"));
      },
      JSON.stringify(makeList(5000)),
    );
    const session = await page.context().newCDPSession(page);
    await session.send("Performance.enable");
    /** What is held once all that may go is gone, on the screen that all come back to. */
    const heldNow = async () => {
      await page.evaluate(async () => {
        const { goTo, until, find } = window.drive;
        await goTo("list");
        await goTo("keep");
        await until("answers", () => find(".screen.current:not(.asking)"));
      });
      for (let turn = 0; turn < 3; ++turn) await session.send("HeapProfiler.collectGarbage");
      const { metrics } = await session.send("Performance.getMetrics");
      const of = (wanted) => metrics.find(({ name }) => name === wanted).value;
      // Nodes that a script still holds though they are in no document. (Counting all nodes and taking away those in the document
      // would count the browser's own, inside each field and list to choose from.)
      await session.send("DOM.enable");
      const { detachedNodes } = await session.send("DOM.getDetachedDomNodes");
      // Or what was told would be held for whoever asked.
      await session.send("DOM.disable");
      const size = ({ children = [] }) => children.reduce((sum, child) => sum + size(child), 1);
      const left = detachedNodes.reduce((sum, { treeNode }) => sum + size(treeNode), 0);
      return { heap: of("JSHeapUsedSize"), nodes: of("Nodes"), left };
    };
    /** The least of a few: what the browser keeps for a while goes, what leaked stays. */
    const held = async () => {
      const all = [];
      for (let turn = 0; turn < 5; ++turn) all.push(await heldNow());
      const [least] = all.sort((a, b) => a.left - b.left);
      return { ...least, heap: Math.min(...all.map(({ heap }) => heap)) };
    };
    const first = await page.evaluate(act, { count: settled, seed });
    const before = await held();
    const rest = await page.evaluate(act, { count: actions - settled, seed: first.state });
    const after = await held();
    const seen = Object.keys({ ...first.used, ...rest.used });
    const grown = after.heap / before.heap;
    test.diagnostic(
      `${actions} actions, seed ${seed}: heap ${before.heap} to ${after.heap}, ` +
        `nodes ${before.nodes} to ${after.nodes}, held in no document ${before.left} to ${after.left}; ` +
        `screens seen ${seen.join(", ")}`,
    );
    assert.deepEqual(faults, []);
    assert.ok(seen.length >= 8, `only ${seen.join(", ")} were seen`);
    assert.ok(grown < mostGrowth, `the heap grew to ${grown.toFixed(2)} of what it was`);
    assert.ok(after.left < mostNodesLeft, `${after.left} nodes are held that are not in the document`);
    await close();
  },
);
