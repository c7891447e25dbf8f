// Keeping a family without a browser: what is saved reads back as it was, whatever else is read is refused in one piece, and of
// two pages with one store none writes over what the other wrote.

import assert from "node:assert/strict";
import test from "node:test";
import fc from "fast-check";
import { pageModule } from "../support/page-modules.mjs";
import { virtualTime } from "../support/virtual-time.mjs";

const { fileText, readFileText } = await pageModule("keeping/family-file.ts");
const { familyIn, familyBroughtBack, isFault } = await pageModule("keeping/family-form.ts");
const { familyKeeper } = await pageModule("keeping/family-keeper.ts");
const { memoryStore } = await pageModule("keeping/device-store.ts");
const { firstState } = await pageModule("state/page-state.ts");
const { createStore } = await pageModule("state/store.ts");
const { riderAdded } = await pageModule("state/family-changes.ts");
const { riderSaid, readingAdded, readingChanged } = await pageModule("state/rider-changes.ts");
const { bikePicked, mostPicked } = await pageModule("state/picking.ts");
const { bikeMarked } = await pageModule("state/years-ahead.ts");
const { bikeSet, pairFixed, pairRuledOut, setKey } = await pageModule("state/club-steps.ts");
const { longestName, longestText, longestTyped } = await pageModule("state/limits.ts");
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
    unsaved: true,
    encoding: "windows-1252",
    bytes: bytes(0x67, 0xfc, 0x6e, 0x0a),
    edits: [],
  },
  {
    name: "b.json",
    sample: true,
    inHand: true,
    unsaved: false,
    encoding: null,
    bytes: bytes(0xef, 0xbb, 0xbf, 0x7b, 0x7d, 0x0d),
    edits: [],
  },
];

test("a family and its lists read back as they were saved, to the byte", () => {
  const read = readFileText(fileText(familyIn(typed), lists));
  assert.deepEqual(read, { family: familyIn(typed), lists, lost: [] });
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
  "x".repeat(3000),
  [],
  {},
  [[]],
  true,
  { length: 3 },
  { code: "damaged" },
];

test("a saved file with one odd value is refused, or taken and saved again without it, and never ends in an error", () => {
  const text = fileText(familyIn(typed), lists);
  const next = chance(7);
  let refused = 0;
  let mended = 0;
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
    if (read.lost.length > 0) ++mended;
    // What is taken can be shown, saved, and read again.
    const shown = familyIn(familyBroughtBack(read.family)(firstState(today, "cm", "en")));
    const again = readFileText(fileText(shown, read.lists));
    assert.deepEqual(again, { family: shown, lists: read.lists, lost: [] });
  }
  assert.ok(refused > 2000 && mended > 50, `of 4000, ${refused} were refused and ${mended} mended`);
});

/** What a page can hold at its limits: texts as long as fields and lists let them be, keys and counts that have grown. */
const anyText = (longest) =>
  fc.oneof(
    fc.string({ maxLength: 12, unit: "binary" }),
    fc.constantFrom("\u202e", "\ud800", "__proto__", "=1+1", "<img src=x onerror=alert(1)>"),
    fc.constantFrom("L", "\u{1F6B2}", '"', "\u0000").map((character) => character.repeat(longest)),
  );
const anyMark = anyText(longestText);
const anyName = anyText(longestName / 2);
const anyTyped = anyText(longestTyped / 2);
const anyPair = fc.record({ rider: anyMark, bike: anyMark });
const anyRider = fc.record({
  name: anyName,
  readings: fc.array(fc.tuple(anyTyped, fc.boolean()), { maxLength: 30 }),
  wheel: fc.option(fc.integer({ min: 1, max: 1000 })),
  colour: fc.option(anyMark),
});
const anyPage = fc.record({
  riders: fc.array(anyRider, { minLength: 1, maxLength: 6 }),
  picked: fc.uniqueArray(anyMark, { maxLength: mostPicked }),
  taped: fc.array(anyName, { maxLength: 10 }),
  pairs: fc.array(anyPair, { maxLength: 4 }),
  marks: fc.uniqueArray(anyMark, { maxLength: 5 }),
  listNames: fc.array(anyMark, { maxLength: 3 }),
});

/** The page once all of that was done in it. */
function held({ riders, picked, taped, pairs, marks }) {
  const changes = [
    ...riders.flatMap(({ name, readings, wheel, colour }, place) => [
      ...(place === 0 ? [] : [riderAdded()]),
      riderSaid({ name, stature: { text: name, unit: "in" } }),
      ...readings.flatMap(([text, shoes], count) => [
        readingAdded(`20${10 + (count % 16)}-02-28`),
        readingChanged(count + 2, { figure: { text: text || "1", unit: "cm" }, shoes }),
      ]),
      wanted({ wheel, colour }),
    ]),
    ...taped.flatMap((name) => [draftTaped({ lowest: name }), draftKept(name)]),
    ...picked.map((id) => bikePicked(id, true)),
    ...pairs.flatMap((pair) => [pairFixed(pair, true), pairRuledOut(pair), bikeSet(setKey(pair), true)]),
    ...marks.map((id) => bikeMarked(id, { is: "owned", price: id.slice(0, longestTyped) })),
  ];
  return after(firstState(today, "cm", "en"), ...changes);
}

test("whatever a page can hold is saved and read back, from a file and from the device", async () => {
  const keptThere = async (state) => {
    const device = memoryStore();
    const first = page(device, state);
    first.keeper.keepOnDevice(true);
    await settled();
    const second = page(device);
    await second.keeper.begin();
    for (const { keeper } of [first, second]) keeper.stop();
    return second.store.read();
  };
  await fc.assert(
    fc.asyncProperty(anyPage, async (page) => {
      const state = held(page);
      const files = page.listNames.map((name) => ({ ...lists[0], name }));
      const read = readFileText(fileText(familyIn(state), files));
      assert.deepEqual(read.lost, []);
      assert.deepEqual(read.lists, files);
      const withOwnKeys = familyIn(familyBroughtBack(read.family)(firstState(today, "cm", "en")));
      const there = await keptThere(state);
      assert.equal(there.keeping.trouble, null);
      assert.deepEqual(familyIn(there), withOwnKeys);
      // Keys of readings are numbered anew; all else is as it was.
      const plain = (family) => JSON.stringify(family, (key, value) => (key === "key" ? undefined : value));
      assert.equal(plain(withOwnKeys), plain(familyIn(state)));
    }),
    { numRuns: 100, seed: 22 },
  );
});

const tooLong = "L".repeat(longestText + 1);

/** A change to a saved file, the place that is named, and what is left of it. */
const broken = {
  "a pick of too long an id": [
    (file) => (file.picked = ["A", tooLong, "B"]),
    ["picked[1]"],
    ({ picked }) => assert.deepEqual(picked, ["A", "B"]),
  ],
  "five picks": [
    (file) => (file.picked = [..."ABCDE"]),
    ["picked[4]"],
    ({ picked }) => assert.deepEqual(picked, [..."ABCD"]),
  ],
  "a reading on no day": [
    (file) =>
      file.riders[0].rider.readings.push({ ...file.riders[0].rider.readings[0], key: 2, on: "2026-02-30" }),
    ["riders[0].rider.readings[1].on"],
    ({ riders }) => assert.equal(riders[0].rider.readings.length, 1),
  ],
  "too long a colour": [
    (file) => (file.riders[1].wants.colour = tooLong),
    ["riders[1].wants.colour"],
    ({ riders }) => assert.equal(riders[1].wants.colour, null),
  ],
  "too long a name": [
    (file) => (file.riders[1].rider.name = "W".repeat(longestName + 1)),
    ["riders[1].rider.name"],
    ({ riders }) => assert.equal(riders[1].rider.name, "W".repeat(longestName)),
  ],
  "a wheel beyond all numbers": [
    (file) => (file.riders[1].wants.wheel = 1e300),
    ["riders[1].wants.wheel"],
    ({ riders }) => assert.equal(riders[1].wants.wheel, null),
  ],
  "the number of the next bike beyond all numbers": [
    (file) => (file.tape.nextNumber = 1e12),
    ["tape.nextNumber"],
    ({ tape }) => assert.equal(tape.nextNumber, 2),
  ],
  "the largest keys there are": [
    (file) => {
      file.riders[1].rider.key = Number.MAX_SAFE_INTEGER;
      file.inHand = Number.MAX_SAFE_INTEGER;
    },
    [],
    ({ riders, inHand }) => assert.deepEqual([riders[0].rider.key, riders[1].rider.key, inHand], [1, 2, 2]),
  ],
};

for (const [what, [change, named, check]] of Object.entries(broken)) {
  test(`a saved file with ${what} is read without it, and says so`, () => {
    const file = JSON.parse(fileText(familyIn(typed), lists));
    change(file);
    const read = readFileText(JSON.stringify(file));
    assert.deepEqual(read.lost, named);
    check(read.family);
    assert.deepEqual(read.lists, lists);
  });
}

test("a record with a part that cannot be read is shown without it, named, and left as it is until somebody chooses", async () => {
  const device = memoryStore();
  const kept = familyIn(typed);
  await device.write(null, { version: 2, ...kept, picked: ["A", tooLong] });
  const { store, keeper, trouble } = page(device);
  await keeper.begin();
  assert.equal(trouble(), "mended");
  assert.deepEqual(store.read().keeping.said, { what: "mended", lost: ["picked[1]"] });
  assert.deepEqual(store.read().picked, ["A"]);
  assert.equal(store.read().rider.name, "Wim \u{1F6B2}");
  store.change(riderSaid({ name: "Wies" }));
  await settled();
  assert.equal((await device.read()).value.picked.length, 2);
  keeper.settle("here");
  await settled();
  assert.equal(trouble(), null);
  assert.deepEqual((await device.read()).value.picked, ["A"]);
  keeper.stop();
});

test("a saved file that is cut off anywhere is refused", () => {
  const text = fileText(familyIn(typed), lists).trimEnd();
  for (let end = 0; end < text.length; end += 13) {
    const read = readFileText(text.slice(0, end));
    assert.ok(isFault(read), `cut off at ${end}`);
  }
});

/** A page without lists, keeping in `device`. */
function page(device, state = firstState(today, "cm", "en")) {
  const store = createStore(state);
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
