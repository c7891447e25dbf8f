// Saddlerule with a document of its own, as a file or on a server: it follows the document's address, makes its screens entries
// of the browser's history, may keep what a family typed on the device, and tells a page that shows it in a frame how high it is.
import { followSettings } from "../embedding/follow-settings";
import { hashWith, settingsFromAddress } from "../embedding/from-address";
import type { AddressSettings } from "../embedding/from-address";
import type { View } from "../embedding/settings";
import { keepAsHigh, ownFrame, tellHeight } from "../embedding/height-told";
import type { TagAddresses } from "../embedding/tag-address";
import type { EngineOpener } from "../engine/engine-opening";
import type { ListSource } from "../engine/list-opening";
import type { Sample } from "../engine/samples";
import { deviceStore } from "../keeping/indexed-store";
import type { PageState } from "../state/page-state";
import type { OtherLanguage } from "../texts/languages";
import { laterHere } from "./later-here";
import { mountSaddlerule } from "./mount-saddlerule";
import type { SiteParts } from "./page-context";
import { followHistory } from "./screen-history";

export interface PageOptions {
  engines: EngineOpener;
  /** Fetches or unpacks the words of a language other than English; called once for each, when it is first wanted. */
  packedWords: (language: OtherLanguage) => Promise<string>;
  samples: Sample[];
  /** The list at an address, as the document's own address names it. */
  listAt: (address: string) => ListSource;
  /** Settings as the document's address has them behind its #, where it does not say otherwise. */
  usually?: string;
  /** What a site adds. */
  site?: SiteParts;
  tagAddresses?: TagAddresses;
  /** What to open where the document's address names no list. */
  list?: ListSource | null;
  /** The document with a list in it, where it can be saved so. */
  pageWithList?: (json: string) => string;
}

/**
 * Browsers may give all files that they open one store. Which ones do, no page can find out: Firefox has a preference for it, and
 * says the same of a file's origin either way.
 */
const isServed = /^https?:$/.test(location.protocol);

/** Shows Saddlerule in the document's element for it. */
export function mountPage({
  engines,
  packedWords,
  samples,
  listAt,
  usually = "",
  site,
  tagAddresses,
  list = null,
  pageWithList,
}: PageOptions): void {
  const host = document.getElementById("saddlerule");
  if (host === null) return;
  // Of what is said twice, the first counts.
  const read = (): AddressSettings => settingsFromAddress(`${location.hash}&${usually}`);
  const settings = read();
  const mounted = mountSaddlerule(host, {
    engines,
    packedWords,
    later: laterHere,
    settings,
    device: deviceStore(),
    deviceIsShared: !isServed,
    samples,
    ...(site && { site }),
    ...(tagAddresses && { tagAddresses }),
    ...(pageWithList && { pageWithList }),
    onLanguage: (language) => {
      document.documentElement.lang = language;
    },
  });
  const follow = followSettings(mounted, settings, listAt);
  if (list !== null && settings.list === null) void mounted.openList(list);
  // In a frame, the history is that of the page around.
  if (window.parent === window) {
    addEventListener("hashchange", () => follow(read(), false));
    followHistory(mounted.store, {
      name: "page",
      addressOf: (state) => hashWith(location.hash, addressedScreen(state)),
      onStranger: () => follow(read(), true),
    });
  } else addEventListener("hashchange", () => follow(read()));
  const frame = ownFrame();
  if (settings.host !== null || frame !== null) {
    // As high as what is in it: a frame has no screen of its own.
    host.classList.add("framed");
    if (settings.host !== null) tellHeight(host, settings.host);
    else if (frame !== null) keepAsHigh(frame, host);
  }
}

/** As near as an address comes to the screen. Bikes that were measured or picked are known in this page alone. */
function addressedScreen({ screen, tape }: PageState): { view: View | null; bike: string | null } {
  const rack = { view: "rack", bike: null } as const;
  if (screen.name === "beside") return rack;
  if (!("id" in screen)) return { view: screen.name, bike: null };
  const { id, name } = screen;
  if (tape.kept.some((kept) => kept.id === id)) return rack;
  return { view: name === "card" ? "card" : null, bike: id };
}
