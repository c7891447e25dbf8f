// The invented lists, in the site's script.
import loanShed from "../../catalogue-samples/loan-shed.json";
import swapMorning from "../../catalogue-samples/swap-morning.json";
import { sampleFiles, samplesFrom } from "../engine/samples";

const texts: Record<string, string> = {
  [sampleFiles.loanShed]: loanShed,
  [sampleFiles.swapMorning]: swapMorning,
};

export const siteSamples = samplesFrom((name) => Promise.resolve(texts[name] ?? ""));
