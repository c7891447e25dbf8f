// One entry as it is typed, in the form or bike after bike in the workshop.
import type { TypedUnit } from "../engine/narrowed";
import type { Cells, EntryAnswer } from "../engine/wire";
import type { Draft } from "./list-desk";
import { onDesk } from "./list-steps";
import { lengthText } from "./request-building";
import type { PageState } from "./page-state";
import type { Change } from "./store";

type PageChange = Change<PageState>;

/** Fields that hold a length. */
export const lengthFields = [
  "saddle_lowest",
  "saddle_highest",
  "standover",
  "bottom_bracket_height",
  "lever_reach",
  "crank",
];

function emptyDraft(cells: Cells, inHand: string, unit: TypedUnit | null): Draft {
  return { number: null, name: null, before: {}, cells, source: null, unit, inHand };
}

export function entryTaken(entry: EntryAnswer): PageChange {
  return onDesk(() => ({
    view: "entry",
    lastNumber: entry.number,
    draft: {
      ...emptyDraft(entry.cells, "", null),
      number: entry.number,
      name: entry.name ?? entry.id,
      before: entry.cells,
      source: entry.source,
    },
  }));
}

export function entryBegun(id: string): PageChange {
  return onDesk(() => ({ view: "entry", draft: emptyDraft(id === "" ? {} : { id }, "id", null) }));
}

/** The workshop's next bike: the kind and the unit of the last one, an id of its own, nothing else. */
export function bikeBegun(id: string, unit: TypedUnit, kind: string | null): PageChange {
  const cells: Cells = { ...(id === "" ? {} : { id }), ...(kind === null ? {} : { kind }) };
  return onDesk(() => ({ view: "workshop", draft: emptyDraft(cells, "saddle_lowest", unit) }));
}

function onDraft(part: (draft: Draft) => Partial<Draft>): PageChange {
  return onDesk(({ draft }) => (draft === null ? {} : { draft: { ...draft, ...part(draft) } }));
}

export function typed(cells: Cells): PageChange {
  return onDraft((draft) => ({ cells: { ...draft.cells, ...cells } }));
}

export function fieldInHand(inHand: string): PageChange {
  return (state) => (state.desk.draft?.inHand === inHand ? state : onDraft(() => ({ inHand }))(state));
}

export function measuredIn(unit: TypedUnit): PageChange {
  return onDraft(() => ({ unit }));
}

export function draftDropped(): PageChange {
  return onDesk(() => ({ draft: null, view: "entries" }));
}

/** The cells as the engine reads them: a bare length says its unit where that is not the list's. */
export function sentCells({ cells, unit }: Draft, listUnits: string | null): Cells {
  if (unit === null || unit === listUnits) return cells;
  const sent = { ...cells };
  for (const field of lengthFields) {
    const text = lengthText(cells[field] ?? "", unit);
    if (text !== null) sent[field] = text;
  }
  return sent;
}

/** Only what is not as it was: the rest of the entry stays as it is. */
export function changedCells({ before }: Draft, sent: Cells): Cells {
  return Object.fromEntries(
    Object.entries(sent).filter(([field, text]) => (text ?? "") !== (before[field] ?? "")),
  );
}
