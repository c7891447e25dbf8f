// Steps on the list in hand: edits and their undo, an entry in the form, bike after bike in the workshop.
import { headNote, isTyped, listInHand } from "../state/list-desk";
import type { Done, Draft } from "../state/list-desk";
import {
  bikeBegun,
  changedCells,
  draftDropped,
  entryBegun,
  entryTaken,
  sentCells,
} from "../state/list-drafts";
import { listSteppedBack, viewed } from "../state/list-steps";
import type { DeskAsking } from "./desk-asking";
import { isRefusal } from "./refusal";
import type { EditAnswer, EntryAnswer, EntryChange, ListHead } from "./wire";
import type { ListShelf } from "./list-shelf";
import type { KeptBike } from "../state/page-state";
import { tapedCells } from "../state/request-building";
import type { Engine } from "./engine-door";

export interface ListEditing {
  edit: (changes: EntryChange[], done: Done) => Promise<boolean>;
  /** The newest step is taken back, or the one taken back last is done again. */
  step: (back: boolean) => Promise<void>;
  /** What the list says of itself; it stays in view where something of it cannot be read. */
  setHead: (head: ListHead) => Promise<void>;
  openEntry: (number: number) => Promise<void>;
  addEntry: () => Promise<void>;
  measure: () => Promise<void>;
  copyEntry: (number: number, name: string) => Promise<void>;
  removeEntry: (number: number, name: string) => Promise<void>;
  /** A taped bike that is on the rack by itself comes into the list; a list begins where none is open. */
  putTaped: (kept: KeptBike) => Promise<boolean>;
  /** The draft goes into the list, as a bike of its own or in the place of the one it was. */
  keepDraft: () => Promise<void>;
  /** The same, and the next bike of the workshop begins; false where the list would not have it. */
  nextBike: () => Promise<boolean>;
}

const headFields = ["title", "measured_on", "units", "currency"] as const;

export function listEditing(
  { state, desk, change, window, asked, stepped, inTurn }: DeskAsking,
  engine: Engine,
  shelf: Pick<ListShelf, "startFor">,
): ListEditing {
  const edit: ListEditing["edit"] = (changes, done) => stepped({ do: "edit", changes }, done);

  async function step(back: boolean): Promise<void> {
    const list = listInHand(desk());
    const changes = (back ? list?.undo : list?.redo)?.at(-1)?.changes;
    if (changes === undefined) return;
    // Entries may be at other places afterwards.
    if ((desk().draft?.number ?? null) !== null) change(draftDropped());
    const answer = await asked<EditAnswer>({ do: "edit", changes, ...window() });
    if (answer !== null) change(listSteppedBack(answer, back));
  }

  async function keep(draft: Draft): Promise<boolean> {
    const sent = sentCells(draft, desk().page?.answer.list?.units ?? null);
    const name = [draft.cells.name, draft.cells.id, draft.name].find((text) => text?.trim()) ?? "";
    if (draft.number === null) return edit([{ add: sent }], { what: "added", name });
    if (!isTyped(draft)) return true;
    return edit([{ set: changedCells(draft, sent), number: draft.number }], { what: "changed", name });
  }

  async function openEntry(number: number): Promise<void> {
    const entry = await asked<EntryAnswer>({ do: "entry", number });
    if (entry !== null) change(entryTaken(entry));
  }

  /** A mark for one more bike, by the pattern of the newest one; nothing where that has no figure to count. */
  async function markAfterNewest(): Promise<string> {
    const number = desk().page?.answer.counts.entries ?? 0;
    const newest = number === 0 ? null : await engine.ask({ do: "entry", number, next_id: true });
    return newest === null || isRefusal(newest) ? "" : ((newest as EntryAnswer).next_id ?? "");
  }

  return {
    edit: inTurn(edit),
    step: inTurn(step),
    setHead: inTurn(async (head: ListHead) => {
      if (!(await edit([{ list: head }], { what: "headed" }))) return;
      if (headFields.every((field) => headNote(desk(), field) === null)) change(viewed("entries"));
    }),
    openEntry: inTurn(openEntry),
    copyEntry: inTurn(async (number: number, name: string) => {
      if (await edit([{ copy: number }], { what: "copied", name })) await openEntry(number + 1);
    }),
    removeEntry: inTurn(async (number: number, name: string) => {
      if (await edit([{ remove: number }], { what: "removed", name })) change(draftDropped());
    }),
    addEntry: inTurn(async () => {
      change(entryBegun(await markAfterNewest()));
    }),
    measure: inTurn(async () => {
      const units = desk().page?.answer.list?.units;
      const unit = units === "cm" || units === "in" ? units : state().unit;
      change(bikeBegun(await markAfterNewest(), unit, null));
    }),
    keepDraft: inTurn(async () => {
      const { draft } = desk();
      if (draft !== null && (await keep(draft))) change(draftDropped());
    }),
    putTaped: inTurn(async (taped: KeptBike) => {
      const { bike } = taped;
      if (desk().inHand === 0) await shelf.startFor({ units: bike.unit });
      return edit([{ add: tapedCells(bike) }], { what: "added", name: bike.name, taped });
    }),
    nextBike: inTurn(async () => {
      const { draft } = desk();
      if (draft === null || !(await keep(draft))) return false;
      change(bikeBegun(await markAfterNewest(), draft.unit ?? "cm", draft.cells.kind ?? null));
      return true;
    }),
  };
}
