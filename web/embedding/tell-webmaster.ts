// A sentence in the browser's console, for whoever wrote the page that Saddlerule is in. Readers never see it.

const told = new Set<string>();

/** Once for a page, however often it comes up. */
export function tellWebmaster(sentence: string): void {
  if (told.has(sentence)) return;
  told.add(sentence);
  console.warn(`Saddlerule: ${sentence}`);
}
