// The invented lists that come with the page, opened like any file.
import type { ListSource } from "./list-opening";

export interface Sample extends ListSource {
  label: "loanShed" | "swapMorning";
}

/** Of catalogue-samples/. */
export const sampleFiles = { loanShed: "loan-shed.json", swapMorning: "swap-morning.json" } as const;

/** @param text of a file of catalogue-samples/, by its name */
export function samplesFrom(text: (name: string) => Promise<string>): Sample[] {
  return Object.entries(sampleFiles).map(([label, name]) => ({
    label: label as Sample["label"],
    name,
    sample: true,
    bytes: async () => new TextEncoder().encode(await text(name)),
  }));
}
