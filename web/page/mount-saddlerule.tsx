// Puts Saddlerule into an element of any document. Nothing outside that element is touched.
import { render } from "preact";
import { engineDoor } from "../engine/engine-door";
import type { EngineOpener } from "../engine/engine-opening";
import { keepAnswered } from "../engine/keep-answered";
import { deskAsking } from "../engine/desk-asking";
import { fileSource, unpackedSource } from "../engine/file-source";
import type { ListWork } from "../engine/list-desk-work";
import { listShelf } from "../engine/list-shelf";
import { followDay } from "./follow-day";
import { guardUnsaved } from "./guard-unsaved";
import type { TagAddresses } from "../embedding/tag-address";
import { nothingSaid, screenSaid } from "../embedding/settings";
import type { Settings } from "../embedding/settings";
import { listOpening } from "../engine/list-opening";
import type { ListSource } from "../engine/list-opening";
import { questions } from "../engine/questions";
import { rackQuestion } from "../engine/rack-question";
import { answerTo } from "../state/answers";
import type { Question } from "../state/answers";
import type { Sample } from "../engine/samples";
import type { TypedUnit } from "../engine/narrowed";
import { createFigures } from "../figures/format-figures";
import type { FamilyKeeper } from "../keeping/family-keeper";
import type { DeviceStore } from "../keeping/device-store";
import { firstState } from "../state/page-state";
import type { PageState } from "../state/page-state";
import { createStore } from "../state/store";
import { tagOf } from "../state/suits";
import type { Store } from "../state/store";
import sheet from "../style/saddlerule.css";
import { languageFor, localeFor } from "../texts/languages";
import type { Language, OtherLanguage } from "../texts/languages";
import type { Texts } from "../texts/texts";
import { afterPaint } from "../engine/after-paint";
import { afterDraft } from "./after-draft";
import { deviceDay } from "./device-day";
import { PageContext } from "./page-context";
import type { PageTools, SiteParts } from "./page-context";
import { SaddleruleRoot } from "./saddlerule-root";
import type { LaterParts, LaterSource } from "./later-parts";
import { alsoSealed, sealedRoom } from "./seal-style";
import { populationFor } from "./region";
import { spokenWords } from "./spoken-words";
import type { SpokenWords } from "./spoken-words";

export interface SaddleruleOptions {
  /** Where engines come from; several of these may share one. */
  engines: EngineOpener;
  /** Fetches or unpacks the words of a language other than English; called once for each, when it is first wanted. */
  packedWords: (language: OtherLanguage) => Promise<string>;
  /** All but the first screens. */
  later: LaterSource;
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
  /** Resolves once everything is here that may come after the first screens; rejects where it does not come. */
  whole: () => Promise<unknown>;
  /** The texts in English, as far as they are here. */
  inEnglish: () => Texts;
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
  const words: SpokenWords = spokenWords(options.packedWords);
  const { engines: opener, device, deviceIsShared = false, samples } = options;
  // One holds the list; the other judges single bikes beside it.
  const engines = { rack: engineDoor(opener.inThread), bench: engineDoor(opener.onPage) };
  // A thread starts while the page is drawn for the first time.
  engines.rack.begin();
  const floor = sealedRoom(host, sheet);

  const asking = deskAsking(store, engines.rack);
  const shelf = listShelf(asking);
  const opening = listOpening(store, engines.rack, {
    leaving: shelf.putAside,
    opened: (source, ...arrived) => {
      shelf.opened(source, ...arrived);
      const { handle } = source;
      const { inHand } = asking.desk();
      if (handle === undefined) return;
      later.whenHere().then(
        () => laterWork().work.cameFrom(inHand, handle),
        () => undefined,
      );
    },
  });
  const mayCome = afterDraft(store);
  let behind: { work: ListWork; keeper: FamilyKeeper } | null = null;
  const arrived = (parts: LaterParts, more?: string): void => {
    if (more !== undefined) alsoSealed(host, more);
    const lists = parts.listsAtHand(store, shelf, opening, engines.rack);
    behind = {
      work: parts.listWork(store, engines.rack, asking, shelf, options.pageWithList),
      keeper: parts.familyKeeper(store, device ?? null, lists, deviceIsShared),
    };
  };
  const later = options.later(words, arrived, () => drawNow());
  const readable = (source: ListSource): ListSource =>
    unpackedSource(source, async (bytes) => (await later.whenHere()).unpackedBytes(bytes));
  const laterWork = (): { work: ListWork; keeper: FamilyKeeper } => {
    if (behind === null) throw new Error("a part of the page is before its time");
    return behind;
  };
  // The same object as long as unit and language are the same: all that uses it would be drawn again with another.
  const made = new Map<string, PageTools>();
  const toolsFor = (state: PageState): PageTools => {
    const { language, locale, texts } = words.now(state.language);
    const nowLater = later.now();
    const key = `${language} ${state.unit}`;
    const known = made.get(key);
    if (known?.texts === texts && known.later === nowLater) return known;
    const tools: PageTools = {
      language,
      texts,
      figures: createFigures(locale, state.unit, texts.units),
      change: store.change,
      openList: (source) => void opening.open(source),
      openListAs: (said) => void opening.openAs(said),
      stopOpening: opening.stop,
      sourceOf: (file) => readable(fileSource(file)),
      later: nowLater,
      print: options.print ?? (() => print()),
      get work() {
        return laterWork().work;
      },
      get keeper() {
        return laterWork().keeper;
      },
      keepsOnDevice: device === undefined ? "notHere" : !deviceIsShared || "notFromFile",
      samples,
      site: options.site ?? null,
      tagAddresses: options.tagAddresses ?? null,
    };
    made.set(key, tools);
    return tools;
  };

  let mounted = true;
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

  let fetching = later.now().parts !== null;
  /** Once the first verdict is on the page, and nobody waits for anything. */
  const fetchLater = (): void => {
    if (fetching) return;
    fetching = true;
    void afterPaint().then(() => {
      if (mounted) later.now().fetch();
    });
  };
  const drawNow = (): void => {
    if (mounted) draw(store.read());
  };

  const stopMinding = device == null ? () => undefined : mindLeaving(laterWork().keeper);
  const stopGuarding = guardUnsaved(store);
  const stopDays = followDay(store);
  // What was kept is asked for before the first drawing, which most often finds it there.
  const begun = device === undefined ? Promise.resolve() : laterWork().keeper.begin();
  // The first drawing waits for its words: a page that changes its language under the reader's eyes jumps.
  words.fetch(language, drawNow);
  let awaited = language;
  const asks: ((state: PageState) => void)[] = [];
  const keepAsked = (questions: Question<object>[]): void => {
    if (!mounted) return;
    const ask = keepAnswered(store, engines, questions);
    asks.push(ask);
    ask(store.read());
  };
  // At once, not at the next frame: whatever is pressed next must find the page as the last change left it.
  const stopFollowing = store.subscribe((state) => {
    for (const ask of asks) ask(state);
    draw(state);
    if (answerTo(state, rackQuestion).answer !== null) fetchLater();
    if (state.language === awaited) return;
    awaited = state.language;
    words.fetch(awaited, drawNow);
  });
  void afterPaint().then(() => {
    keepAsked(questions);
    // At once where they are here: what a screen shows waits for its answer.
    const { parts } = later.now();
    if (parts !== null) keepAsked(parts.questions);
    else void later.firstHere.then(({ questions }) => keepAsked(questions));
  });
  return {
    store,
    whole: later.whenHere,
    inEnglish: () => words.now("en").texts,
    tools: () => toolsFor(store.read()),
    async openList(source) {
      await begun;
      if ((await mayCome(source.name)) && mounted) await opening.open(readable(source));
    },
    unmount() {
      mounted = false;
      opening.stop();
      stopMinding();
      behind?.keeper.stop();
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
