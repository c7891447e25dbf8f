// Puts Saddlerule into an element of any document. Nothing outside that element is touched.
import { render } from "preact";
import { engineDoor } from "../engine/engine-door";
import { engineOpener } from "../engine/engine-opening";
import { keepAnswered } from "../engine/keep-answered";
import { listWork } from "../engine/list-desk-work";
import { guardUnsaved } from "./guard-unsaved";
import { listOpening } from "../engine/list-opening";
import { questions } from "../engine/questions";
import type { TypedUnit } from "../engine/wire-requests";
import { createFigures } from "../figures/format-figures";
import { familyKeeper } from "../keeping/family-keeper";
import type { FamilyKeeper } from "../keeping/family-keeper";
import { deviceStore } from "../keeping/indexed-store";
import { listsAtHand } from "../keeping/lists-at-hand";
import { firstState } from "../state/page-state";
import type { PageState } from "../state/page-state";
import { createStore } from "../state/store";
import sheet from "../style/saddlerule.css";
import { languageFor, localeFor } from "../texts/languages";
import type { Language } from "../texts/languages";
import type { PackedLanguages } from "../texts/translations";
import { afterPaint } from "../engine/after-paint";
import { PageContext } from "./page-context";
import type { PageTools } from "./page-context";
import { SaddleruleRoot } from "./saddlerule-root";
import { sealedRoom } from "./seal-style";
import { spokenWords } from "./spoken-words";

export interface SaddleruleOptions {
  /** Fetches the engine's wasm, packed as unpack.ts has it; called once, when the engine is first asked. */
  packedEngine: () => Promise<Uint8Array>;
  /** Fetches or unpacks the words of the languages other than English; called once, when one is first wanted. */
  packedLanguages: () => Promise<PackedLanguages>;
  /** Called with the language whose words are on the page, whenever it changes. */
  onLanguage?: (language: Language) => void;
  /** YYYY-MM-DD; the device's date when left out. */
  today?: string;
  /** The unit to begin with; by the reader's region when left out. */
  unit?: TypedUnit;
}

/** Shows Saddlerule inside `host`. Returns the way to take it away again. */
export function mountSaddlerule(host: Element, options: SaddleruleOptions): () => void {
  const language = languageFor(navigator.languages);
  const unit = options.unit ?? unitFor(localeFor(language, navigator.languages));
  const store = createStore(firstState(options.today ?? dateOnDevice(), unit, language));
  const words = spokenWords(options.packedLanguages);
  const opener = engineOpener(options.packedEngine);
  // One holds the list; the other judges single bikes beside it.
  const engines = { rack: engineDoor(opener.inThread), bench: engineDoor(opener.onPage) };
  const floor = sealedRoom(host, sheet);

  const work = listWork(store, engines.rack);
  const opening = listOpening(store, engines.rack, {
    leaving: work.putAside,
    opened: work.opened,
  });
  const keeper = familyKeeper(store, deviceStore(), listsAtHand(store, work, opening));
  const stopMinding = mindLeaving(keeper);
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
      work,
      keeper,
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
  // What was kept is asked for before the first drawing, which most often finds it there.
  void keeper.begin();
  let mounted = true;
  const drawNow = (): void => {
    if (mounted) draw(store.read());
  };
  // The first drawing waits for its words: a page that changes its language under the reader's eyes jumps.
  words.fetch(language, drawNow);
  let awaited = language;
  // At once, not at the next frame: whatever is pressed next must find the page as the last change left it.
  const stopDrawing = store.subscribe((state) => {
    draw(state);
    if (state.language === awaited) return;
    awaited = state.language;
    words.fetch(awaited, drawNow);
  });
  let stopAsking = (): void => undefined;
  void afterPaint().then(() => {
    if (mounted) stopAsking = keepAnswered(store, engines, questions);
  });
  return () => {
    mounted = false;
    stopAsking();
    stopMinding();
    keeper.stop();
    stopDrawing();
    stopGuarding();
    render(null, floor);
    floor.remove();
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

function dateOnDevice(): string {
  const now = new Date();
  const twoDigits = (number: number): string => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
}
