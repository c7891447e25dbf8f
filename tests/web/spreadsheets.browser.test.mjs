// A club's own spreadsheet opens at the first try: its title, its headings, its totals, its unit; what its columns hold is asked where
// nobody can tell. Broken, locked and huge ones are refused in words, and what was open stays.

import assert from "node:assert/strict";
import test, { after, before } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { eventually } from "../support/eventually.mjs";
import { fileFolder, press } from "../support/list-desk.mjs";
import { spreadsheet, spreadsheetParts } from "../support/make-spreadsheet.mjs";
import { launchBrowser, openList, openPage, screens, shownText } from "../support/open-page.mjs";
import { zipped } from "../../web/building/zipped.mjs";

const folder = fileFolder();
let browser;
before(async () => (browser = await launchBrowser()));
after(async () => {
  await browser.close();
  folder.done();
});

const hall = [
  ["Bikes of the village hall", null],
  [null, "as of October"],
  null,
  ["Nr", "Modell", "Sattel min", "Sattel max", "Preis in Euro", "Owner", "Since", "Free"],
  ["K01", 'Blue, "the old one"\nwith a bell', 47.5, 61, 55, { inline: "Mia & Ole" }, { day: 46000 }, true],
  ["K02", "Red", 0.1 + 58.2, 74, 30, null, null, false],
  ["K03", "Green", "tall", 66, null, null, null, null],
  [null, "Summe", { formula: 105.5 }, 135, 85, null, null, null],
];

async function opened(file, viewport = screens.phone, options = {}) {
  const page = await openPage(browser, viewport, options);
  await openList(page.page, file);
  return page;
}

/** The list in hand as the page would save it. */
async function savedTable(page) {
  await press(page, "Save list");
  await page.getByRole("radio", { name: /CSV/ }).check();
  const button = page.getByRole("button", { name: "Save list", exact: true });
  await eventually(async () => assert.equal(await button.getAttribute("aria-disabled"), "false"));
  const [download] = await Promise.all([page.waitForEvent("download"), button.click()]);
  const chunks = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk);
  return { name: download.suggestedFilename(), text: Buffer.concat(chunks).toString("utf8") };
}

test("a club's spreadsheet opens with one question, for its unit", async () => {
  const { page, faults, close } = await opened(folder.file("hall.xlsx", spreadsheet([["Read me"]], hall)));
  await page.getByText("Which unit are its lengths in?").waitFor();
  await page.getByRole("alert").getByRole("button", { name: "cm", exact: true }).click();
  await page.getByRole("heading", { name: "Bikes of the village hall" }).first().waitFor();
  await page.getByText("2 bikes", { exact: true }).waitFor();
  await page.getByRole("button", { name: "Show: 2 bikes left out" }).click();
  await page.getByText(/“Summe” looks like a row of totals|"Summe" looks like a row of totals/).waitFor();
  await page.getByText(/Row 7, Sattel min/i).waitFor();
  const { name, text } = await savedTable(page);
  assert.equal(name, "hall.csv");
  assert.match(text, /K01,"Blue, ""the old one""\r?\nwith a bell",47\.5,61,55,Mia & Ole,2025-12-09,true/);
  assert.match(text, /K02,Red,58\.3,74,30,,,false/);
  assert.deepEqual(faults, []);
  await close();
});

test("columns that nobody can tell are asked for, by keyboard, on a narrow screen, and the same ones once only", async () => {
  const rows = [
    ["Shed", null, null, null],
    ["Code", "What", "S1 (cm)", "S2 (cm)"],
    ["K1", "Red 16", 47, 61],
    ["K2", "Blue 20", 58, 74],
  ];
  const { page, faults, close } = await opened(folder.file("codes.xlsx", spreadsheet(rows)), {
    width: 320,
    height: 700,
  });
  const form = page.getByRole("form", { name: "Which column is which?" });
  await form.waitFor();
  const widths = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
  assert.ok(widths[0] <= widths[1], `no sideways scrolling: ${widths.join(" in ")}`);
  const choose = async (label, column) => {
    const select = form.getByRole("combobox", { name: label, exact: true });
    await select.focus();
    await select.selectOption({ label: column });
  };
  await choose("Name", "What: Red 16, Blue 20");
  await choose("Saddle at its lowest", "S1 (cm): 47, 58");
  await choose("Saddle at its highest", "S2 (cm): 61, 74");
  await page.keyboard.press("Tab");
  await form.getByRole("button", { name: "Open with these columns" }).press("Enter");
  await page.getByRole("heading", { name: "Shed" }).first().waitFor();
  await page.getByText("2 bikes").first().waitFor();
  assert.equal(await page.locator(".refused").count(), 0);
  await openList(page, folder.file("codes-again.xlsx", spreadsheet([...rows, ["K3", "Green", 50, 63]])));
  await page.getByText("3 bikes").first().waitFor();
  assert.equal(await form.count(), 0);
  assert.deepEqual(faults, []);
  await close();
});

test("a list that opened with one end of its saddles missing can be told where the other is", async () => {
  const file = folder.file("one-end.csv", "name,saddle lowest (cm),Ende (cm)\nRed,47,61\nBlue,58,74\n");
  const { page, faults, close } = await opened(file);
  await page.getByText("2 bikes").first().waitFor();
  await page.locator("summary", { hasText: "Which column is which?" }).click();
  await page
    .getByRole("combobox", { name: "Saddle at its highest", exact: true })
    .selectOption({ label: "Ende (cm): 61, 74" });
  await page.getByRole("button", { name: "Open with these columns" }).click();
  await page.locator("summary", { hasText: "Which column is which?" }).waitFor({ state: "detached" });
  await page.getByText("Saddle 47 cm to 61 cm").waitFor();
  assert.deepEqual(faults, []);
  await close();
});

const parts = spreadsheetParts(hall);
const whole = zipped(parts);
/** A directory entry's flags say that the part is encrypted (APPNOTE.TXT, 4.4.4). */
function lockedParts() {
  const bytes = Buffer.from(whole);
  for (let at = bytes.indexOf("PK\x01\x02"); at >= 0; at = bytes.indexOf("PK\x01\x02", at + 4))
    bytes[at + 8] |= 1;
  return bytes;
}
function brokenPart() {
  const bytes = Buffer.from(whole);
  const name = "xl/worksheets/sheet1.xml";
  const begin = bytes.indexOf(name) + name.length;
  return bytes.fill(0xff, begin, begin + 60);
}
const manyRows = (row) => `<worksheet><sheetData>${row}</sheetData></worksheet>`;
const withSheet = (xml) => zipped({ ...parts, "xl/worksheets/sheet1.xml": xml });
const oldForm = Buffer.from("d0cf11e0a1b11ae1", "hex");

const hostile = {
  "cut off": [whole.subarray(0, whole.length / 2), /a damaged spreadsheet/i],
  "with a part that is no deflate data": [brokenPart(), /a damaged spreadsheet/i],
  "with half a mark at its end": [withSheet("<worksheet><sheetData><row"), /a damaged spreadsheet/i],
  "with rows that go back": [
    withSheet(manyRows('<row r="5"></row><row r="2"></row>')),
    /a damaged spreadsheet/i,
  ],
  "with a row beyond all rows": [withSheet(manyRows('<row r="999999999"></row>')), /a damaged spreadsheet/i],
  "that unpacks to 60 MB": [withSheet(manyRows(" ".repeat(60e6))), /a spreadsheet that is too large/i],
  "with one text in a million cells": [
    zipped({
      ...parts,
      "xl/sharedStrings.xml": `<sst><si><t>${"x".repeat(1e6)}</t></si></sst>`,
      "xl/worksheets/sheet1.xml": manyRows('<row><c t="s"><v>0</v></c></row>'.repeat(2e5)),
    }),
    /a spreadsheet that is too large/i,
  ],
  "with locked parts": [lockedParts(), /a spreadsheet with a password/i],
  "locked as office programs do it": [
    Buffer.concat([oldForm, Buffer.alloc(600), Buffer.from("EncryptedPackage", "utf16le"), Buffer.alloc(64)]),
    /a spreadsheet with a password/i,
  ],
  "of the old kind": [Buffer.concat([oldForm, Buffer.alloc(600)]), /an old office document/i],
  "of the open document kind": [
    zipped({ mimetype: "application/vnd.oasis.opendocument.spreadsheet", "content.xml": "<a/>" }),
    /a spreadsheet \(ods\)|a ZIP archive/i,
  ],
  "that is empty": [spreadsheet([]), /./],
};

test("what cannot be read is refused in words, and the list in use stays", async () => {
  const { page, faults, close } = await opened(sample("loan-shed.json"));
  await page.getByRole("heading", { name: "Loan shed, autumn list" }).first().waitFor();
  for (const [what, [bytes, words]] of Object.entries(hostile)) {
    const name = `${what.replaceAll(" ", "-")}.xlsx`;
    await openList(page, folder.file(name, bytes));
    const alert = page.getByRole("alert").filter({ hasText: `“${name}” could not be opened.` });
    await alert.waitFor();
    assert.match(await alert.innerText(), words, what);
    await page.getByText("“Loan shed, autumn list” is still open.").waitFor();
  }
  assert.deepEqual(faults, []);
  await close();
});

test("entities of the file's own are not expanded, and marks in names are text", async () => {
  const strings = parts["xl/sharedStrings.xml"].replace("<t>Re", "<t>&b;&lt;img src=x onerror=alert(1)>");
  const withStrings = (xml) => zipped({ ...parts, "xl/sharedStrings.xml": xml });
  const declared = `<!DOCTYPE a [<!ENTITY b "${"c".repeat(50)}">]>${strings}`;
  const { page, faults, close } = await opened(folder.file("entities.xlsx", withStrings(declared)));
  await page.getByText("This is a damaged spreadsheet", { exact: false }).waitFor();
  await openList(page, folder.file("marks.xlsx", withStrings(strings)));
  await page.getByRole("alert").getByRole("button", { name: "cm", exact: true }).click();
  await page.getByText("&b;<img src=x onerror=alert(1)>d").first().waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("riders come from a spreadsheet as well", async () => {
  const { page, faults, close } = await opened(sample("loan-shed.json"));
  await page.getByRole("button", { name: "Club day: a bike for each child" }).click();
  await page.locator("summary", { hasText: "Paste or open a table" }).click();
  const riders = spreadsheet([
    ["Saturday"],
    ["Name", "Inside leg (cm)", "Born"],
    ["Ida", 49.5, { day: 44000 }],
    ["Ole", 55, null],
  ]);
  await page.getByLabel("Open a file (xlsx, CSV)").setInputFiles(folder.file("riders.xlsx", riders));
  await page
    .getByText("2 children added")
    .or(page.getByText(/2 (riders|children)/))
    .first()
    .waitFor();
  assert.match(await shownText(page), /Ida/);
  await page
    .getByLabel("Open a file (xlsx, CSV)")
    .setInputFiles(folder.file("broken.xlsx", whole.subarray(0, whole.length / 2)));
  await page.getByText(/a damaged spreadsheet/i).waitFor();
  assert.match(await shownText(page), /Ida/);
  assert.deepEqual(faults, []);
  await close();
});
