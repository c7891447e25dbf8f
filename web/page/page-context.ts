// What every part of the page may use: the words, the figures' forms, and the ways to change something.
import { createContext } from "preact";
import type { ComponentType } from "preact";
import { useContext } from "preact/hooks";
import type { TagAddresses } from "../embedding/tag-address";
import type { ListWork } from "../engine/list-desk-work";
import type { ListSource, SaidOfFile } from "../engine/list-opening";
import type { Sample } from "../engine/samples";
import type { Figures } from "../figures/format-figures";
import type { FamilyKeeper } from "../keeping/family-keeper";
import type { Later } from "./later-parts";
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
  openListAs: (said: SaidOfFile) => void;
  /** A list in a file that the reader chose. */
  sourceOf: (file: File) => ListSource;
  /** What may come after the first screens. `work` and `keeper` come with it: nothing before asks for them. */
  later: Later;
  /** Work on the lists that are open. */
  work: ListWork;
  /** The file that is being opened is let go. */
  stopOpening: () => void;
  /** Prints what is shown. */
  print: () => void;
  /** Keeping what the family typed. */
  keeper: FamilyKeeper;
  /** Whether that may be on the device; where it may not, the text of `keep` that says why. */
  keepsOnDevice: true | "notFromFile" | "notHere";
  /** Invented lists to look round with. */
  samples: Sample[];
  /** What a site adds to the page; null in its other forms. */
  site: SiteParts | null;
  /** Where the codes on tags lead, where the page has an address. */
  tagAddresses: TagAddresses | null;
}

/** What is in the page of a site alone, so that its other forms need not carry it. */
export interface SiteParts {
  /** At the foot of every screen. */
  strip: ComponentType;
  /** On the screen where things are kept. */
  kept: ComponentType;
}

export const PageContext = createContext<PageTools | null>(null);

export function usePage(): PageTools {
  const tools = useContext(PageContext);
  if (tools === null) throw new Error("a part of the page is outside of it");
  return tools;
}
