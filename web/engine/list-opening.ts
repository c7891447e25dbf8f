// Opening a list of bikes: a second engine reads the file and judges its bikes while the first one goes on with the list in
// use. What is told on the way can be stopped, and leaves everything as it was.
import { answered } from "../state/answers";
import type { Posed } from "../state/answers";
import { listOpened, listRefused, openingShown, openingStopped } from "../state/list-changes";
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";
import type { Engine, EngineDoor } from "./engine-door";
import type { OnProgress } from "./thread";
import { sent } from "./keep-answered";
import { rackQuestion } from "./rack-question";
import type { FileHandle } from "./file-source";
import { isRefusal, refused } from "./refusal";
import type { Refusal } from "./refusal";
import type { EntryChange, LengthUnit, ListRowsAnswer, LoadRequest, SaveAnswer, TableSketch } from "./wire";

type SaidColumns = NonNullable<LoadRequest["columns"]>;

export interface ListSource {
  name: string;
  sample: boolean;
  encoding?: "windows-1252";
  /** What its lengths count in, said by the reader where the table says nothing of it. */
  tableUnits?: LengthUnit;
  /** What its columns hold, said by the reader where their headings do not. */
  columns?: SaidColumns;
  /** Opened even where none of its bikes can be used. */
  toMend?: true;
  /** It was open when the page was left, and is beside others of its name as it was then. */
  kept?: true;
  /** It was kept with changes that are in no file of its own. */
  unsaved?: boolean;
  /** What was changed in it before it was kept. */
  edits?: EntryChange[][];
  /** It could not be fetched anew, and is the copy that was kept on that day. */
  keptOn?: string;
  /** The page named it, and no reader chose it: what is wrong with it is told where the bikes would be. */
  named?: true;
  /** The file itself, where the browser lets the page write into it later. */
  handle?: FileHandle;
  /** Rejects where the device does not give the file. What takes time tells how far it is, and ends when it is stopped. */
  bytes: (onProgress: OnProgress, stop: AbortSignal, told?: BytesHooks) => Promise<Uint8Array | Refusal>;
}

export interface BytesHooks {
  /** They are those of a copy that was kept on that day. */
  keptOn: (day: string) => void;
}

/** What a file does not say of itself, or how it is to be taken. */
export type SaidOfFile = Pick<ListSource, "encoding" | "tableUnits" | "columns" | "toMend">;

/** What else is to happen as a list comes into use. */
export interface ListOpeningHooks {
  /** The list in use is about to be replaced. */
  leaving: () => Promise<void>;
  opened: (source: ListSource, bytes: Uint8Array, answer: ListRowsAnswer) => void;
}

export interface ListOpening {
  /** A file that is still being opened is let go. */
  open: (source: ListSource) => Promise<void>;
  /** The file that was refused last, with what it does not say of itself. */
  openAs: (said: SaidOfFile) => Promise<void>;
  stop: () => void;
}

/** A list that has come into the second engine. */
interface Arrived {
  bytes: Uint8Array;
  /** They are no longer those of the file. */
  rewritten: boolean;
  list: ListRowsAnswer;
  table: TableSketch | undefined;
  judged: object;
  posed: Posed;
}

const firstPlaces = { from: 0, count: 48 };

/** Small files are there before anybody could read about them. */
const shownAfter = 300;

export function listOpening(store: Store<PageState>, door: EngineDoor, hooks: ListOpeningHooks): ListOpening {
  let underWay: AbortController | null = null;
  let last: ListSource | null = null;
  let asked: TableSketch | undefined;
  /** By the headings of tables: the same ones are not asked about twice. */
  const said = new Map<string, SaidColumns>();

  async function open(source: ListSource): Promise<void> {
    underWay?.abort();
    last = source;
    const stopping = (underWay = new AbortController());
    const { onProgress, over } = followed(store, source.name);
    let keptOn: string | undefined;
    const arrived = await arriving(source, stopping.signal, onProgress, {
      keptOn: (day) => (keptOn = day),
    });
    over();
    if (stopping.signal.aborted) return;
    underWay = null;
    if (isRefusal(arrived)) {
      store.change(listRefused(source.name, arrived, source.named ?? false));
      return;
    }
    const { bytes, rewritten, list, table, judged, posed } = arrived;
    store.change(listOpened(list, source.sample, table));
    store.change(answered(rackQuestion, posed, judged));
    const opened = rewritten ? withoutEncoding(source) : source;
    hooks.opened({ ...opened, ...(keptOn && { keptOn }) }, bytes, list);
  }

  async function arriving(
    source: ListSource,
    stop: AbortSignal,
    onProgress: OnProgress,
    told: BytesHooks,
  ): Promise<Arrived | Refusal> {
    const bytes = await source.bytes(onProgress, stop, told).catch(() => unreadable);
    if (!(bytes instanceof Uint8Array)) return bytes;
    let arrived: Arrived | Refusal = unreadable;
    await door.beside(async (second) => {
      arrived = await readAndJudged(second, source, bytes, onProgress);
      if (isRefusal(arrived) || stop.aborted) return false;
      await hooks.leaving();
      return true;
    }, stop);
    return arrived;
  }

  async function readAndJudged(
    engine: Engine,
    source: ListSource,
    bytes: Uint8Array,
    onProgress: OnProgress,
  ): Promise<Arrived | Refusal> {
    const { encoding, tableUnits, columns, toMend, kept, sample, edits = [] } = source;
    const list = await engine.ask(
      {
        do: "load",
        rows: firstPlaces,
        ...(encoding && { encoding }),
        ...(tableUnits && { table_units: tableUnits }),
        ...(columns && { columns }),
        ...((toMend ?? kept) && { to_mend: true }),
      },
      bytes,
      onProgress,
    );
    const { table } = list as Refusal;
    const before = table && !columns && said.get(headingsOf(table));
    if (before) return readAndJudged(engine, { ...source, columns: before }, bytes, onProgress);
    asked = table;
    if (isRefusal(list)) return list;
    onProgress(bytes.length, bytes.length);
    let edited: object = list;
    for (const changes of edits) {
      edited = await engine.ask({ do: "edit", changes, rows: firstPlaces });
      if (isRefusal(edited)) return edited;
    }
    const read = edited as ListRowsAnswer;
    const priced = await inCurrency(engine, read, store.read().currency);
    // As it will be asked once the list is in use: the engine keeps its answer.
    const posed = rackQuestion.pose(listOpened(priced, sample)(store.read()));
    const judged = await engine.ask(sent(posed));
    const rewritten = Boolean(tableUnits ?? columns) || priced !== list;
    const lasting = rewritten ? await savedBytes(engine, priced, edits.length > 0) : bytes;
    return { bytes: lasting, rewritten, list: priced, table, judged, posed };
  }

  return {
    open,
    openAs: async (words) => {
      if (asked && words.columns) said.set(headingsOf(asked), words.columns);
      if (last !== null) await open({ ...last, ...words });
    },
    stop() {
      underWay?.abort();
      underWay = null;
      store.change(openingStopped());
    },
  };
}

function headingsOf({ columns }: TableSketch): string {
  return columns.map(({ heading }) => heading).join("\t");
}

/** A list that names no currency has its prices in the one that the page around names. */
async function inCurrency(
  engine: Engine,
  read: ListRowsAnswer,
  currency: string | null,
): Promise<ListRowsAnswer> {
  if (currency === null || read.list?.currency !== null) return read;
  const change = { list: { currency } };
  const priced = await engine.ask({ do: "edit", changes: [change], rows: firstPlaces });
  return isRefusal(priced) ? read : (priced as ListRowsAnswer);
}

/** The list with what was said of it, which the file itself still lacks. */
async function savedBytes(engine: Engine, { list }: ListRowsAnswer, isEdited: boolean): Promise<Uint8Array> {
  // A table may not hold all that can be edited.
  const form = isEdited || list?.form === "json" ? "json" : "csv";
  const saved = (await engine.ask({ do: "save", form })) as SaveAnswer;
  return new TextEncoder().encode(saved.text);
}

function withoutEncoding(source: ListSource): ListSource {
  const plain = { ...source };
  delete plain.encoding;
  return plain;
}

/** Shows how far the reading is, once it takes a moment. */
function followed(store: Store<PageState>, name: string): { onProgress: OnProgress; over: () => void } {
  let now = { done: 0, total: 0 };
  let shown = false;
  const show = (): void => {
    shown = true;
    store.change(openingShown(name, now.done, now.total));
  };
  const timer = setTimeout(show, shownAfter);
  return {
    onProgress(done, total) {
      now = { done, total };
      if (shown) show();
    },
    over() {
      shown = false;
      clearTimeout(timer);
    },
  };
}

/** Moved, or taken away, since it was chosen. */
export const unreadable = refused("file_not_given");
