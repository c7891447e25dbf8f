// The invented lists that come with the page, opened like any file.
import loanShed from "../../catalogue-samples/loan-shed.json";
import swapMorning from "../../catalogue-samples/swap-morning.json";
import type { ListSource } from "./list-opening";

export interface Sample extends ListSource {
  label: "loanShed" | "swapMorning";
}

function sample(label: Sample["label"], name: string, text: string): Sample {
  return { label, name, sample: true, bytes: () => Promise.resolve(new TextEncoder().encode(text)) };
}

export const samples: Sample[] = [
  sample("loanShed", "loan-shed.json", loanShed),
  sample("swapMorning", "swap-morning.json", swapMorning),
];
