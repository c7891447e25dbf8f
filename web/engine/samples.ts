// The invented lists that come with the page, opened like any file.
import type { ListSource } from "./list-opening";

export interface Sample extends ListSource {
  label: "loanShed" | "swapMorning";
}

/** Of catalogue-samples/. */
export const sampleFiles = { loanShed: "loan-shed.json", swapMorning: "swap-morning.json" } as const;

/** @param text of a file of catalogue-samples/, by its name or by its place among them */
export function samplesFrom(text: (name: string, place: number) => Promise<string>): Sample[] {
  return Object.entries(sampleFiles).map(([label, name], place) => ({
    label: label as Sample["label"],
    name,
    sample: true,
    bytes: async () => new TextEncoder().encode(await text(name, place)),
  }));
}
