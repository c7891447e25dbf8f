// Puts Saddlerule into an element of any document. Nothing outside that element is touched.
import { render } from "preact";
import { openEngine } from "../../wasm-bindings/engine-client.js";
import { engineDoor } from "../engine/engine-door";
import type { Engine } from "../engine/engine-door";
import { keepAnswered } from "../engine/keep-answered";
import { openList } from "../engine/list-opening";
import type { ListSource } from "../engine/list-opening";
import { questions } from "../engine/questions";
import type { TypedUnit } from "../engine/wire-requests";
import { createFigures } from "../figures/format-figures";
import { firstState } from "../state/page-state";
import type { PageState } from "../state/page-state";
import { createStore } from "../state/store";
import sheet from "../style/saddlerule.css";
import { english } from "../texts/en";
import { afterPaint } from "../engine/after-paint";
import { PageContext } from "./page-context";
import type { PageTools } from "./page-context";
import { SaddleruleRoot } from "./saddlerule-root";
import { sealedRoom } from "./seal-style";

export interface SaddleruleOptions {
  /** Fetches or unpacks the engine's wasm; called once, when the engine is first asked. */
  engineBytes: () => Promise<ArrayBuffer>;
  /** YYYY-MM-DD; the device's date when left out. */
  today?: string;
  /** The unit to begin with; by the reader's region when left out. */
  unit?: TypedUnit;
}

/** Shows Saddlerule inside `host`. Returns the way to take it away again. */
export function mountSaddlerule(host: Element, options: SaddleruleOptions): () => void {
  const texts = english;
  const locale = localeFor(texts.language);
  const store = createStore(firstState(options.today ?? dateOnDevice(), options.unit ?? unitFor(locale)));
  const engines = openEngines(options.engineBytes);
  const floor = sealedRoom(host, sheet);

  const open = (source: ListSource): void => void openList(store, engines.rack, source);
  // The same object as long as the unit is the same: everything that uses it would be drawn again with another.
  const made: Partial<Record<TypedUnit, PageTools>> = {};
  const toolsIn = (unit: TypedUnit): PageTools =>
    (made[unit] ??= {
      texts,
      figures: createFigures(locale, unit, texts.units),
      change: store.change,
      openList: open,
    });

  const draw = (state: PageState): void => {
    render(
      <PageContext.Provider value={toolsIn(state.unit)}>
        <SaddleruleRoot state={state} />
      </PageContext.Provider>,
      floor,
    );
  };

  draw(store.read());
  // At once, not at the next frame: whatever is pressed next must find the page as the last change left it.
  const stopDrawing = store.subscribe(draw);
  let mounted = true;
  let stopAsking = (): void => undefined;
  void afterPaint().then(() => {
    if (mounted) stopAsking = keepAnswered(store, engines, questions);
  });
  return () => {
    mounted = false;
    stopAsking();
    stopDrawing();
    render(null, floor);
    floor.remove();
  };
}

/** Both engines run the same module: one holds the list, the other judges single bikes beside it. */
function openEngines(engineBytes: () => Promise<ArrayBuffer>): { rack: Engine; bench: Engine } {
  let compiling: Promise<WebAssembly.Module> | null = null;
  const open = async (): Promise<Engine> => {
    compiling ??= engineBytes().then((bytes) => WebAssembly.compile(bytes));
    return openEngine(await compiling);
  };
  return { rack: engineDoor(open), bench: engineDoor(open) };
}

/** The reader's own form of the page's language, such as en-GB. */
function localeFor(language: string): string {
  return navigator.languages.find((wanted) => wanted.split("-")[0] === language) ?? language;
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
