// Steps of a club's morning, the plan, and the way back from every step.
import type { TypedUnit } from "../engine/narrowed";
import type { RefusalNote } from "../engine/refusal";
import type { ClubDayAnswer, ReadRidersAnswer, TableRow, TextAnswer } from "../engine/wire";
import { lastAnswer } from "./answers";
import type { Question } from "./answers";
import type { PageState } from "./page-state";
import type { Change } from "./store";
import { emptyDraft, emptyMorning } from "./club-day";
import type { ClubState, Morning, PairIds } from "./club-day";

const mostSteps = 100;

function morningOf({ riders, gone, absent, fixed, never, rounds, set }: ClubState): Morning {
  return { riders, gone, absent, fixed, never, rounds, set };
}

const club =
  (by: (club: ClubState) => Partial<ClubState>): Change<PageState> =>
  (state) => ({ ...state, club: { ...state.club, ...by(state.club) } });

/** Who rides which bike, as things are settled. */
export const planQuestion: Question<ClubDayAnswer> = {
  name: "plan",
  engine: "rack",
  pose: ({ club, today, screen, list }) => {
    if (screen.name !== "club" || club.riders.length === 0) return null;
    const here = club.riders.filter(({ id }) => !club.gone.includes(id));
    return {
      request: {
        do: "club_day",
        today,
        riders: here.map(({ id, rider }) => ({ id, rider })),
        absent: club.absent,
        available_only: true,
        locked: club.fixed.map(({ rider, bike }) => ({ rider, bike })),
        not: club.never.filter(({ rider }) => here.some(({ id }) => id === rider)),
        before: club.before,
        rounds: club.rounds,
      },
      edition: list.edition,
      // Pairs of another list are of no use.
      subject: String(list.edition),
    };
  },
};

/** The children as a table, to be saved and opened again on another morning. */
export const tableQuestion: Question<TextAnswer> = {
  name: "riders table",
  engine: "rack",
  settles: 300,
  afterPaint: true,
  pose: ({ club, screen }) =>
    screen.name !== "club" || club.riders.length === 0
      ? null
      : { request: { do: "write_riders", riders: club.riders.map(({ cells }) => cells) } },
};

/** A step that can be taken back. Pairs stay as they are where that costs nothing. */
const step =
  (by: (club: ClubState) => Partial<Morning>): Change<PageState> =>
  (state) => {
    const pairs = lastAnswer(state, planQuestion).answer?.pairs;
    return club((now) => ({
      ...by(now),
      before: pairs?.map(({ rider, bike }) => ({ rider, bike })) ?? now.before,
      past: [...now.past, morningOf(now)].slice(-mostSteps),
    }))(state);
  };

const without = (list: string[], item: string): string[] => list.filter((one) => one !== item);
const isPair = (pair: PairIds) => (other: PairIds) => other.rider === pair.rider && other.bike === pair.bike;

export function stepTakenBack(): Change<PageState> {
  return club(({ past }) => {
    const last = past.at(-1);
    return last === undefined ? {} : { ...last, past: past.slice(0, -1) };
  });
}

export function draftTyped(part: Partial<ClubState["draft"]>): Change<PageState> {
  return club(({ draft }) => ({ draft: { ...draft, ...part } }));
}

/** A table is handed to the engine; what it reads comes back through `tableRead`. */
export function tableGiven(text: string, units: TypedUnit): Change<PageState> {
  return club(() => ({ coming: { text, units } }));
}

/** Somebody whose saddle turned out too low or too high: the next leg that is typed is theirs. */
export function measuredAgain(rider: string): Change<PageState> {
  return club(() => ({ draft: { ...emptyDraft, name: rider } }));
}

/** The rider typed last goes the same way as a pasted table of one row. Who is here already keeps what is not typed anew. */
export function draftGiven(units: TypedUnit): Change<PageState> {
  return (state) => {
    const { draft, riders } = state.club;
    if (Object.values({ ...draft, stage: "" }).every((text) => text.trim() === "")) return state;
    const name = draft.name.trim() === "" ? freeNumber(riders) : draft.name;
    const cells: Record<string, string> = {
      ...riders.find(({ id }) => id === name.trim())?.cells,
      ...Object.fromEntries(Object.entries(draft).filter(([, text]) => text.trim() !== "")),
      name,
    };
    const text = `${Object.keys(cells).join("\t")}\n${Object.values(cells).map(inOneCell).join("\t")}`;
    return {
      ...tableGiven(text, units)(state),
      club: { ...state.club, coming: { text, units }, draft: { ...emptyDraft, stage: draft.stage } },
    };
  };
}

/** Quoted as RFC 4180 has it, so that no name breaks the table. */
function inOneCell(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

function freeNumber(riders: TableRow[]): string {
  const taken = new Set(riders.map(({ id }) => id));
  let number = riders.length + 1;
  while (taken.has(String(number))) ++number;
  return String(number);
}

/** Who was there already has the new figures. */
export function tableRead({ riders, set_aside, unknown_columns }: ReadRidersAnswer): Change<PageState> {
  return (state) => {
    const fresh = new Map(riders.map((row) => [row.id, row]));
    const known = new Set(state.club.riders.map(({ id }) => id));
    const all = [
      ...state.club.riders.map((row) => fresh.get(row.id) ?? row),
      ...riders.filter(({ id }) => !known.has(id)),
    ];
    const stepped = step(({ gone }) => ({ riders: all, gone: gone.filter((id) => !fresh.has(id)) }))(state);
    const said = { added: riders.length, problem: null, setAside: set_aside, unknown: unknown_columns };
    return { ...stepped, club: { ...stepped.club, coming: null, said } };
  };
}

export function tableRefused(problem: RefusalNote): Change<PageState> {
  return club(() => ({ coming: null, said: { added: 0, problem, setAside: [], unknown: [] } }));
}

export function pairFixed(pair: PairIds, out: boolean): Change<PageState> {
  return step(({ fixed }) => ({
    fixed: [...fixed.filter(({ rider }) => rider !== pair.rider), { ...pair, out }],
  }));
}

export function pairFreed(rider: string): Change<PageState> {
  return step(({ fixed }) => ({ fixed: fixed.filter((pair) => pair.rider !== rider) }));
}

export function pairRuledOut(pair: PairIds): Change<PageState> {
  return step(({ fixed, never }) => ({
    fixed: fixed.filter((one) => !isPair(pair)(one)),
    never: [...never.filter((one) => !isPair(pair)(one)), pair],
  }));
}

export function bikeGone(bike: string): Change<PageState> {
  return step(({ fixed, absent }) => ({
    absent: [...without(absent, bike), bike],
    fixed: fixed.filter((pair) => pair.bike !== bike),
  }));
}

export function bikeBack(bike: string): Change<PageState> {
  return step(({ absent }) => ({ absent: without(absent, bike) }));
}

export function riderGone(rider: string): Change<PageState> {
  return step(({ gone, fixed }) => ({
    gone: [...without(gone, rider), rider],
    fixed: fixed.filter((pair) => pair.rider !== rider),
  }));
}

export function riderBack(rider: string): Change<PageState> {
  return step(({ gone }) => ({ gone: without(gone, rider) }));
}

export function bikeSet(key: string, set: boolean): Change<PageState> {
  return step((now) => ({ set: set ? [...without(now.set, key), key] : without(now.set, key) }));
}

export function roundsChosen(rounds: number): Change<PageState> {
  return step(() => ({ rounds }));
}

/** Everything that was settled by hand is free again; the riders stay. */
export function settledFreed(): Change<PageState> {
  return step(() => ({ absent: [], fixed: [], never: [], set: [] }));
}

export function ridersCleared(): Change<PageState> {
  return step(() => emptyMorning);
}

export function seenByBike(byBike: boolean): Change<PageState> {
  return club(() => ({ byBike }));
}

export function numbersShown(numbersOnly: boolean): Change<PageState> {
  return club(() => ({ numbersOnly }));
}

/** A pair whose saddle was set is another one once either side changes. */
export const setKey = ({ rider, bike }: PairIds): string => JSON.stringify([rider, bike]);
