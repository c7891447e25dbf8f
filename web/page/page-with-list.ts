// The page file with a list in it: one file to put on a website or to send to somebody, which opens with that list.
import type { ListSource } from "../engine/list-opening";

const id = "carried-list";

/** The list that this file was saved with; null: it is as it came. */
export function carriedList(): ListSource | null {
  const text = document.getElementById(id)?.textContent ?? "";
  if (text === "") return null;
  const bytes = new TextEncoder().encode(text);
  return { name: "list.json", sample: false, named: true, bytes: () => Promise.resolve(bytes) };
}

/** This file as HTML, with a list in JSON. What the page has drawn is in its shadow root, which is not copied. */
export function pageWithList(json: string): string {
  const page = document.documentElement.cloneNode(true) as HTMLElement;
  page.querySelector(`#${id}`)?.remove();
  const block = `<script type="application/json" id="${id}">${json.replaceAll("<", "\\u003c")}</script>`;
  // In pieces, for a list may hold what a replacement takes for a sign of its own.
  // eslint-disable-next-line no-restricted-properties -- it is read, and goes into a file
  const [before = "", after = ""] = page.outerHTML.split(/(?<=<\/main>)/, 2);
  return `\ufeff<!doctype html>\n${before}\n${block}${after}`;
}
