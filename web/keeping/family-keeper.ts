// Keeping what a family typed: on the device as long as that is asked for, in a file, or not at all any more.
import { firstState, noList } from "../state/page-state";
import type { PageState } from "../state/page-state";
import type { DeskState } from "../state/list-desk";
import { onDesk } from "../state/list-steps";
import type { Store } from "../state/store";
import { flag, listOf, oneOf, shape, text, Unexpected, whereSaid } from "./checked";
import type { Reader } from "./checked";
import { StillHeld } from "./device-store";
import type { DeviceStore, Stored } from "./device-store";
import { fileText, readFileText } from "./family-file";
import {
  family,
  familyBroughtBack,
  familyIn,
  formVersion,
  isFault,
  readVersioned,
  wishesBroughtBack,
} from "./family-form";
import type { Family, FormFault, ListFile, Whole } from "./family-form";
import { keepingIs, measured, waitsForWord } from "./keeping-state";
import type { KeepingState, KeepingTrouble } from "./keeping-state";
import type { ListsAtHand } from "./lists-at-hand";
import type { EntryChange } from "../engine/wire";

export interface FamilyKeeper {
  /** Brings back what is on the device, if there is anything. */
  begin: () => Promise<void>;
  /** The switch: on keeps from now on, off clears the device. */
  keepOnDevice: (on: boolean) => void;
  /** Of two records that differ, what is here stays, or what is on the device. */
  settle: (stays: "here" | "device") => void;
  /** What is not on the device yet is written at once. */
  flush: () => void;
  /** Somebody came back to this page: another one may have written meanwhile. */
  lookAgain: () => void;
  fileToSave: () => Promise<{ name: string; text: string; measured: string }>;
  openFile: (file: Pick<File, "name" | "text">) => Promise<void>;
  /** Brings back what was here before a file was opened. */
  undoOpening: () => Promise<void>;
  wipe: () => Promise<void>;
  stop: () => void;
}

interface Kept {
  family: Family;
  lists: ListFile[];
}

/** Milliseconds: long enough for a word to be typed, and the longest that anything waits while somebody goes on typing. */
const settled = 400;
const longestWait = 2000;

const bytes: Reader<Uint8Array> = (value, where) => {
  if (value instanceof Uint8Array) return value;
  throw new Unexpected(where);
};

/** The engine looks at each change once more; what was kept before lists had edits has none. */
const edits = whereSaid<ListFile["edits"]>(listOf(listOf((change) => change as EntryChange)), []);

const listFiles = listOf(
  shape<ListFile>({
    name: text(),
    sample: flag,
    inHand: flag,
    unsaved: whereSaid(flag, false),
    encoding: oneOf("windows-1252", null),
    bytes,
    edits,
  }),
);

function readStored({ value, lists }: Stored): Whole<Kept> | FormFault {
  return readVersioned(value, (whole, where, lost) => ({
    family: family(whole, where, lost),
    lists: listFiles(lists, "lists", lost),
  }));
}

export function familyKeeper(
  store: Store<PageState>,
  /** null: there is no place on this device. */
  device: DeviceStore | null,
  lists: ListsAtHand,
  /** Other pages can read what is there: what an earlier version kept is brought back, and nothing is put there. */
  isShared = false,
): FamilyKeeper {
  /** Of the record that this page wrote or read last; 0: of none. */
  let revision = 0;
  /** What it holds. */
  let written = { family: textOf(store.read()), lists: lists.mark(store.read()) };
  let before: (Kept & { desk: Pick<DeskState, "draft" | "view"> }) | null = null;
  /** Something kept is on its way into the page, in several steps of which none is kept. */
  let showing = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** When the first change came that is not written yet. */
  let changedAt: number | null = null;
  let turn: Promise<void> = Promise.resolve();

  /** A reading that is still empty is nothing to keep: every day brings one. */
  function textOf(state: PageState): string {
    const { riders, ...others } = familyIn(state);
    const typed = riders.map(({ rider, wants }) => {
      const readings = rider.readings.filter(({ figure }) => figure.text.trim() !== "");
      return { rider: { ...rider, readings }, wants };
    });
    return JSON.stringify({ ...others, riders: typed });
  }

  /** Says it once: a sentence that is said again is read aloud again. */
  function tell(part: Pick<KeepingState, "trouble"> & Partial<KeepingState>): void {
    const { keeping } = store.read();
    const news = Object.entries(part).some(([what, is]) => keeping[what as keyof KeepingState] !== is);
    if (news) store.change(keepingIs(part));
  }

  /** One piece of work with the device after the other; what goes wrong is said, and ends there. */
  function inTurn(work: (device: DeviceStore) => Promise<void>): void {
    if (device === null) {
      store.change(keepingIs({ on: false, trouble: "missing" }));
      return;
    }
    turn = turn
      .then(() => work(device))
      .catch((cause: unknown) => {
        const isFull = (cause as Error | null)?.name === "QuotaExceededError";
        tell({ trouble: cause instanceof StillHeld ? "held" : isFull ? "full" : "refused" });
      });
  }

  function differs(state: PageState): boolean {
    return textOf(state) !== written.family || lists.mark(state) !== written.lists;
  }

  async function write(device: DeviceStore, over: number | null): Promise<void> {
    const state = store.read();
    const now = { family: textOf(state), lists: lists.mark(state) };
    const sameLists = over === revision && revision > 0 && now.lists === written.lists;
    const made = await device.write(
      over,
      { version: formVersion, ...familyIn(state) },
      sameLists ? undefined : await lists.filesWithEdits(),
    );
    if (made !== null) {
      revision = made;
      written = now;
      tell({ written: true, trouble: null });
    } else if ((await device.read()) !== null) {
      tell({ trouble: "elsewhere" });
    } else {
      // Switched off in another page: it must not come back by itself.
      revision = 0;
      store.change(keepingIs({ on: false, trouble: "gone" }));
    }
  }

  /** false: a list could not be opened again. */
  async function show(kept: Kept): Promise<boolean> {
    showing = true;
    store.change(familyBroughtBack(kept.family));
    const whole = await lists.replaceWith(kept.lists);
    showing = false;
    store.change(wishesBroughtBack(kept.family));
    return whole;
  }

  async function showStored(stored: Stored): Promise<void> {
    const kept = readStored(stored);
    revision = stored.revision;
    if (isFault(kept)) {
      store.change(keepingIs({ on: !isShared, written: true, trouble: kept.code as KeepingTrouble }));
      return;
    }
    const whole = await show(kept);
    written = { family: textOf(store.read()), lists: lists.mark(store.read()) };
    const { lost } = kept;
    const trouble = !whole ? "damaged" : isShared ? "left" : lost.length > 0 ? "mended" : null;
    if (lost.length > 0) store.change(keepingIs({ said: { what: "mended", lost } }));
    tell({ on: !isShared, written: true, trouble });
  }

  const stop = store.subscribe((state) => {
    const { on, trouble } = state.keeping;
    if (!on || showing || waitsForWord(trouble) || !differs(state)) return;
    clearTimeout(timer);
    changedAt ??= Date.now();
    timer = setTimeout(flush, Math.max(0, Math.min(settled, changedAt + longestWait - Date.now())));
  });

  function flush(): void {
    clearTimeout(timer);
    changedAt = null;
    inTurn(async (device) => {
      const state = store.read();
      const { on, trouble } = state.keeping;
      if (on && !showing && !waitsForWord(trouble) && differs(state)) await write(device, revision);
    });
  }

  function keepOnDevice(on: boolean): void {
    store.change(keepingIs({ on, written: false, trouble: null, said: null }));
    clearTimeout(timer);
    inTurn(async (device) => {
      if (on) {
        await write(device, revision);
        return;
      }
      await device.clear();
      revision = 0;
    });
  }

  return {
    async begin() {
      const stored = await device?.read().catch(() => null);
      if (stored == null) return;
      revision = stored.revision;
      // Somebody was quicker than the device: neither is thrown away unasked.
      if (differs(store.read()))
        store.change(keepingIs({ on: !isShared, written: true, trouble: "elsewhere" }));
      else await showStored(stored);
    },
    keepOnDevice,
    settle(stays) {
      if (isShared && stays === "here") {
        keepOnDevice(false);
        return;
      }
      inTurn(async (device) => {
        const stored = stays === "here" ? null : await device.read();
        if (stored === null) await write(device, null);
        else await showStored(stored);
      });
    },
    flush,
    lookAgain() {
      const state = store.read();
      if (!state.keeping.on || state.keeping.trouble !== null || differs(state)) return;
      inTurn(async (device) => {
        const stored = await device.read();
        if (stored === null) store.change(keepingIs({ on: false, trouble: "gone" }));
        else if (stored.revision !== revision && !differs(store.read())) await showStored(stored);
      });
    },
    async fileToSave() {
      const state = store.read();
      const name = `saddlerule-${state.today}.json`;
      return { name, text: fileText(familyIn(state), await lists.files()), measured: measured(state) };
    },
    async openFile(file) {
      const kept = await file.text().then(readFileText, (): FormFault => ({ code: "foreign", where: "" }));
      if (isFault(kept)) {
        store.change(keepingIs({ said: { what: "fault", file: file.name, fault: kept } }));
        return;
      }
      const { draft, view } = store.read().desk;
      before = { family: familyIn(store.read()), lists: await lists.files(), desk: { draft, view } };
      const whole = await show(kept);
      const lost = whole ? kept.lost : [...kept.lost, "lists"];
      const inFile = measured(store.read());
      store.change(keepingIs({ inFile, said: { what: "opened", file: file.name, lost } }));
    },
    async undoOpening() {
      if (before === null) return;
      const { desk } = before;
      await show(before);
      store.change(onDesk(() => desk));
      before = null;
      store.change(keepingIs({ said: { what: "undone" } }));
    },
    async wipe() {
      clearTimeout(timer);
      store.change(keepingIs({ on: false }));
      await lists.replaceWith([]);
      before = null;
      revision = 0;
      store.change(({ today, unit, language, currency, list, rider }) => ({
        ...firstState(today, unit, language, rider.population),
        currency,
        screen: { name: "keep" },
        list: { ...noList, edition: list.edition + 1 },
      }));
      if (device !== null) inTurn((device) => device.clear());
      await turn;
      if (store.read().keeping.trouble !== "held") store.change(keepingIs({ said: { what: "wiped" } }));
    },
    stop() {
      clearTimeout(timer);
      stop();
    },
  };
}
