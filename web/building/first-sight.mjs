// What is in the page's main element before any script has run, and stays there if none does.
import { ownModule } from "./scripts.mjs";

export async function firstSight() {
  const { notStarted } = await ownModule("texts/first-words.ts");
  const late = Object.entries(notStarted).map(
    ([language, words]) => `<p class="late" lang="${language}">${words}</p>`,
  );
  return `<noscript>Saddlerule works out the fit on this device and needs JavaScript for it.</noscript>${late.join("")}`;
}
