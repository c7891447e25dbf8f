// The list's screen as its users meet it: files of lists, entries by name, saved files read back.

import assert from "node:assert/strict";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { eventually } from "./eventually.mjs";
import { goTo, openList, openPage } from "./open-page.mjs";

/** A folder for the files of one test file; `done` takes it away. */
export function fileFolder() {
  const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
  return {
    file(name, content) {
      const path = join(folder, name);
      writeFileSync(path, content);
      return path;
    },
    done: () => rmSync(folder, { recursive: true }),
  };
}

export const jsonList = (bikes, head = {}) =>
  JSON.stringify({
    format: "saddlerule-catalogue",
    version: 1,
    title: "Hall list",
    units: "cm",
    ...head,
    bikes,
  });

/** The page with these files open, the last one in hand. */
export async function openDesk(browser, viewport, files = [], options = {}) {
  const opened = await openPage(browser, viewport, options);
  await goTo(opened.page, "List");
  for (const file of files) {
    await openList(opened.page, file);
    await opened.page.getByRole("button", { name: "See the bikes" }).waitFor();
  }
  return opened;
}

export const entries = (page) => page.getByRole("list", { name: "Bikes in the list" });

export const entry = (page, name) => page.getByRole("article", { name, exact: true });

export const press = (page, name) => page.getByRole("button", { name, exact: true }).click();

export const field = (page, name) => page.getByRole("textbox", { name, exact: true });

export const choice = (page, name) => page.getByRole("combobox", { name, exact: true });

/** A phone's width, and tall enough for every row of a short list: rows far below the screen are not drawn. */
export const tall = { width: 390, height: 3000 };

/** What has the focus, inside the page's own room. */
export const focused = (page) =>
  page.evaluate(() => {
    let element = document.activeElement;
    while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
    return { id: element?.id ?? "", text: element?.textContent ?? "" };
  });

/** Saves the list in hand as a download and reads it. */
export async function saved(page, { form = "Saddlerule (JSON)", separator } = {}) {
  await press(page, "Save list");
  await page.getByRole("radio", { name: form }).check();
  if (separator) await choice(page, "Between columns").selectOption({ label: separator });
  const button = page.getByRole("button", { name: "Save list", exact: true });
  await eventually(async () => assert.notEqual(await button.getAttribute("aria-disabled"), "true"));
  const [download] = await Promise.all([page.waitForEvent("download"), button.click()]);
  const text = readFileSync(await download.path(), "utf8");
  await page.getByText(`Saved as ${download.suggestedFilename()}.`).waitFor();
  await press(page, "Back to the list");
  return { name: download.suggestedFilename(), text };
}
