// What a family keeps, on the device and in a file: the project's own form, with its version, checked when it is read.
import type { PageState, RiderEntry, WaitingRider } from "../state/page-state";
import { longestName, longestText } from "../state/limits";
import { mostPicked } from "../state/picking";
import { emptyMorning, noClub } from "../state/club-day";
import type { ClubState, Morning } from "../state/club-day";
import { noYearsWishes } from "../state/years-ahead";
import type { YearsWishes } from "../state/years-ahead";
import { familyOf, onDay } from "../state/family-changes";
import type { Change } from "../state/store";
import { languages } from "../texts/languages";
import type { Language } from "../texts/languages";
import type { TypedUnit } from "../engine/narrowed";
import type { EntryChange, TableRow } from "../engine/wire";
import {
  day,
  flag,
  key,
  listOf,
  mark,
  number,
  oneOf,
  orElse,
  orNull,
  shape,
  text,
  Unexpected,
  whereSaid,
  whole,
} from "./checked";
import type { Reader } from "./checked";

/** Counts up when an older page could not read what a newer one keeps. */
export const formVersion = 2;

/** Older forms that are read as they are: in 1, every rider had a stage. */
const olderForms = [1];

export interface Family {
  language: Language;
  unit: TypedUnit;
  inHand: number;
  riders: WaitingRider[];
  tape: Pick<PageState["tape"], "draft" | "kept" | "nextNumber">;
  picked: string[];
  club: KeptMorning;
  years: YearsWishes;
}

/** A club's morning as far as it was settled. What the engine asked about its figures is not kept. */
export type KeptMorning = Morning & Pick<ClubState, "before">;

/** A list of bikes as the bytes of a file. */
export interface ListFile {
  name: string;
  sample: boolean;
  /** The one on the rack. */
  inHand: boolean;
  /** It has changes that are in no file of its own. */
  unsaved: boolean;
  /** How it is read where that is not UTF-8. */
  encoding: "windows-1252" | null;
  bytes: Uint8Array;
  /** What was changed since, edit by edit. */
  edits: EntryChange[][];
}

/** Why something cannot be read: not of this form at all, of a newer page, or damaged at a place. */
export interface FormFault {
  code: "foreign" | "newer" | "damaged";
  where: string;
}

export function familyIn(state: PageState): Family {
  const { unit, language, rider, picked } = state;
  const { years, perYear, mostBikes, buyFrom, marks } = state.years;
  const { draft, kept, nextNumber } = state.tape;
  const tape = { draft, kept, nextNumber };
  return {
    unit,
    language,
    inHand: rider.key,
    riders: familyOf(state),
    tape,
    picked,
    club: morningIn(state),
    years: { years, perYear, mostBikes, buyFrom, marks },
  };
}

function morningIn({ club }: PageState): KeptMorning {
  const { gone, absent, fixed, never, rounds, set, before } = club;
  const riders = club.riders.map((row) => ({ ...row, problems: [] }));
  return { riders, gone, absent, fixed, never, rounds, set, before };
}

/** Two marks as JSON, in which a character may take six. */
const longestPair = 2 * 6 * longestText + 10;

const largestKey = 1_000_000;

const unit = oneOf<TypedUnit>("cm", "in");
const month = shape<WaitingRider["rider"]["born"]>({ year: text(4), month: text(2) });
const figure = shape<WaitingRider["rider"]["stature"]>({ text: text(), unit });
const kind = <Other extends string>(...others: Other[]) =>
  oneOf<"pedal" | "balance" | Other>("pedal", "balance", ...others);

const rider = shape<WaitingRider["rider"]>({
  key,
  name: text(longestName),
  readings: listOf(shape({ key, on: day, figure, shoes: flag })),
  stage: orNull(oneOf("gliding", "side_wheels", "starting", "riding")),
  confidence: oneOf("wary", "usual", "bold"),
  born: month,
  sex: oneOf("girl", "boy", null),
  population: whereSaid(oneOf("us", "gb", "nl", "any"), "any"),
  stature: figure,
  massKg: text(),
  ridingFrom: month,
});

const wants = shape<WaitingRider["wants"]>({
  maxPrice: text(),
  maxMassKg: text(),
  brakes: oneOf("any", "two_hand", "coaster"),
  gears: oneOf("any", "single", "several"),
  kind: kind("any"),
  wheel: orElse(orNull(number), null),
  colour: orElse(orNull(mark()), null),
  availableOnly: flag,
  offRoad: flag,
  resalePercent: text(),
  order: oneOf("lasts", "cost", "light", "closest"),
  detail: whereSaid(flag, false),
  folded: whereSaid(listOf(text()), []),
});

const taped = shape<Family["tape"]["draft"]>({
  name: text(),
  kind: kind(),
  unit,
  lowest: text(),
  highest: text(),
  standover: text(),
  wheel: text(),
  massKg: text(),
  price: text(),
});

const pair = { rider: mark(), bike: mark() };
const ids = listOf(mark());
const cells = { name: text(), inseam: text(), shoes: text(), stage: text(), age: text(), born: text() };

const tableRow = shape<TableRow>({
  row: orElse(whole, 1),
  id: mark(),
  measured: flag,
  cells: shape({ ...cells, weight: text(), height: text() }),
  rider: shape<TableRow["rider"]>({
    readings: listOf(shape({ on: day, inseam_mm: number, shoes: flag })),
    born: orNull(text(10)),
    stature_mm: orElse(orNull(number), null),
    mass_kg: orElse(orNull(number), null),
    stage: oneOf("gliding", "side_wheels", "starting", "riding", null),
  }),
  problems: () => [],
});

const morning = shape<KeptMorning>({
  riders: listOf(tableRow),
  gone: ids,
  absent: ids,
  fixed: listOf(shape({ ...pair, out: flag })),
  never: listOf(shape(pair)),
  rounds: orElse(whole, 1),
  set: listOf(mark(longestPair)),
  before: listOf(shape(pair)),
});

const years = shape<YearsWishes>({
  years: orElse(whole, noYearsWishes.years),
  perYear: text(),
  mostBikes: orElse(orNull(whole), null),
  buyFrom: month,
  marks: listOf(shape({ id: mark(), list: mark(), is: oneOf("", "owned", "keep", "not"), price: text() })),
});

const familyReader = shape<Family>({
  language: oneOf(...languages),
  unit,
  inHand: key,
  riders: listOf(shape<WaitingRider>({ rider, wants }), Infinity, 1),
  tape: shape<Family["tape"]>({
    draft: taped,
    kept: listOf(shape({ id: mark(), bike: taped })),
    nextNumber: orElse(whole, 1),
  }),
  picked: listOf(mark(), mostPicked),
  // Pages before this one kept none.
  club: whereSaid(morning, { ...emptyMorning, before: [] }),
  years: whereSaid(years, noYearsWishes),
});

/** Two riders or two readings with one key would be changed together. */
function needsOwnKeys(things: { key: number }[], where: string): void {
  if (new Set(things.map(({ key }) => key)).size < things.length) throw new Unexpected(where);
}

/** Keys count up as things are added: from a file those of readings begin anew, so that they never run out. */
function numberedAnew(rider: RiderEntry): RiderEntry {
  return { ...rider, readings: rider.readings.map((reading, place) => ({ ...reading, key: place + 1 })) };
}

/** A rider without a name is called by the key, so that keys stay as long as they are no larger than a family's may be. */
function withOwnNumbers({ riders, inHand, tape, ...family }: Family): Family {
  const isLarge = riders.some(({ rider }) => rider.key > largestKey);
  const numbered = riders.map(({ rider, wants }, place) => ({
    rider: numberedAnew(isLarge ? { ...rider, key: place + 1 } : rider),
    wants,
  }));
  const taken = riders.findIndex(({ rider }) => rider.key === inHand);
  const taped = tape.kept.map(({ id }) => Number(/^taped-(\d{1,8})$/.exec(id)?.[1] ?? 0));
  const nextNumber = taped.reduce((next, number) => Math.max(next, number + 1), tape.nextNumber);
  return {
    ...family,
    riders: numbered,
    inHand: isLarge ? taken + 1 : inHand,
    tape: { ...tape, nextNumber },
  };
}

export const family: Reader<Family> = (value, where, lost) => {
  const read = familyReader(value, where, lost);
  const riders = read.riders.map((one) => one.rider);
  needsOwnKeys(riders, "riders");
  riders.forEach(({ readings }, place) => needsOwnKeys(readings, `riders[${place}].readings`));
  if (!riders.some(({ key }) => key === read.inHand)) throw new Unexpected("inHand");
  return withOwnNumbers(read);
};

/** What was read, and the places of what had to be left out or cut. */
export type Whole<Value> = Value & { lost: string[] };

/** What `read` makes of it, or why it cannot be read. `value` bears the version in its field `version`. */
export function readVersioned<Value extends object>(
  value: unknown,
  read: Reader<Value>,
): Whole<Value> | FormFault {
  const { version } = Object(value) as { version?: unknown };
  if (typeof version === "number" && version > formVersion) return { code: "newer", where: "" };
  try {
    oneOf(formVersion, ...olderForms)(version, "version", []);
    const lost: string[] = [];
    return { ...read(value, "", lost), lost };
  } catch (cause) {
    if (cause instanceof Unexpected) return { code: "damaged", where: cause.where };
    throw cause;
  }
}

export function isFault(read: object): read is FormFault {
  return "code" in read;
}

/** Puts a kept family in place of the one on the page. A reading that was left empty on another day is none. */
export function familyBroughtBack({
  unit,
  language,
  inHand,
  riders,
  tape,
  picked,
  club,
  years,
}: Family): Change<PageState> {
  return (state) => {
    const family = riders.map((one) => ({ ...one, rider: onDay(one.rider, state.today, unit) }));
    const taken = family.find(({ rider }) => rider.key === inHand);
    if (taken === undefined) return state;
    const waiting = family.filter((one) => one !== taken);
    return {
      ...state,
      ...taken,
      unit,
      language,
      waiting,
      removed: null,
      tape: { ...state.tape, ...tape },
      picked,
      club: { ...noClub, ...club },
      years: { ...state.years, ...years },
    };
  };
}

/** A list that is opened clears what was wished for and picked on the one before: here it is again. */
export function wishesBroughtBack({ riders, picked }: Family): Change<PageState> {
  const wantsOf = (one: WaitingRider): WaitingRider => ({
    ...one,
    wants: riders.find(({ rider }) => rider.key === one.rider.key)?.wants ?? one.wants,
  });
  return (state) => ({
    ...state,
    picked,
    wants: wantsOf(state).wants,
    waiting: state.waiting.map(wantsOf),
  });
}
