// A sentence in the browser's console, for whoever wrote the page that Saddlerule is in. Readers never see it.

export function tellWebmaster(sentence: string): void {
  console.warn(`Saddlerule: ${sentence}`);
}
