// Puts Saddlerule into an element of any document. Nothing outside that element is touched.
import { render } from "preact";
import { engineDoor } from "../engine/engine-door";
import type { EngineOpener } from "../engine/engine-opening";
import { keepAnswered } from "../engine/keep-answered";
import { listWork } from "../engine/list-desk-work";
import { followDay } from "./follow-day";
import { guardUnsaved } from "./guard-unsaved";
import type { TagAddresses } from "../embedding/tag-address";
import { nothingSaid, screenSaid } from "../embedding/settings";
import type { Settings } from "../embedding/settings";
import { listOpening } from "../engine/list-opening";
import type { ListSource } from "../engine/list-opening";
import { questions } from "../engine/questions";
import type { Sample } from "../engine/samples";
import type { TypedUnit } from "../engine/narrowed";
import { createFigures } from "../figures/format-figures";
import { familyKeeper } from "../keeping/family-keeper";
import type { FamilyKeeper } from "../keeping/family-keeper";
import { listsAtHand } from "../keeping/lists-at-hand";
import type { DeviceStore } from "../keeping/device-store";
import { firstState } from "../state/page-state";
import type { PageState } from "../state/page-state";
import { createStore } from "../state/store";
import { tagOf } from "../state/suits";
import type { Store } from "../state/store";
import sheet from "../style/saddlerule.css";
import { languageFor, localeFor } from "../texts/languages";
import type { Language, OtherLanguage } from "../texts/languages";
import { afterPaint } from "../engine/after-paint";
import { afterDraft } from "./after-draft";
import { deviceDay } from "./device-day";
import { PageContext } from "./page-context";
import type { PageTools, SiteParts } from "./page-context";
import { SaddleruleRoot } from "./saddlerule-root";
import { sealedRoom } from "./seal-style";
import { populationFor } from "./region";
import { spokenWords } from "./spoken-words";

export interface SaddleruleOptions {
  /** Where engines come from; several of these may share one. */
  engines: EngineOpener;
  /** Fetches or unpacks the words of a language other than English; called once for each, when it is first wanted. */
  packedWords: (language: OtherLanguage) => Promise<string>;
  /** Called with the language whose words are on the page, whenever it changes. */
  onLanguage?: (language: Language) => void;
  /**
   * Where on this device a family may keep what it typed; null: the browser has no place for it. Left out: nobody is asked.
   */
  device?: DeviceStore | null;
  /** Other pages can read what is there: nothing more is put there, and what is there is taken out. */
  deviceIsShared?: boolean;
  /** Invented lists to look round with. */
  samples: Sample[];
  /** What to begin with, but for a list. */
  settings?: Settings;
  site?: SiteParts;
  /** Where the page has an address. */
  tagAddresses?: TagAddresses;
  /** In a page that is not to be printed around it. */
  print?: () => void;
  /** The page as one file with a list in it, where that can be saved. */
  pageWithList?: (json: string) => string;
}

export interface Mounted {
  store: Store<PageState>;
  /** What its parts use now. */
  tools: () => PageTools;
  /** Opens a list once what was kept on the device is there. */
  openList: (source: ListSource) => Promise<void>;
  /** Takes it away again, engines and all. */
  unmount: () => void;
}

/** What a reader begins with where nothing is said of it, by the browser's languages. */
export function usualSettings(): { language: Language; units: TypedUnit } {
  const language = languageFor(navigator.languages);
  return { language, units: unitFor(localeFor(language, navigator.languages)) };
}

/** Shows Saddlerule inside `host`. */
export function mountSaddlerule(host: Element, options: SaddleruleOptions): Mounted {
  const usual = usualSettings();
  const settings = options.settings ?? nothingSaid;
  const { language: said, units, currency, bike, list } = settings;
  const language = said ?? usual.language;
  const store = createStore<PageState>({
    ...firstState(deviceDay(), units ?? usual.units, language, populationFor(navigator.languages)),
    currency,
    screen: screenSaid(settings),
    tag: tagOf(bike, list),
  });
  const words = spokenWords(options.packedWords);
  const { engines: opener, device, deviceIsShared = false, samples } = options;
  // One holds the list; the other judges single bikes beside it.
  const engines = { rack: engineDoor(opener.inThread), bench: engineDoor(opener.onPage) };
  const floor = sealedRoom(host, sheet);

  const work = listWork(store, engines.rack, options.pageWithList);
  const opening = listOpening(store, engines.rack, {
    leaving: work.putAside,
    opened: work.opened,
  });
  const lists = listsAtHand(store, work, opening, engines.rack);
  const mayCome = afterDraft(store);
  const keeper = familyKeeper(store, device ?? null, lists, deviceIsShared);
  const stopMinding = device == null ? () => undefined : mindLeaving(keeper);
  // The same object as long as unit and language are the same: all that uses it would be drawn again with another.
  const made = new Map<string, PageTools>();
  const toolsFor = (state: PageState): PageTools => {
    const { language, locale, texts } = words.now(state.language);
    const key = `${language} ${state.unit}`;
    const tools = made.get(key) ?? {
      language,
      texts,
      figures: createFigures(locale, state.unit, texts.units),
      change: store.change,
      openList: (source) => void opening.open(source),
      openListAs: (said) => void opening.openAs(said),
      stopOpening: opening.stop,
      print: options.print ?? (() => print()),
      work,
      keeper,
      keepsOnDevice: device === undefined ? "notHere" : !deviceIsShared || "notFromFile",
      samples,
      site: options.site ?? null,
      tagAddresses: options.tagAddresses ?? null,
    };
    made.set(key, tools);
    return tools;
  };

  let spoken: Language | null = null;
  const draw = (state: PageState): void => {
    const tools = toolsFor(state);
    if (tools.language !== spoken) options.onLanguage?.((spoken = tools.language));
    render(
      <PageContext.Provider value={tools}>
        <SaddleruleRoot state={state} />
      </PageContext.Provider>,
      floor,
    );
  };

  const stopGuarding = guardUnsaved(store);
  const stopDays = followDay(store);
  // What was kept is asked for before the first drawing, which most often finds it there.
  const begun = device === undefined ? Promise.resolve() : keeper.begin();
  let mounted = true;
  const drawNow = (): void => {
    if (mounted) draw(store.read());
  };
  // The first drawing waits for its words: a page that changes its language under the reader's eyes jumps.
  words.fetch(language, drawNow);
  let awaited = language;
  let ask: (state: PageState) => void = () => undefined;
  // At once, not at the next frame: whatever is pressed next must find the page as the last change left it.
  const stopFollowing = store.subscribe((state) => {
    ask(state);
    draw(state);
    if (state.language === awaited) return;
    awaited = state.language;
    words.fetch(awaited, drawNow);
  });
  void afterPaint().then(() => {
    if (!mounted) return;
    ask = keepAnswered(store, engines, questions);
    ask(store.read());
  });
  return {
    store,
    tools: () => toolsFor(store.read()),
    async openList(source) {
      await begun;
      if ((await mayCome(source.name)) && mounted) await opening.open(source);
    },
    unmount() {
      mounted = false;
      opening.stop();
      stopMinding();
      keeper.stop();
      stopFollowing();
      stopGuarding();
      stopDays();
      for (const engine of Object.values(engines)) engine.end();
      render(null, floor);
      floor.remove();
    },
  };
}

/** What was typed last is kept before the page is left, and looked at again when somebody comes back to it. */
function mindLeaving(keeper: FamilyKeeper): () => void {
  const seen = (): void => {
    if (document.visibilityState === "hidden") keeper.flush();
    else keeper.lookAgain();
  };
  document.addEventListener("visibilitychange", seen);
  addEventListener("pagehide", keeper.flush);
  return () => {
    document.removeEventListener("visibilitychange", seen);
    removeEventListener("pagehide", keeper.flush);
  };
}

/** Regions where a tape measure is read in inches first. */
function unitFor(locale: string): TypedUnit {
  return ["US", "LR", "MM"].includes(new Intl.Locale(locale).region ?? "") ? "in" : "cm";
}
