// Keep: the card on paper and as a message, the whole rack on paper, and everything in one file and back.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { execFileSync } from "node:child_process";
import test, { after, before } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { goTo, launchBrowser, openList, openPage, screens, shownText } from "../support/open-page.mjs";

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

const now = "2026-11-25T10:00:00";
const rackOf = (page) => page.getByRole("list", { name: "Bikes, best first" });
const inseam = (page) => page.getByRole("textbox", { name: "Inside leg" });

async function openRack(options = {}) {
  const opened = await openPage(browser, options.viewport ?? screens.phone, {
    now,
  });
  const { page } = opened;
  if (options.before) {
    await page.context().addInitScript(options.before);
    await page.reload();
  }
  await page.getByRole("radio", { name: "centimetres" }).check();
  await inseam(page).fill("49.5");
  await page.getByText("47 to 50.5 cm", { exact: true }).waitFor();
  await openList(page, sample("loan-shed.json"));
  await goTo(page, "Bikes");
  await rackOf(page).getByRole("article").first().waitFor();
  return opened;
}

/** The card of the bike that comes first. */
async function openCard(options) {
  const opened = await openRack(options);
  const { page } = opened;
  const first = rackOf(page).getByRole("article").first();
  const name = await first.getByRole("heading").textContent();
  const bike = `${await first.locator(".tag-number").textContent()} ${name}`;
  await first.getByRole("button").first().click();
  await page.getByRole("button", { name: "Card for the fridge" }).click();
  await page.getByRole("article", { name: "Saddle card" }).waitFor();
  return { ...opened, bike };
}

/** Pages of a PDF, by its own page objects. */
const pagesOf = (pdf) => pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g).length;

const plain = (text) => text.replaceAll("\u00a0", " ");

test("the card prints alone on one sheet of A5 or A4, with setting, days to raise it and cautions", async () => {
  for (const viewport of Object.values(screens)) {
    const { page, bike, faults, close } = await openCard({ viewport });
    const margin = { top: "10mm", bottom: "10mm", left: "10mm", right: "10mm" };
    for (const format of ["A5", "A4"]) {
      assert.equal(pagesOf(await page.pdf({ format, margin })), 1, format);
    }
    await page.emulateMedia({ media: "print" });
    const said = plain(await shownText(page));
    assert.ok(said.includes(bike));
    assert.match(said, /Saddle at 49\.5 cm/);
    assert.match(said, /As of 25 November 2026/);
    assert.match(
      said,
      /When to move the saddle\s+Measure again before each step\.\s+About \w+ 202\d: \d+(\.5)? cm/,
    );
    assert.match(said, /Too small from about \w+ 20\d\d/);
    assert.match(said, /Helmet on, every ride\./);
    assert.match(
      said,
      /Never pull the seat post up past its minimum-insertion mark \(MIN or MAX\)\. The mark must stay inside the frame\./,
    );
    assert.doesNotMatch(said, /Child 1|Inside leg|Print the card|Measure a bike|Filter/);
    assert.deepEqual(faults, []);
    await close();
  }
});

test("the card bears a name only if one is wanted", async () => {
  const { page, bike, close } = await openCard();
  const card = page.getByRole("article", { name: "Saddle card" });
  assert.equal(await card.getByRole("heading", { level: 3 }).first().textContent(), bike);
  await page.getByRole("checkbox", { name: "Put the name on it" }).check();
  await page.getByRole("textbox", { name: "Name or nickname" }).fill("Wim");
  await card.getByRole("heading", { name: `Wim: ${bike}` }).waitFor();
  await close();
});

test("the card goes to the device's share sheet as plain text", async () => {
  const { page, bike, faults, close } = await openCard({
    before: () => {
      window.shared = [];
      navigator.share = (what) => {
        window.shared.push(what);
        return window.shared.length === 2
          ? Promise.reject(new DOMException("", "AbortError"))
          : Promise.resolve();
      };
    },
  });
  await page.getByRole("button", { name: "Share as text" }).click();
  await page.getByRole("button", { name: "Share as text" }).click();
  const [{ title, text }] = await page.evaluate(() => window.shared);
  assert.equal(title, "Saddle card");
  const lines = text.split("\n");
  assert.equal(lines[0], bike);
  assert.equal(lines[1], "Saddle height fits. As of 25 November 2026.");
  assert.equal(lines[2], "For a child who rides without training wheels, still new to it.");
  assert.match(lines[3], /^Saddle at 49\.5 cm: /);
  assert.ok(lines.includes("When to move the saddle:"));
  assert.ok(lines.includes("- Helmet on, every ride."));
  assert.doesNotMatch(text, /\u00a0|Rider 1/);
  // Thinking better of it is no fault.
  assert.equal(await page.getByText("Copy this text by hand:").count(), 0);
  assert.deepEqual(faults, []);
  await close();
});

test("without a share sheet the text is copied, and without a clipboard it is shown", async () => {
  const { page, close } = await openCard({
    before: () => {
      delete Navigator.prototype.share;
      const clipboard = {
        writeText: (text) => Promise.resolve(void (window.copied = text)),
      };
      Object.defineProperty(navigator, "clipboard", {
        get: () => window.clipboardHere && clipboard,
      });
    },
  });
  await page.getByRole("button", { name: "Copy as text" }).click();
  await page.getByText("Copy this text by hand:").waitFor();
  assert.match(await page.locator("pre").textContent(), /Helmet on, every ride/);
  await page.evaluate(() => (window.clipboardHere = true));
  await page.getByRole("button", { name: "Copy as text" }).click();
  await page.getByText("Copied. Paste it into a message.").waitFor();
  assert.match(plain(await page.evaluate(() => window.copied)), /Saddle at 49\.5 cm/);
  await close();
});

/** Waits until somebody has pressed to print; then the paper is in the page. */
const whenPrinted = async (page) => {
  await page.evaluate(() => (window.print = () => (window.printed = true)));
  await page.getByText("Filter and sort").click();
  await page.getByRole("button", { name: /^Print these/ }).click();
  await page.waitForFunction(() => window.printed);
  await page.emulateMedia({ media: "print" });
};

test("the rack prints as one table: a line for each bike, the forty of a shed on two sheets, the scale on both", async () => {
  const { page, faults, close } = await openRack();
  await whenPrinted(page);
  const table = page.getByRole("table");
  const head = await table.getByRole("columnheader").allTextContents();
  assert.deepEqual([head[0], ...head.slice(2)], ["Bikes", "Saddle", "How long it fits", "Price"]);
  const lines = await table.locator("tbody tr:not(.paper-group)").all();
  const first = plain(await lines[0].textContent());
  assert.match(first, /^L\d\d Loan \d\d/);
  assert.match(first, /49\.5 cm/);
  const groups = (await table.locator(".paper-group").allTextContents()).map(plain);
  const counted = groups.reduce((sum, text) => sum + Number(/(\d+) bikes?$/.exec(text)[1]), 0);
  assert.equal(lines.length, counted);
  assert.ok(counted >= 40, "as many as a shed has");
  const paper = await page.pdf({ format: "A4", preferCSSPageSize: true });
  assert.ok(pagesOf(paper) <= 2, `${pagesOf(paper)} sheets`);
  const texts = execFileSync("pdftotext", ["-layout", "-", "-"], { input: paper, encoding: "utf8" }).split(
    "\f",
  );
  for (const sheet of texts.filter((text) => text.trim() !== "")) assert.match(sheet, /40 +60 +80/);
  assert.deepEqual(faults, []);
  await close();
});

test("printing the rack prints every bike that matches, and then few are in the page again", async () => {
  const { page, faults, close } = await openRack();
  await page.evaluate(() => {
    window.print = () => {
      const { shadowRoot } = document.querySelector("main");
      window.printed = [...shadowRoot.querySelectorAll(".paper-table .bike-name")].map(
        (name) => name.textContent,
      );
    };
  });
  await page.getByText("Filter and sort").click();
  await page.getByRole("textbox", { name: "Price up to" }).fill("120");
  await page.getByText(/hidden by your filters/).waitFor();
  const number = Number(
    /\d+/.exec(await page.getByRole("button", { name: /^Print these/ }).textContent())[0],
  );
  await page.getByRole("button", { name: /^Print these/ }).click();
  await page.waitForFunction(() => window.printed !== undefined);
  const printed = await page.evaluate(() => window.printed);
  assert.ok(number > 10);
  assert.equal(new Set(printed).size, number);
  await page.emulateMedia({ media: "print" });
  const said = plain(await shownText(page));
  for (const bike of printed) assert.ok(said.includes(bike), bike);
  assert.match(
    said,
    /Loan shed, autumn list\. As of 25 November 2026\. Inside leg: 49\.5 cm\. Saddle height to look for: 47 to 50\.5 cm\./,
  );
  assert.doesNotMatch(said, /Filter and sort|The first \d+ of/);
  await page.emulateMedia({ media: "screen" });
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await page.getByRole("table").waitFor({ state: "detached" });
  assert.deepEqual(faults, []);
  await close();
});

test("where nothing prints and nothing says so, the next press makes an end of printing; a rack without bikes has no print", async () => {
  const { page, faults, close } = await openRack();
  await page.evaluate(() => {
    window.print = () => {};
  });
  await page.getByText("Filter and sort").click();
  await page.getByRole("button", { name: /^Print these/ }).click();
  const paper = page.locator(".paper-table");
  await paper.waitFor({ state: "attached" });
  await page.getByRole("textbox", { name: "Price up to" }).click();
  await paper.waitFor({ state: "detached" });
  await page.getByRole("textbox", { name: "Price up to" }).fill("1");
  await page.getByRole("button", { name: "Show all bikes" }).waitFor();
  assert.equal(await page.getByRole("button", { name: /^Print these/ }).count(), 0);
  assert.deepEqual(faults, []);
  await close();
});

async function saveEverything(page) {
  await goTo(page, "Save");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save everything to a file" }).click(),
  ]);
  return {
    name: download.suggestedFilename(),
    text: readFileSync(await download.path(), "utf8"),
  };
}

async function openSaved(page, text, name = "family.json") {
  await goTo(page, "Save");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByText("Open a saved file").click(),
  ]);
  await chooser.setFiles({
    name,
    mimeType: "application/json",
    buffer: Buffer.from(text),
  });
}

test("everything is saved to one file and opens elsewhere: riders, wishes, taped bikes, ticks and lists", async () => {
  const { page, faults, close } = await openRack();
  await rackOf(page).getByRole("checkbox").nth(0).check();
  await rackOf(page).getByRole("checkbox").nth(1).check();
  await page.getByText("Filter and sort").click();
  await page.getByRole("textbox", { name: "Price up to" }).fill("120");
  await goTo(page, "Measure");
  await page.getByRole("textbox", { name: "Saddle at its lowest" }).fill("48");
  await page.getByRole("textbox", { name: "Saddle at its highest" }).fill("60");
  await page.getByRole("button", { name: "Add it to the bikes" }).click();
  await goTo(page, "Your child");
  await page.getByRole("button", { name: "Add a child" }).click();
  await page.getByRole("textbox", { name: "Name or nickname" }).fill("Wim 🚲");
  await inseam(page).fill("19 1/2 in");
  const { name, text } = await saveEverything(page);
  assert.equal(name, "saddlerule-2026-11-25.json");
  const { form, version, lists } = JSON.parse(text);
  assert.equal(form, "saddlerule family");
  assert.equal(version, 2);
  assert.equal(lists.length, 1);
  assert.equal(lists[0].text, readFileSync(sample("loan-shed.json"), "utf8"));

  const other = await openPage(browser, screens.laptop, { now });
  await openSaved(other.page, text);
  await other.page.getByText("family.json is open.").waitFor();
  assert.equal(await inseam(other.page).inputValue(), "19 1/2 in");
  assert.ok(await other.page.getByRole("radio", { name: "Wim 🚲" }).isChecked());
  await goTo(other.page, "Bikes");
  await rackOf(other.page).getByRole("article").first().waitFor();
  await other.page.getByText("2 bikes ticked.").waitFor();
  await other.page.getByRole("radio", { name: "Child 1" }).check();
  await other.page.getByText("Filter and sort").click();
  assert.equal(await other.page.getByRole("textbox", { name: "Price up to" }).inputValue(), "120");
  assert.equal(
    JSON.stringify({
      ...JSON.parse((await saveEverything(other.page)).text),
      inHand: 2,
    }),
    JSON.stringify(JSON.parse(text)),
  );

  assert.deepEqual([...faults, ...other.faults], []);
  await other.close();
  await close();
});

test("a file that is opened by mistake is taken back", async () => {
  const { page, close } = await openRack();
  const { text } = await saveEverything(page);
  await goTo(page, "Your child");
  await inseam(page).fill("60");
  await openSaved(page, text);
  await page.getByText("family.json is open.").waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByText("Everything is back as it was.").waitFor();
  await goTo(page, "Your child");
  assert.equal(await inseam(page).inputValue(), "60");
  await close();
});

test("a file that cannot be opened is refused in a sentence, and nothing is lost", async () => {
  const { page, faults, close } = await openRack();
  const { text } = await saveEverything(page);
  const whole = JSON.parse(text);
  const damaged = (change) => {
    const copy = structuredClone(whole);
    change(copy);
    return JSON.stringify(copy);
  };
  const bad = [
    ["", /was not saved with this button/],
    ["\u0000\u0001", /was not saved with this button/],
    ["[]", /was not saved with this button/],
    ["null", /was not saved with this button/],
    [
      readFileSync(sample("loan-shed.json"), "utf8"),
      /was not saved with this button\. Open a list of bikes under “List”\./,
    ],
    [text.slice(0, text.length / 2), /is damaged, so nothing was loaded from it/],
    [damaged((file) => (file.version = 3)), /was saved by a newer Saddlerule/],
    [damaged((file) => delete file.version), /is damaged \(at version\)/],
    [
      damaged((file) => (file.riders[0].rider.stage = "flying")),
      /is damaged \(at riders\[0\]\.rider\.stage\)/,
    ],
    [damaged((file) => (file.riders = [])), /is damaged \(at riders\)/],
    [damaged((file) => file.riders.push(file.riders[0])), /is damaged \(at riders\)/],
    [damaged((file) => (file.inHand = 7)), /is damaged \(at inHand\)/],
    [damaged((file) => (file.riders[0].rider.readings[0].key = { toString: "x" })), /readings\[0\]\.key\)/],
    [damaged((file) => (file.tape.kept = { length: 1 })), /is damaged \(at tape\.kept\)/],
    [damaged((file) => (file.lists[0].text = 12)), /is damaged \(at lists\[0\]\.text\)/],
    [
      damaged((file) => Object.assign(file.lists[0], { text: null, base64: "%%%" })),
      /is damaged \(at lists\)/,
    ],
  ];
  for (const [content, sentence] of bad) {
    await openSaved(page, content, "odd.json");
    await page.getByRole("status").getByText(sentence).waitFor();
    await page.getByText("Nothing here has changed.").waitFor();
    assert.equal(JSON.stringify(JSON.parse((await saveEverything(page)).text)), JSON.stringify(whole));
  }
  assert.deepEqual(faults, []);
  await close();
});

test("of a file that has one part beyond all limits the rest is opened, and the part is named", async () => {
  const { page, faults, close } = await openRack();
  const whole = JSON.parse((await saveEverything(page)).text);
  whole.picked = ["x".repeat(5000)];
  whole.riders[0].rider.readings.push({
    ...whole.riders[0].rider.readings[0],
    key: 7,
    on: "2026-02-31",
  });
  await openSaved(page, JSON.stringify(whole), "odd.json");
  await page.getByText(/riders\[0\]\.rider\.readings\[1\]\.on, picked\[0\]\./).waitFor();
  const { picked, riders, lists } = JSON.parse((await saveEverything(page)).text);
  assert.deepEqual(picked, []);
  assert.equal(riders[0].rider.readings.length, 1);
  assert.equal(lists.length, 1);
  assert.deepEqual(faults, []);
  await close();
});

test("a file that is opened over unsaved work takes nothing away that its Undo does not bring back", async () => {
  const { page, faults, close } = await openRack();
  const { text } = await saveEverything(page);
  await goTo(page, "List");
  const add = page.getByRole("button", { name: "Add a bike", exact: true });
  const lowest = page.getByRole("textbox", { name: "Saddle at its lowest (cm)", exact: true });
  await add.click();
  await lowest.fill("48");
  await page.getByRole("button", { name: "Save this bike", exact: true }).click();
  const mark = page.locator(".screen.list").getByText("not saved", { exact: true });
  await mark.first().waitFor();
  await add.click();
  await lowest.fill("44.5");
  await openSaved(page, text);
  await page.getByText("family.json is open.").waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByText("Everything is back as it was.").waitFor();
  await goTo(page, "List");
  assert.equal(await lowest.inputValue(), "44.5");
  await page.getByRole("button", { name: "Discard this bike" }).click();
  await mark.first().waitFor();
  const asks = await page.evaluate(() => !dispatchEvent(new Event("beforeunload", { cancelable: true })));
  assert.ok(asks);
  assert.deepEqual(faults, []);
  await close();
});
