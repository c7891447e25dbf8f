// The invented lists, in the site's script.
import loanShed from "../../catalogue-samples/loan-shed.json";
import swapMorning from "../../catalogue-samples/swap-morning.json";
import { samplesFrom } from "../engine/samples";

const texts: Record<string, string> = { "loan-shed.json": loanShed, "swap-morning.json": swapMorning };

export const siteSamples = samplesFrom((name) => Promise.resolve(texts[name] ?? ""));
