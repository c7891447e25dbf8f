// Keeping a family without a browser: what is saved reads back as it was, whatever else is read is refused in one piece, and of
// two pages with one store none writes over what the other wrote.

import assert from "node:assert/strict";
import test from "node:test";
import { pageModule } from "../support/page-modules.mjs";
import { virtualTime } from "../support/virtual-time.mjs";

const { fileText, readFileText } = await pageModule("keeping/family-file.ts");
const { familyIn, familyBroughtBack, isFault } = await pageModule("keeping/family-form.ts");
const { familyKeeper } = await pageModule("keeping/family-keeper.ts");
const { memoryStore } = await pageModule("keeping/device-store.ts");
const { firstState } = await pageModule("state/page-state.ts");
const { createStore } = await pageModule("state/store.ts");
const { riderAdded } = await pageModule("state/family-changes.ts");
const { riderSaid, readingChanged } = await pageModule("state/rider-changes.ts");
const { draftTaped, draftKept, languageChosen, wanted } = await pageModule("state/screen-changes.ts");

const today = "2026-11-25";
const after = (state, ...changes) => changes.reduce((now, change) => change(now), state);
const inseam = (text) => readingChanged(1, { figure: { text, unit: "cm" } });

const typed = after(
  firstState(today, "cm", "en"),
  languageChosen("nl"),
  inseam("49.5"),
  riderSaid({ stage: "riding", born: { year: "2021", month: "09" }, sex: "girl" }),
  draftTaped({ lowest: "48", highest: "60 cm" }),
  draftKept("Green, \u202Eright to left"),
  riderAdded(),
  riderSaid({ name: "Wim \u{1F6B2}" }),
  wanted({ maxPrice: "120", wheel: 16, colour: "red", order: "cost", detail: true }),
);

const bytes = (...numbers) => Uint8Array.from(numbers);
const lists = [
  {
    name: "a.csv",
    sample: false,
    inHand: false,
    encoding: "windows-1252",
    bytes: bytes(0x67, 0xfc, 0x6e, 0x0a),
    edits: [],
  },
  {
    name: "b.json",
    sample: true,
    inHand: true,
    encoding: null,
    bytes: bytes(0xef, 0xbb, 0xbf, 0x7b, 0x7d, 0x0d),
    edits: [],
  },
];

test("a family and its lists read back as they were saved, to the byte", () => {
  const read = readFileText(fileText(familyIn(typed), lists));
  assert.deepEqual(read, { family: familyIn(typed), lists });
  const there = familyBroughtBack(read.family)(firstState(today, "in", "en"));
  assert.deepEqual(familyIn(there), familyIn(typed));
});

test("a file from before bikes could be told about in more detail is read, and has them in lines", () => {
  const before = JSON.parse(fileText(familyIn(typed), lists));
  for (const { wants } of before.riders) delete wants.detail;
  const { family } = readFileText(JSON.stringify(before));
  assert.deepEqual(
    family.riders.map(({ wants }) => wants.detail),
    [false, false],
  );
});

/** Numbers in a row that looks like chance, the same in every run. */
function chance(seed) {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

/** Every place in a tree, as the object and the key in it. */
function places(node) {
  if (typeof node !== "object" || node === null) return [];
  return Object.keys(node).flatMap((key) => [[node, key], ...places(node[key])]);
}

const odd = [
  null,
  -1,
  0,
  1.5,
  1e300,
  "",
  "x".repeat(300),
  [],
  {},
  [[]],
  true,
  { length: 3 },
  { code: "damaged" },
];

test("a saved file with one odd value is taken whole or not at all, and never ends in an error", () => {
  const text = fileText(familyIn(typed), lists);
  const next = chance(7);
  let refused = 0;
  for (let turn = 0; turn < 4000; ++turn) {
    const tree = JSON.parse(text);
    const all = places(tree);
    const [node, key] = all[next(all.length)];
    if (next(4) === 0) delete node[key];
    else node[key] = odd[next(odd.length)];
    const read = readFileText(JSON.stringify(tree));
    if (isFault(read)) {
      assert.ok(["foreign", "newer", "damaged"].includes(read.code));
      ++refused;
      continue;
    }
    // What is taken can be shown, saved, and read again.
    const shown = familyIn(familyBroughtBack(read.family)(firstState(today, "cm", "en")));
    assert.deepEqual(readFileText(fileText(shown, read.lists)), { family: shown, lists: read.lists });
  }
  assert.ok(refused > 2000, `${refused} of 4000 were refused`);
});

test("a saved file that is cut off anywhere is refused", () => {
  const text = fileText(familyIn(typed), lists).trimEnd();
  for (let end = 0; end < text.length; end += 13) {
    const read = readFileText(text.slice(0, end));
    assert.ok(isFault(read), `cut off at ${end}`);
  }
});

/** A page without lists, keeping in `device`. */
function page(device) {
  const store = createStore(firstState(today, "cm", "en"));
  const noLists = {
    mark: () => "",
    filesWithEdits: () => Promise.resolve([]),
    replaceWith: () => Promise.resolve(true),
  };
  const keeper = familyKeeper(store, device, noLists);
  return {
    store,
    keeper,
    type: (text) => store.change(inseam(text)),
    reads: () => store.read().rider.readings[0].figure.text,
    trouble: () => store.read().keeping.trouble,
  };
}

/** Longer than the page waits for somebody to finish a word. */
const pass = virtualTime();
const settled = () => pass(600);
const inStore = async (device) => (await device.read()).value.riders[0].rider.readings[0].figure.text;

test("of two pages with one store none writes over what the other wrote", async () => {
  const device = memoryStore();
  const first = page(device);
  first.type("49");
  first.keeper.keepOnDevice(true);
  await settled();
  const second = page(device);
  await second.keeper.begin();
  assert.equal(second.reads(), "49");
  second.type("50");
  await settled();
  first.type("51");
  await settled();
  assert.equal(first.trouble(), "elsewhere");
  assert.equal(await inStore(device), "50");
  first.type("52");
  await settled();
  assert.equal(await inStore(device), "50", "nothing is written until somebody chooses");
  first.keeper.settle("here");
  await settled();
  assert.equal(first.trouble(), null);
  assert.equal(await inStore(device), "52");
  second.keeper.lookAgain();
  await settled();
  assert.equal(second.reads(), "52");
  for (const { keeper } of [first, second]) keeper.stop();
});

test("who types before the device has answered loses neither what was typed nor what was kept", async () => {
  const device = memoryStore();
  const first = page(device);
  first.type("49");
  first.keeper.keepOnDevice(true);
  await settled();
  first.keeper.stop();
  const second = page(device);
  const beginning = second.keeper.begin();
  second.type("60");
  await beginning;
  await settled();
  assert.equal(second.trouble(), "elsewhere");
  assert.equal(second.reads(), "60");
  assert.equal(await inStore(device), "49");
  second.keeper.settle("device");
  await settled();
  assert.equal(second.reads(), "49");
  second.keeper.stop();
});

test("a device that fails once is tried again with the next change", async () => {
  const device = memoryStore();
  let fails = false;
  const write = (...given) =>
    fails ? Promise.reject(new DOMException("", "QuotaExceededError")) : device.write(...given);
  const { keeper, type, trouble } = page({ ...device, write });
  keeper.keepOnDevice(true);
  type("49");
  await settled();
  fails = true;
  type("50");
  await settled();
  assert.equal(trouble(), "full");
  assert.equal(await inStore(device), "49");
  fails = false;
  type("51");
  await settled();
  assert.equal(trouble(), null);
  assert.equal(await inStore(device), "51");
  keeper.stop();
});
