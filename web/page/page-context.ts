// What every part of the page may use: the words, the figures' forms, and the ways to change something.
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { ListSource } from "../engine/list-opening";
import type { Figures } from "../figures/format-figures";
import type { PageState } from "../state/page-state";
import type { Change } from "../state/store";
import type { Language } from "../texts/languages";
import type { Texts } from "../texts/texts";

export interface PageTools {
  language: Language;
  texts: Texts;
  figures: Figures;
  change: (by: Change<PageState>) => void;
  openList: (source: ListSource) => void;
}

export const PageContext = createContext<PageTools | null>(null);

export function usePage(): PageTools {
  const tools = useContext(PageContext);
  if (tools === null) throw new Error("a part of the page stands outside of it");
  return tools;
}
