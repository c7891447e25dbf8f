// A check in words. One that lacks a figure is told by what to measure, and has no sentence of its own.
import type { Check } from "../../engine/wire";
import { checkFigures } from "../../figures/check-figures";
import type { Figures } from "../../figures/format-figures";
import { byCode } from "../../texts/texts";
import type { Texts } from "../../texts/texts";

/** "Weight: look closer.", and the sentence that says why. */
export function checkWords(texts: Texts, figures: Figures, check: Check): { title: string; why: string } {
  const { states, names, wording } = texts.checks;
  return {
    title: `${byCode(names, check.what) ?? check.what}${texts.colon}${states[check.state]}.`,
    why: byCode(wording, check.code, checkFigures(figures, check)) ?? "",
  };
}
