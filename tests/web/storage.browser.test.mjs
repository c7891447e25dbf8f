// What is kept on the device: nothing until somebody asks for it, then everything that was typed; and what happens where the
// device is full, refuses, or holds something that cannot be read.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { drawn } from "../support/eventually.mjs";
import { saved } from "../support/list-desk.mjs";
import {
  goTo,
  launchBrowser,
  openList,
  openPage,
  pageAddress,
  screens,
  servedPage,
} from "../support/open-page.mjs";

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

const now = "2026-11-25T10:00:00";

async function openAt({ served = true, ...options } = {}) {
  const prepare = (context) => context.addInitScript(countWork);
  const opened = await openPage(browser, screens.phone, { now, prepare, served });
  await opened.page.getByRole("radio", { name: "centimetres" }).check();
  if (options.inseam !== null) await typeInseam(opened.page, options.inseam ?? "49.5");
  return opened;
}

async function typeInseam(page, figure) {
  await page.getByRole("textbox", { name: "Inside leg" }).fill(figure);
}

const inseamOn = (page) => page.getByRole("textbox", { name: "Inside leg" }).inputValue();

async function keepOnDevice(page, on = true) {
  await goTo(page, "Save");
  await page.getByRole("checkbox", { name: "Save on this device" }).setChecked(on);
  if (on) await page.getByText("Saved as you type.").waitFor();
}

/**
 * Runs in the page: what the page has begun with its timers and with the device, and not ended yet. Timers that wait for longer than
 * anything waits to be written (for the next day, for a thread that is silent) do not count.
 */
function countWork() {
  const begun = new Set();
  window.workBegun = begun;
  window.timesAsked = 0;
  const { setTimeout, clearTimeout } = window;
  window.setTimeout = (work, delay = 0, ...given) => {
    const timer = setTimeout(() => {
      begun.delete(timer);
      work(...given);
    }, delay);
    if (delay <= 2000) begun.add(timer);
    return timer;
  };
  window.clearTimeout = (timer) => {
    begun.delete(timer);
    clearTimeout(timer);
  };
  for (const name of ["open", "deleteDatabase"]) {
    const begin = IDBFactory.prototype[name];
    IDBFactory.prototype[name] = function (...what) {
      const request = begin.apply(this, what);
      window.timesAsked++;
      if (request instanceof IDBRequest) {
        begun.add(request);
        request.addEventListener("error", () => begun.delete(request));
        request.addEventListener("success", () => {
          if (name === "open") begun.add(request.result);
          begun.delete(request);
        });
      }
      return request;
    };
  }
  const { close } = IDBDatabase.prototype;
  IDBDatabase.prototype.close = function () {
    close.call(this);
    begun.delete(this);
  };
}

/** Until the page has nothing to do any more: what it was to write is written. */
async function written(page) {
  for (let quiet = 0; quiet < 3; ++quiet) {
    await page.waitForFunction(() => window.workBegun.size === 0);
    await drawn(page);
  }
}

async function reload(page, address) {
  await page.goto(address ?? (await servedPage()));
  await page.getByRole("heading", { name: "Your child", exact: true }).waitFor();
  await written(page);
}

async function anotherTab(page) {
  const tab = await page.context().newPage();
  await tab.clock.setFixedTime(new Date(now));
  await reload(tab);
  return tab;
}

/** Every trace on the device that a page can leave by itself. */
function traces(page) {
  return page.evaluate(async () => ({
    databases: (await indexedDB.databases()).map(({ name }) => name),
    local: localStorage.length,
    session: sessionStorage.length,
    cookies: document.cookie,
  }));
}

const noTraces = { databases: [], local: 0, session: 0, cookies: "" };

/** Reads the record, or puts another value in its place. */
function record(page, replacement) {
  return page.evaluate(
    (replacement) =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open("saddlerule");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const transaction = database.transaction("kept", "readwrite");
          const kept = transaction.objectStore("kept");
          const found = kept.get("record");
          found.onsuccess = () => {
            if (replacement !== undefined) kept.put({ ...found.result, value: replacement }, "record");
          };
          transaction.oncomplete = () => {
            database.close();
            resolve(found.result);
          };
        };
      }),
    replacement,
  );
}

/** The lists in the record: { file name: its text, the key that its bytes have, and how many edits came since }. */
function storedLists(page) {
  return page.evaluate(
    () =>
      new Promise((resolve) => {
        indexedDB.open("saddlerule").onsuccess = ({ target: { result: database } }) => {
          const transaction = database.transaction("kept");
          const kept = transaction.objectStore("kept");
          const lists = {};
          kept.get("lists").onsuccess = ({ target }) => {
            for (const { name, bytes: key, edits } of target.result)
              kept.get(key).onsuccess = ({ target }) =>
                (lists[name] = {
                  text: new TextDecoder().decode(target.result),
                  key,
                  changes: edits.flat().length,
                });
          };
          const keys = kept.getAllKeys();
          transaction.oncomplete = () => {
            database.close();
            resolve({ lists, keys: keys.result });
          };
        };
      }),
  );
}

test("nothing is stored before somebody asks for it, however much is typed", async () => {
  const { page, faults, close } = await openAt();
  await page.getByRole("button", { name: "Add a child" }).click();
  await typeInseam(page, "58");
  await goTo(page, "Save");
  await page.getByText("Off: everything is lost when you close this page.").waitFor();
  await page.getByText(/So can other pages of this website\./).waitFor();
  await written(page);
  assert.deepEqual(await traces(page), noTraces);
  await reload(page);
  assert.equal(await inseamOn(page), "");
  assert.deepEqual(await traces(page), noTraces);
  assert.deepEqual(faults, []);
  await close();
});

test("switched on, riders, readings, wishes and taped bikes survive the page; switched off, they are deleted", async () => {
  const { page, faults, close } = await openAt();
  await page.getByRole("radio", { name: "Rides well" }).check();
  await goTo(page, "Measure");
  await page.getByRole("textbox", { name: "Saddle at its lowest" }).fill("50");
  await page.getByRole("textbox", { name: "Saddle at its highest" }).fill("64");
  await page.getByRole("button", { name: "Add it to the bikes" }).click();
  await keepOnDevice(page);
  // What is typed from now on is kept as well.
  await goTo(page, "Your child");
  await page.getByRole("button", { name: "Add a child" }).click();
  await page.getByRole("textbox", { name: "Name or nickname" }).fill("Wim");
  await typeInseam(page, "58");
  await goTo(page, "Bikes");
  await page.getByText("Filter and sort").click();
  await page.getByRole("textbox", { name: "Price up to" }).fill("90");
  await written(page);

  await reload(page);
  assert.equal(await inseamOn(page), "58");
  await page.getByRole("radio", { name: "Child 1" }).check();
  assert.equal(await inseamOn(page), "49.5");
  assert.ok(await page.getByRole("radio", { name: "Rides well" }).isChecked());
  await goTo(page, "Bikes");
  const rack = page.getByRole("list", { name: "Bikes, best first" });
  await rack.getByRole("heading", { name: "Measured bike 1" }).waitFor();
  await page.getByText("Filter and sort").click();
  assert.equal(await page.getByRole("textbox", { name: "Price up to" }).inputValue(), "");
  await page.getByRole("radio", { name: "Wim" }).check();
  assert.equal(await page.getByRole("textbox", { name: "Price up to" }).inputValue(), "90");

  await keepOnDevice(page, false);
  await written(page);
  assert.deepEqual(await traces(page), noTraces);
  await goTo(page, "Your child");
  assert.equal(await inseamOn(page), "58", "what is on the page stays there");
  await reload(page);
  assert.equal(await inseamOn(page), "");
  assert.deepEqual(faults, []);
  await close();
});

test("open lists are kept as they are, byte by byte, and the one on the rack hangs there again", async () => {
  const { page, faults, close } = await openAt();
  await openList(page, sample("swap-morning.json"));
  await page.getByRole("heading", { name: "Swap morning" }).first().waitFor();
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("heading", { name: "Loan shed, autumn list" }).first().waitFor();
  await keepOnDevice(page);
  await reload(page);
  await goTo(page, "Bikes");
  const rack = page.getByRole("list", { name: "Bikes, best first" });
  await rack
    .getByRole("article")
    .first()
    .getByText(/Loan \d\d/)
    .waitFor();
  const { lists } = await storedLists(page);
  for (const name of ["swap-morning.json", "loan-shed.json"])
    assert.equal(lists[name].text, readFileSync(sample(name), "utf8"));
  await keepOnDevice(page, false);
  await written(page);
  assert.deepEqual(await traces(page), noTraces);
  assert.deepEqual(faults, []);
  await close();
});

async function addBike(page, name) {
  await goTo(page, "List");
  await page.getByRole("button", { name: "Add a bike", exact: true }).click();
  await page.getByRole("textbox", { name: "Name", exact: true }).fill(name);
  await page.getByRole("textbox", { name: "Saddle at its lowest (cm)", exact: true }).fill("48,5");
  await page.getByRole("button", { name: "Save this bike", exact: true }).click();
  await page.getByText(`Added ${name}.`).waitFor();
  await written(page);
}

test("what is changed in an open list is kept with it, and no list is written again for it", async () => {
  const { page, faults, close } = await openAt();
  await openList(page, sample("swap-morning.json"));
  await page.getByRole("heading", { name: "Swap morning" }).first().waitFor();
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("heading", { name: "Loan shed, autumn list" }).first().waitFor();
  await keepOnDevice(page);
  const before = await storedLists(page);
  await addBike(page, "Shed find, 16 in");
  const after = await storedLists(page);
  assert.deepEqual(after.keys, before.keys);
  assert.equal(after.lists["loan-shed.json"].changes, 1);
  assert.equal(after.lists["loan-shed.json"].text, readFileSync(sample("loan-shed.json"), "utf8"));

  await reload(page);
  await goTo(page, "List");
  await page.getByText("41 bikes").first().waitFor();
  await addBike(page, "Attic find, 20 in");
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await page.getByText("41 bikes").first().waitFor();
  await addBike(page, "Cellar find, 20 in");
  assert.deepEqual((await storedLists(page)).keys, before.keys, "nor after it was opened again");
  await reload(page);
  await goTo(page, "List");
  await page.getByText("42 bikes").first().waitFor();
  for (const name of ["Shed find, 16 in", "Cellar find, 20 in"]) {
    await page.getByRole("textbox", { name: "Find a bike" }).fill(name);
    await page.getByRole("button", { name }).first().waitFor();
  }
  assert.deepEqual(faults, []);
  await close();
});

test("a list with changes that are in no file of its own is marked so after the page was left, until it is saved", async () => {
  const { page, faults, close } = await openAt();
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("heading", { name: "Loan shed, autumn list" }).first().waitFor();
  await keepOnDevice(page);
  await addBike(page, "Shed find, 16 in");
  const mark = page.locator(".screen.list").getByText("not saved", { exact: true });
  await mark.first().waitFor();
  for (let visit = 0; visit < 2; ++visit) {
    await reload(page);
    await goTo(page, "List");
    await mark.first().waitFor();
  }
  await saved(page);
  await mark.waitFor({ state: "detached" });
  await written(page);
  await reload(page);
  await goTo(page, "List");
  await page.getByText("41 bikes").first().waitFor();
  assert.equal(await mark.count(), 0);
  assert.deepEqual(faults, []);
  await close();
});

test("a list that is closed leaves nothing on the device", async () => {
  const { page, faults, close } = await openAt();
  await openList(page, sample("loan-shed.json"));
  await page.getByRole("heading", { name: "Loan shed, autumn list" }).first().waitFor();
  await keepOnDevice(page);
  const before = await storedLists(page);
  await openList(page, sample("swap-morning.json"));
  await page.getByRole("heading", { name: "Swap morning" }).first().waitFor();
  await written(page);
  const both = await storedLists(page);
  assert.equal(both.keys.length, before.keys.length + 1);
  await page.getByRole("button", { name: "Close Swap morning" }).click();
  await written(page);
  const { keys } = await storedLists(page);
  assert.deepEqual(keys, before.keys);
  assert.deepEqual(faults, []);
  await close();
});

test("a reading of another day is an earlier one, and there is room for one of today", async () => {
  const { page, close } = await openAt();
  await keepOnDevice(page);
  await page.clock.setFixedTime(new Date("2027-03-01T10:00:00"));
  await reload(page);
  assert.equal(await inseamOn(page), "");
  await page.getByText("Earlier measurements").click();
  assert.equal(await page.getByRole("textbox", { name: "Inside leg (cm)" }).inputValue(), "49.5");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  await close();
});

test("one button says what it wipes, asks once, and leaves no trace", async () => {
  const { page, faults, close } = await openAt();
  await page.getByRole("button", { name: "Add a child" }).click();
  await keepOnDevice(page);
  await page
    .getByText(/This deletes: what you entered for 2 children and what this browser has saved/)
    .waitFor();
  await page.getByRole("button", { name: "Delete everything" }).click();
  await page.getByRole("button", { name: "No, delete nothing" }).click();
  await page.getByRole("button", { name: "Delete everything" }).click();
  await page.getByRole("button", { name: "Yes, delete everything" }).click();
  await page.getByText("Everything is deleted.").waitFor();
  await written(page);
  assert.deepEqual(await traces(page), noTraces);
  await goTo(page, "Your child");
  assert.equal(await inseamOn(page), "");
  assert.equal(await page.getByRole("radio", { name: "Child 2" }).count(), 0);
  await typeInseam(page, "52");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  await written(page);
  assert.deepEqual(await traces(page), noTraces);
  assert.deepEqual(faults, []);
  await close();
});

const unreadable = {
  "is damaged": [{ version: 1, riders: "none" }, /cannot be read\. It is left as it is/],
  "is no record at all": ["nonsense", /cannot be read\. It is left as it is/],
  "was kept by a newer page": [{ version: 3, brood: [] }, /A newer Saddlerule saved something/],
};

for (const [what, [value, sentence]] of Object.entries(unreadable)) {
  test(`a record that ${what} costs a sentence, and is not written over unasked`, async () => {
    const { page, faults, close } = await openAt();
    await keepOnDevice(page);
    await record(page, value);
    await reload(page);
    await page.getByRole("alert").getByText(sentence).waitFor();
    await typeInseam(page, "60");
    await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
    await written(page);
    assert.deepEqual((await record(page)).value, value);

    await page.getByRole("button", { name: "Go to “Save and print”" }).click();
    await page.getByRole("button", { name: "Use what you see here" }).click();
    await page.getByText("Saved as you type.").waitFor();
    await reload(page);
    assert.equal(await inseamOn(page), "60");
    assert.deepEqual(faults, []);
    await close();
  });
}

test("a full device costs a sentence, keeps what it had, and is tried again", async () => {
  const { page, faults, close } = await openAt();
  await keepOnDevice(page);
  const before = await record(page);
  await page.evaluate(() => {
    // As the standard has it: what finds no room takes its whole transaction with it.
    const { put } = IDBObjectStore.prototype;
    const error = Object.getOwnPropertyDescriptor(IDBTransaction.prototype, "error");
    IDBObjectStore.prototype.put = function () {
      this.transaction.abort();
    };
    Object.defineProperty(IDBTransaction.prototype, "error", {
      configurable: true,
      get: () => new DOMException("no room", "QuotaExceededError"),
    });
    window.makeRoom = () => {
      IDBObjectStore.prototype.put = put;
      Object.defineProperty(IDBTransaction.prototype, "error", error);
    };
  });
  await goTo(page, "Your child");
  await typeInseam(page, "60");
  await page
    .getByRole("alert")
    .getByText(/This device is full/)
    .waitFor();
  assert.deepEqual(await record(page), before);
  await page.evaluate(() => window.makeRoom());
  await typeInseam(page, "61");
  await page
    .getByRole("alert")
    .getByText(/This device is full/)
    .waitFor({ state: "hidden" });
  await written(page);
  await reload(page);
  assert.equal(await inseamOn(page), "61");
  assert.deepEqual(faults, []);
  await close();
});

const refusals = {
  "has no place for pages": [
    () => Object.defineProperty(window, "indexedDB", { value: undefined }),
    /does not let pages save anything/,
  ],
  "refuses, as private windows do": [
    () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException("not here", "SecurityError");
      };
    },
    /lets the page save nothing/,
  ],
  "never answers": [
    () => {
      IDBFactory.prototype.open = () => ({});
    },
    /lets the page save nothing/,
  ],
};

for (const [what, [stub, sentence]] of Object.entries(refusals)) {
  test(`a browser that ${what} costs a sentence, and only when somebody asks`, async () => {
    const { page, faults, close } = await openAt({ inseam: null });
    await page.context().addInitScript(stub);
    await reload(page);
    assert.equal(await page.getByRole("alert").getByText(/save/).count(), 0);
    await goTo(page, "Save");
    await page.getByRole("checkbox", { name: "Save on this device" }).click();
    await page.getByText(sentence).waitFor();
    await goTo(page, "Your child");
    await typeInseam(page, "49.5");
    await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
    assert.deepEqual(faults, []);
    await close();
  });
}

test("of two tabs the one that somebody comes back to follows the other", async () => {
  const { page, close } = await openAt();
  await keepOnDevice(page);
  const tab = await anotherTab(page);
  assert.equal(await inseamOn(tab), "49.5");
  await typeInseam(tab, "60");
  await written(tab);
  await goTo(page, "Your child");
  await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
  await written(page);
  assert.equal(await inseamOn(page), "60");
  await close();
});

test("two tabs that are typed in at once keep apart until somebody chooses", async () => {
  const { page, faults, close } = await openAt();
  await keepOnDevice(page);
  const tab = await anotherTab(page);
  await typeInseam(tab, "60");
  await written(tab);
  await goTo(page, "Your child");
  await typeInseam(page, "70");
  await page
    .getByRole("alert")
    .getByText(/another tab or window may have changed it/)
    .waitFor();
  assert.equal(await inseamOn(page), "70");
  assert.match(JSON.stringify((await record(page)).value), /"60"/);

  await page.getByRole("button", { name: "Go to “Save and print”" }).click();
  await page.getByRole("button", { name: "Use what is saved on this device" }).click();
  await page.getByText("Saved as you type.").waitFor();
  await goTo(page, "Your child");
  assert.equal(await inseamOn(page), "60");

  await typeInseam(page, "71");
  await written(page);
  await typeInseam(tab, "62");
  await tab.getByRole("button", { name: "Go to “Save and print”" }).click();
  await tab.getByRole("button", { name: "Use what you see here" }).click();
  await tab.getByText("Saved as you type.").waitFor();
  await reload(tab);
  assert.equal(await inseamOn(tab), "62");
  assert.deepEqual(faults, []);
  await close();
});

test("what was switched off in one tab is not brought back by another", async () => {
  const { page, close } = await openAt();
  await keepOnDevice(page);
  const tab = await anotherTab(page);
  await keepOnDevice(page, false);
  await written(page);
  await typeInseam(tab, "60");
  await tab
    .getByRole("alert")
    .getByText(/Saving was turned off in another tab/)
    .waitFor();
  await written(tab);
  assert.deepEqual(await traces(tab), noTraces);
  assert.equal(await inseamOn(tab), "60");
  await close();
});

test("what was typed a moment ago is kept when the page is left", async () => {
  const { page, close } = await openAt();
  await keepOnDevice(page);
  await goTo(page, "Your child");
  await typeInseam(page, "63");
  // Within a frame no timer that waits for the end of a word has run.
  const asked = await page.evaluate(async () => {
    const before = window.timesAsked;
    dispatchEvent(new Event("pagehide"));
    await new Promise(requestAnimationFrame);
    return window.timesAsked - before;
  });
  assert.equal(asked, 1);
  await written(page);
  await reload(page);
  assert.equal(await inseamOn(page), "63");
  await close();
});

/** Puts a record on the device as it was kept where this page comes from another place. */
function leaveRecord(page, kept) {
  return page.evaluate(
    (kept) =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open("saddlerule", 1);
        opening.onupgradeneeded = () => opening.result.createObjectStore("kept");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const transaction = database.transaction("kept", "readwrite");
          for (const [key, value] of kept) transaction.objectStore("kept").put(value, key);
          transaction.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      }),
    kept,
  );
}

/** All of it, with bytes left out. */
async function recordLeft({ value = (kept) => kept } = {}) {
  const { page, close } = await openAt();
  await keepOnDevice(page);
  const kept = await record(page);
  await close();
  return [
    ["record", { ...kept, value: value(kept.value) }],
    ["lists", []],
  ];
}

async function saveToFile(page) {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save everything to a file" }).click(),
  ]);
  return readFileSync(await download.path(), "utf8");
}

test("a page from a file says why it saves nothing there, and leaves no trace", async () => {
  const { page, faults, close } = await openAt({ served: false });
  await goTo(page, "Save");
  await page.getByText(/^You opened this page from a file, so nothing is saved on this device/).waitFor();
  assert.equal(await page.getByRole("checkbox", { name: "Save on this device" }).count(), 0);
  await page.evaluate(() => dispatchEvent(new Event("pagehide")));
  await written(page);
  assert.deepEqual(await traces(page), noTraces);
  assert.deepEqual(faults, []);
  await close();
});

test("what an earlier version saved where other files read it is shown, saved to a file and deleted", async () => {
  const kept = await recordLeft();
  const { page, faults, close } = await openAt({ served: false, inseam: null });
  await leaveRecord(page, kept);
  await reload(page, pageAddress);
  assert.equal(await inseamOn(page), "49.5");
  await page
    .getByRole("alert")
    .getByText(/An older Saddlerule saved this in the browser/)
    .waitFor();
  await typeInseam(page, "51");
  await written(page);
  assert.deepEqual((await record(page)).value, kept[0][1].value, "nothing more is put there");

  await page.getByRole("button", { name: "Go to “Save and print”" }).click();
  const deleting = page.getByRole("button", { name: "The file is there: delete it from the browser" });
  assert.equal(await deleting.count(), 0, "nothing is deleted before it is in a file");
  assert.match(await saveToFile(page), /"text": "51"/);
  await deleting.click();
  await page.getByRole("alert").getByText(/older/).waitFor({ state: "detached" });
  await written(page);
  assert.deepEqual(await traces(page), noTraces);
  await goTo(page, "Your child");
  assert.equal(await inseamOn(page), "51");
  await reload(page, pageAddress);
  assert.equal(await inseamOn(page), "");
  assert.deepEqual(faults, []);
  await close();
});

test("“Delete everything” deletes what an earlier version left, readable or not", async () => {
  for (const value of [(kept) => kept, () => "nonsense"]) {
    const kept = await recordLeft({ value });
    const { page, faults, close } = await openAt({ served: false, inseam: null });
    await leaveRecord(page, kept);
    await reload(page, pageAddress);
    await goTo(page, "Save");
    await page.getByText(/and what this browser has saved for Saddlerule/).waitFor();
    await page.getByRole("button", { name: "Delete everything" }).click();
    await page.getByRole("button", { name: "Yes, delete everything" }).click();
    await page.getByText("Everything is deleted.").waitFor();
    assert.deepEqual(await traces(page), noTraces);
    assert.equal(await page.getByRole("alert").getByText(/./).count(), 0);
    assert.deepEqual(faults, []);
    await close();
  }
});

test("another page that goes on using what is saved keeps it from being deleted, and the page says so until it is", async () => {
  const { page, faults, close } = await openAt();
  await keepOnDevice(page);
  const tab = await anotherTab(page);
  await tab.evaluate(
    () =>
      new Promise((resolve) => {
        indexedDB.open("saddlerule").onsuccess = ({ target }) => resolve(void (window.held = target.result));
      }),
  );
  await page.getByRole("button", { name: "Delete everything" }).click();
  await page.getByRole("button", { name: "Yes, delete everything" }).click();
  await page
    .getByRole("alert")
    .getByText(/still uses what is saved here/)
    .first()
    .waitFor();
  assert.equal(await page.getByText("Everything is deleted.").count(), 0);
  await tab.evaluate(() => window.held.close());
  await page.getByRole("button", { name: "Delete everything" }).click();
  await page.getByRole("button", { name: "Yes, delete everything" }).click();
  await page.getByText("Everything is deleted.").waitFor();
  assert.deepEqual(await traces(page), noTraces);
  assert.deepEqual(faults, []);
  await close();
});
