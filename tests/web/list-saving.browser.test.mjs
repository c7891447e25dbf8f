// Saving a list: both forms open again as the same list, into the same file where the browser allows it, and nothing unsaved is
// lost in silence.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test, { after, before } from "node:test";
import { openBuiltEngine, sample } from "../support/built-engine.mjs";
import { eventually } from "../support/eventually.mjs";
import { choice, entry, field, fileFolder, jsonList, openDesk, press, saved } from "../support/list-desk.mjs";
import { goTo, launchBrowser, openList, screens } from "../support/open-page.mjs";

const folder = fileFolder();
let browser;
before(async () => (browser = await launchBrowser()));
after(async () => {
  await browser.close();
  folder.done();
});

/** Every entry of a list as the engine holds it. */
async function cellsOf(bytes) {
  const engine = await openBuiltEngine();
  engine.ask({ do: "load" }, typeof bytes === "string" ? new TextEncoder().encode(bytes) : bytes);
  const { counts } = engine.ask({ do: "list", rows: { from: 0, count: 0 } });
  return Array.from(
    { length: counts.entries },
    (_, place) => engine.ask({ do: "entry", number: place + 1 }).cells,
  );
}

const bikes = [
  {
    id: "L07",
    name: "Loan 07",
    saddle_lowest: 49.5,
    saddle_highest: 63,
    brakes: ["front hand", "rear hand"],
    shelf: "3b",
  },
  {
    id: "L08",
    name: '=Loan; "08"',
    saddle_lowest: "17 1/2 in",
    available: false,
  },
  { id: "L09", name: "Loan 09", saddle_lowest: "forty" },
];
const shed = folder.file("shed.json", jsonList(bikes));

for (const { what, separator, decimal } of [
  { what: "comma", separator: ",", decimal: "49.5" },
  { what: "semicolon (decimal comma)", separator: ";", decimal: "49,5" },
  { what: "tab", separator: "\t", decimal: "49.5" },
]) {
  test(`a table with ${what} between its columns opens again as the same list`, async () => {
    const { page, faults, close } = await openDesk(browser, screens.phone, [shed]);
    const { name, text } = await saved(page, {
      form: "Spreadsheet (CSV)",
      separator: what,
    });
    assert.equal(name, "shed.csv");
    assert.ok(text.includes(`L07${separator}`) && text.includes(decimal), text);
    assert.deepEqual(await cellsOf(text), await cellsOf(JSON.stringify({ units: "cm", bikes })));
    await openList(page, folder.file("again.csv", text));
    await entry(page, '=Loan; "08"').waitFor();
    await page.getByRole("heading", { name: "1 bike left out" }).waitFor();
    assert.deepEqual(faults, []);
    await close();
  });
}

test("JSON of a list that nobody changed is the list that was opened", async () => {
  const { page, close } = await openDesk(browser, screens.phone, [sample("loan-shed.json")]);
  const { name, text } = await saved(page);
  assert.equal(name, "loan-shed.json");
  assert.deepEqual(await cellsOf(text), await cellsOf(readFileSync(sample("loan-shed.json"))));
  await close();
});

test("what was set aside is saved alone, and the list stays unsaved", async () => {
  const { page, close } = await openDesk(browser, screens.phone, [shed]);
  await entry(page, "Loan 07").getByRole("button").first().click();
  await field(page, "Price").fill("90");
  await press(page, "Save this bike");
  await press(page, "Save list");
  await choice(page, "Include").selectOption({
    label: "Only those left out (1)",
  });
  const button = page.getByRole("button", { name: "Save list", exact: true });
  await eventually(async () => assert.equal(await button.getAttribute("aria-disabled"), "false"));
  const [download] = await Promise.all([page.waitForEvent("download"), button.click()]);
  assert.equal(download.suggestedFilename(), "shed-set-aside.json");
  await press(page, "Back to the list");
  await page.getByText("not saved").waitFor();
  await saved(page);
  assert.equal(await page.getByText("not saved").count(), 0);
  await close();
});

test("what cannot go into a table is said before it is saved", async () => {
  const list = folder.file("odd.json", jsonList([...bikes, 42]));
  const { page, close } = await openDesk(browser, screens.phone, [list]);
  await press(page, "Save list");
  await page.getByRole("radio", { name: "Spreadsheet (CSV)" }).check();
  await page.getByText("1 of 4 cannot go into a table and would be left out:").waitFor();
  await page.getByRole("radio", { name: "Saddlerule (JSON)" }).check();
  await page.getByText("cannot go into a table").waitFor({ state: "detached" });
  await close();
});

/** Stand-ins for the browser's pickers: files of the page's own memory. */
function fakePickers() {
  const made = (name, text) => ({
    name,
    text,
    getFile: async () => new File([text], name),
    async createWritable() {
      let written = "";
      return {
        write: async (data) => void (written += data),
        close: async () => {
          this.text = written;
          this.writes = (this.writes ?? 0) + 1;
        },
      };
    },
  });
  window.files = {};
  window.showOpenFilePicker = async () => [
    (window.files.opened = made(
      "hall.json",
      '{"units":"cm","title":"Hall","bikes":[{"id":"A1","saddle_lowest":48}]}',
    )),
  ];
  window.showSaveFilePicker = async ({ suggestedName }) => {
    if (window.refuse) throw new DOMException("changed their mind", "AbortError");
    return (window.files.saved = made(suggestedName, ""));
  };
}

test("where the browser lets a page keep the file, the list is saved back into it", async () => {
  const { page, faults, close } = await openDesk(browser, screens.phone, [], {
    pickers: fakePickers,
  });
  await page.getByRole("button", { name: /^Open a list/ }).click();
  await entry(page, "A1").getByRole("button").first().click();
  await field(page, "Saddle at its highest (cm)").fill("61,5");
  await press(page, "Save this bike");
  await page.getByText("not saved").waitFor();
  await press(page, "Save list");
  await press(page, "Save to hall.json");
  await page.getByText("Saved as hall.json.").waitFor();
  const { text, writes } = await page.evaluate(() => window.files.opened);
  assert.equal(writes, 1);
  assert.equal(JSON.parse(text).bikes[0].saddle_highest, 61.5);
  await press(page, "Back to the list");
  assert.equal(await page.getByText("not saved").count(), 0);
  // As another form it is a new file; who thinks better of it loses nothing.
  await press(page, "Save list");
  await page.getByRole("radio", { name: "Spreadsheet (CSV)" }).check();
  const button = page.getByRole("button", { name: "Save list", exact: true });
  await eventually(async () => assert.equal(await button.getAttribute("aria-disabled"), "false"));
  await page.evaluate(() => (window.refuse = true));
  await button.click();
  assert.equal(await page.evaluate(() => window.files.saved), undefined);
  await page.evaluate(() => (window.refuse = false));
  await button.click();
  await page.getByText("Saved as hall.csv.").waitFor();
  assert.match(await page.evaluate(() => window.files.saved.text), /A1/);
  assert.deepEqual(faults, []);
  await close();
});

test("where the browser has pickers and the page may not use them, files come and go in the old way", async () => {
  const forbidden = () => {
    const refuse = async () => {
      throw new DOMException("not inside a stranger's page", "SecurityError");
    };
    window.showOpenFilePicker = refuse;
    window.showSaveFilePicker = refuse;
  };
  const { page, close } = await openDesk(browser, screens.phone, [shed], {
    pickers: forbidden,
  });
  await entry(page, "Loan 07").waitFor();
  const { name, text } = await saved(page);
  assert.equal(name, "shed.json");
  assert.deepEqual(JSON.parse(text).bikes, bikes);
  await close();
});

test("a page with something unsaved asks before it is left, and one without does not", async () => {
  const { page, close } = await openDesk(browser, screens.phone, [shed]);
  const asks = () =>
    page.evaluate(() => {
      const event = new Event("beforeunload", { cancelable: true });
      dispatchEvent(event);
      return event.defaultPrevented;
    });
  assert.equal(await asks(), false);
  await entry(page, "Loan 07").getByRole("button").first().click();
  assert.equal(await asks(), false);
  await field(page, "Notes").fill("bell missing");
  await eventually(async () => assert.equal(await asks(), true, "typed and not put in the list"));
  await press(page, "Save this bike");
  await eventually(async () => assert.equal(await asks(), true));
  await saved(page);
  await eventually(async () => assert.equal(await asks(), false));
  await press(page, "Undo");
  await eventually(async () => assert.equal(await asks(), true, "not as it was saved"));
  await press(page, "Redo");
  await eventually(async () => assert.equal(await asks(), false));
  await goTo(page, "Bikes");
  await close();
});
