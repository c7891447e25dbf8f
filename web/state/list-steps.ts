// What happens to the lists on the desk: opened, stepped on, taken back, saved, put aside, closed.
import type { RefusalNote } from "../engine/refusal";
import type { EditAnswer, ListRowsAnswer, ListShow } from "../engine/wire";
import { emptyDesk, firstEntries, listInHand } from "./list-desk";
import type { DeskState, DeskView, Done, OpenList, SaveWish, Step } from "./list-desk";
import { withRack } from "./list-changes";
import type { PageState } from "./page-state";
import type { Change } from "./store";

type PageChange = Change<PageState>;

export function onDesk(part: (desk: DeskState, state: PageState) => Partial<DeskState>): PageChange {
  return (state) => ({ ...state, desk: { ...state.desk, ...part(state.desk, state) } });
}

function withList(desk: DeskState, change: (list: OpenList) => Partial<OpenList>): OpenList[] {
  return desk.open.map((list) => (list.key === desk.inHand ? { ...list, ...change(list) } : list));
}

/** What every answer about the list in hand tells: its rows, its name and its size. */
function withTold(desk: DeskState, answer: ListRowsAnswer): DeskState {
  const title = answer.list?.title ?? null;
  const open = withList(desk, () => ({ title, bikes: answer.counts.bikes }));
  return { ...desk, open, page: { answer, from: desk.rows.from }, refused: null };
}

/** The list has been changed, here and for the rack. */
function told(state: PageState, answer: ListRowsAnswer): PageState {
  return { ...withRack(state, answer), desk: withTold(state.desk, answer) };
}

/** The rows of the list as it is; nothing has happened to it. */
export function entriesTold(answer: ListRowsAnswer, from: number): PageChange {
  return onDesk(() => ({ page: { answer, from } }));
}

/** A list comes into hand: one that was made or opened, or one that was put aside. */
export function listTaken(
  key: number,
  answer: ListRowsAnswer,
  made?: Pick<OpenList, "file" | "sample" | "keptOn" | "named"> & Partial<Pick<OpenList, "savedAt">>,
): PageChange {
  return (state) => {
    const { desk } = state;
    const list = {
      key,
      title: null,
      bikes: 0,
      sample: false,
      keptOn: null,
      file: null,
      undo: [],
      redo: [],
      savedAt: 0,
    };
    const open = made === undefined ? desk.open : [...desk.open, { ...list, ...made }];
    const { file = null } = open.find((list) => list.key === key) ?? {};
    const form = /\.(csv|tsv|txt)$/i.test(file ?? "") ? "csv" : "json";
    return {
      ...state,
      desk: withTold({ ...emptyDesk, open, inHand: key, save: { ...emptyDesk.save, form } }, answer),
    };
  };
}

export function listStepped(answer: EditAnswer, done: Done, key: number): PageChange {
  return (state) => {
    const next = told(state, answer);
    const step: Step = { key, done, changes: answer.undo };
    const open = withList(next.desk, ({ undo }) => ({ undo: [...undo, step], redo: [] }));
    // A new entry may be far down the list: the focus goes to the bar that speaks of it.
    const lastNumber = done.what === "added" ? null : next.desk.lastNumber;
    return {
      ...withTaped(next, done, false),
      desk: { ...next.desk, open, said: { done, back: false }, lastNumber },
    };
  };
}

/** The newest step is taken back, or the one taken back last is done again. */
export function listSteppedBack(answer: EditAnswer, back: boolean): PageChange {
  return (state) => {
    const list = listInHand(state.desk);
    const step = (back ? list?.undo : list?.redo)?.at(-1);
    if (step === undefined) return state;
    const next = told(state, answer);
    const moved: Step = { ...step, changes: answer.undo };
    const open = withList(next.desk, ({ undo, redo }) =>
      back
        ? { undo: undo.slice(0, -1), redo: [...redo, moved] }
        : { undo: [...undo, moved], redo: redo.slice(0, -1) },
    );
    return {
      ...withTaped(next, step.done, back),
      desk: { ...next.desk, open, said: { done: step.done, back } },
    };
  };
}

/** A taped bike is on the rack by itself, or in the list, and never twice. */
function withTaped(state: PageState, { taped }: Done, byItself: boolean): PageState {
  if (taped === undefined) return state;
  const others = state.tape.kept.filter(({ id }) => id !== taped.id);
  return { ...state, tape: { ...state.tape, kept: byItself ? [...others, taped] : others } };
}

export function deskRefused(refused: RefusalNote): PageChange {
  return onDesk(() => ({ refused }));
}

/** A copy that leaves something out is a file too, and the list stays unsaved. */
export function listSaved(file: string, whole: boolean): PageChange {
  return onDesk((desk) => ({
    open: whole ? withList(desk, ({ undo }) => ({ file, savedAt: undo.at(-1)?.key ?? 0 })) : desk.open,
    save: { ...desk.save, savedAs: file, failed: false },
  }));
}

export function saveFailed(): PageChange {
  return onDesk(({ save }) => ({ save: { ...save, failed: true } }));
}

export function closingAsked(closing: number | null): PageChange {
  return onDesk(() => ({ closing }));
}

export function listClosed(key: number): PageChange {
  return onDesk(({ open, inHand }) => ({
    open: open.filter((list) => list.key !== key),
    closing: null,
    ...(inHand === key ? { inHand: 0, page: null, said: null, draft: null, merge: null } : {}),
  }));
}

/** The list that was closed was the only one. */
export function noListLeft(): PageChange {
  return (state) => ({
    ...state,
    answers: {},
    list: { ...state.list, loaded: null, edition: state.list.edition + 1, sample: false },
  });
}

export function viewed(view: DeskView): PageChange {
  return onDesk(({ save }) => ({ view, refused: null, save: { ...save, ...unsaid, only: "all" } }));
}

/** Nothing is said yet of what was saved. */
const unsaid = { savedAs: null, failed: false } as const;

export function shown(show: ListShow): PageChange {
  return onDesk(() => ({ show, rows: firstEntries }));
}

export function sought(find: string): PageChange {
  return onDesk(() => ({ find, rows: firstEntries }));
}

/** Entries are fetched when these places come near the screen. */
export function entriesNeared(first: number, end: number): PageChange {
  return (state) => {
    const { from, count } = state.desk.rows;
    if (first >= from && end <= from + count) return state;
    const wanted = Math.max(count, end - first);
    const before = Math.floor((wanted - (end - first)) / 2);
    const rows = { from: Math.max(0, first - before), count: wanted };
    return onDesk(() => ({ rows }))(state);
  };
}

export function saveWished(part: Partial<SaveWish>): PageChange {
  return (state) => {
    const { save } = state.desk;
    const wished = { ...save, ...part };
    const isNews =
      wished.form !== save.form || wished.separator !== save.separator || wished.only !== save.only;
    return isNews ? onDesk(() => ({ save: { ...wished, ...unsaid } }))(state) : state;
  };
}
