// The page saved as one file with a list in it: it opens anywhere, with that list, as the page opens without.

import assert from "node:assert/strict";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test, { after, before } from "node:test";
import { pathToFileURL } from "node:url";
import { entry, fileFolder, jsonList, openDesk, press, tall } from "../support/list-desk.mjs";
import { goTo, launchBrowser, openPage, pageFile, screens } from "../support/open-page.mjs";

const folder = fileFolder();
const saved = mkdtempSync(join(tmpdir(), "saddlerule-page-"));
let browser;
before(async () => (browser = await launchBrowser()));
after(async () => {
  await browser.close();
  folder.done();
  rmSync(saved, { recursive: true });
});

/** Saves the page with the list in hand and gives the file, as it is on the disk. */
async function savedPage(page, name) {
  await press(page, "Save list");
  await page.getByRole("radio", { name: "Web page (HTML)" }).check();
  await page.getByText("One file that opens this tool with these bikes.", { exact: false }).waitFor();
  const button = page.getByRole("button", { name: "Save list", exact: true, disabled: false });
  const [download] = await Promise.all([page.waitForEvent("download"), button.click()]);
  assert.equal(download.suggestedFilename(), `${name}.html`);
  const file = join(saved, download.suggestedFilename());
  await download.saveAs(file);
  await page.getByText(`Saved as ${name}.html.`).waitFor();
  return file;
}

const hall = jsonList(
  [
    { id: "H1", name: "Hall </script><b>1</b> $& $1 \u2028", saddle_lowest: 48, saddle_highest: 60 },
    { id: "H2", name: "Hall 2", saddle_lowest: 60, saddle_highest: 75 },
  ],
  { title: "Hall bikes" },
);

test("the page saved with a list opens with it, says the verdicts, and is saved again with another list", async () => {
  const first = await openDesk(browser, tall, [folder.file("hall.json", hall)]);
  const file = await savedPage(first.page, "hall");
  assert.deepEqual(first.faults, []);
  await first.close();

  const { page, faults, close } = await openPage(browser, screens.phone, {
    address: pathToFileURL(file).href,
  });
  await page.getByRole("radio", { name: "centimetres" }).check();
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await goTo(page, "Bikes");
  await page.getByRole("heading", { name: "Hall 2" }).waitFor();
  await page.getByRole("heading", { name: /^Hall <\/script><b>1<\/b> \$& \$1/ }).waitFor();
  await goTo(page, "List");
  await page.getByRole("heading", { name: "Hall bikes" }).waitFor();
  await page.setViewportSize(tall);
  await entry(page, "Hall 2").getByRole("button").first().click();
  await press(page, "Remove this bike");
  await page.getByText("Removed Hall 2.").waitFor();
  const again = await savedPage(page, "list");
  assert.deepEqual(faults, []);
  await close();

  const second = readFileSync(again, "utf8");
  assert.equal(
    second.match(/carried-list/g).length,
    readFileSync(file, "utf8").match(/carried-list/g).length,
  );
  assert.ok(second.includes("H1") && !second.includes('"H2"'));
});

test("beside its list, the saved page is the file that it was saved from", async () => {
  const { page, close } = await openDesk(browser, tall, [folder.file("hall.json", hall)]);
  const file = await savedPage(page, "hall");
  await close();
  const without = readFileSync(file, "utf8").replace(/\n<script type="application\/json".*?<\/script>/s, "");
  // As a browser writes it: attributes that are the same in other letters are its own business.
  const plain = (html) =>
    html.replaceAll("&gt;", ">").replace(/\s+/g, " ").replaceAll("> <", "><").trim().toLowerCase();
  assert.equal(plain(without), plain(readFileSync(pageFile, "utf8")));
});
