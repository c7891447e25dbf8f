// Files that cannot be used: a sentence with its position, the list that was open stays, the page stays usable.

import assert from "node:assert/strict";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test, { after, before } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { launchBrowser, openList, openPage, screens, shownText } from "../support/open-page.mjs";

let browser;
const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
before(async () => (browser = await launchBrowser()));
after(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

function file(name, content) {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const bike = (name) => ({ name, saddle_lowest: 48, saddle_highest: 60 });
const list = (bikes) =>
  JSON.stringify({ format: "saddlerule-catalogue", version: 1, title: "A list", units: "cm", bikes });

const broken = {
  "an empty file": ["empty.json", "", /empty/i],
  "a file cut off": ["cut.json", list([bike("one")]).slice(0, -5), /line 1/i],
  "a picture": [
    "picture.json",
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0]),
    /picture|image/i,
  ],
  "a spreadsheet": [
    "sheet.xlsx",
    Buffer.from("PK\u0003\u0004\u0014\0\u0006\0" + "\0".repeat(22) + "[Content_Types].xml xl/workbook.xml"),
    /spreadsheet/i,
  ],
  "another encoding": ["latin.json", Buffer.from(list([bike("Gr\u00fcn")]), "latin1"), /UTF-8/],
  "NaN for a figure": ["nan.json", list([bike("one")]).replace("48", "NaN"), /NaN/],
  "ten thousand levels": ["deep.json", "[".repeat(10000), /level|deep|nest/i],
  "no bikes": ["none.json", list([]), /bike/i],
  "nine MiB": ["huge.json", Buffer.alloc(9 * 1024 * 1024, 0x20), /8\u00a0MiB/],
};

for (const [what, [name, content, says]] of Object.entries(broken)) {
  test(`${what} is refused in words, and the open list stays`, async () => {
    const { page, faults, close } = await openPage(browser, screens.phone);
    await openList(page, sample("loan-shed.json"));
    await page.getByRole("heading", { name: "Loan shed, autumn list" }).waitFor();
    await openList(page, file(name, content));
    const refusal = page.getByText(`“${name}” could not be opened.`);
    await refusal.waitFor();
    assert.match(await shownText(page), says);
    await page.getByText("“Loan shed, autumn list” is still open.").waitFor();
    await openList(page, sample("loan-shed.json"));
    await refusal.waitFor({ state: "detached" });
    assert.deepEqual(faults, []);
    await close();
  });
}

test("markup in a name is text", async () => {
  const { page, faults, close } = await openPage(browser, screens.phone);
  const name = `<img src=x onerror="document.title='run'"><b>bold</b>`;
  await openList(page, file("markup.json", list([bike(name)])));
  await page.getByRole("button", { name: "See the bikes" }).first().click();
  await page.getByText(name).first().waitFor();
  assert.equal(await page.locator("img[src=x]").count(), 0);
  assert.notEqual(await page.title(), "run");
  assert.deepEqual(faults, []);
  await close();
});

test("bikes set aside are shown with their place, their reason and what is in the file", async () => {
  const { page, close } = await openPage(browser, screens.phone);
  await openList(
    page,
    file("half.json", list([bike("good"), { name: "upside down", saddle_lowest: 49.5, saddle_highest: 36 }])),
  );
  await page.getByRole("heading", { name: "1 bike left out" }).waitFor();
  const shown = (await shownText(page)).replaceAll("\u00a0", " ");
  assert.match(shown, /upside down/);
  assert.match(shown, /line 1, column \d+/i);
  assert.match(shown, /36 cm, is below the lowest, 49\.5 cm/);
  await close();
});
