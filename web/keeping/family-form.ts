// What a family keeps, on the device and in a file: the project's own form, with its version, checked when it is read.
import type { PageState, RiderEntry, WaitingRider } from "../state/page-state";
import { emptyMorning, noClub } from "../state/club-day";
import type { ClubState, Morning } from "../state/club-day";
import { familyOf, onDay } from "../state/family-changes";
import type { Change } from "../state/store";
import { languages } from "../texts/languages";
import type { Language } from "../texts/languages";
import type { TableRow } from "../engine/wire-club";
import type { EntryChange } from "../engine/wire-lists";
import type { TypedUnit } from "../engine/wire-requests";
import {
  day,
  flag,
  listOf,
  number,
  oneOf,
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
}

/** A club's morning as far as it was settled. What the engine asked about its figures is not kept. */
export type KeptMorning = Morning & Pick<ClubState, "before">;

/** A list of bikes as the bytes of a file. */
export interface ListFile {
  name: string;
  sample: boolean;
  /** The one on the rack. */
  inHand: boolean;
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
  const { draft, kept, nextNumber } = state.tape;
  const tape = { draft, kept, nextNumber };
  return { unit, language, inHand: rider.key, riders: familyOf(state), tape, picked, club: morningIn(state) };
}

function morningIn({ club }: PageState): KeptMorning {
  const { gone, absent, fixed, never, rounds, set, before } = club;
  const riders = club.riders.map((row) => ({ ...row, problems: [] }));
  return { riders, gone, absent, fixed, never, rounds, set, before };
}

const unit = oneOf<TypedUnit>("cm", "in");
const month = shape<WaitingRider["rider"]["born"]>({ year: text(4), month: text(2) });
const figure = shape<WaitingRider["rider"]["stature"]>({ text: text(), unit });
const kind = <Other extends string>(...others: Other[]) =>
  oneOf<"pedal" | "balance" | Other>("pedal", "balance", ...others);

const rider = shape<WaitingRider["rider"]>({
  key: whole,
  name: text(40),
  readings: listOf(shape({ key: whole, on: day, figure, shoes: flag }), 10_000),
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
  wheel: orNull(number),
  colour: orNull(text()),
  availableOnly: flag,
  offRoad: flag,
  resalePercent: text(),
  order: oneOf("lasts", "cost", "light", "closest"),
  detail: whereSaid(flag, false),
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

const pair = { rider: text(), bike: text() };
const ids = listOf(text(), 25_000);
const cells = { name: text(), inseam: text(), shoes: text(), stage: text(), age: text(), born: text() };

const tableRow = shape<TableRow>({
  row: whole,
  id: text(),
  measured: flag,
  cells: shape({ ...cells, weight: text(), height: text() }),
  rider: shape<TableRow["rider"]>({
    readings: listOf(shape({ on: text(10), inseam_mm: number, shoes: flag }), 10),
    born: orNull(text(10)),
    stature_mm: orNull(number),
    mass_kg: orNull(number),
    stage: oneOf("gliding", "side_wheels", "starting", "riding", null),
  }),
  problems: () => [],
});

const morning = shape<KeptMorning>({
  riders: listOf(tableRow, 5000),
  gone: ids,
  absent: ids,
  fixed: listOf(shape({ ...pair, out: flag }), 5000),
  never: listOf(shape(pair), 5000),
  rounds: whole,
  set: listOf(text(1000), 5000),
  before: listOf(shape(pair), 5000),
});

const familyReader = shape<Family>({
  language: oneOf(...languages),
  unit,
  inHand: whole,
  riders: listOf(shape<WaitingRider>({ rider, wants }), 1000, 1),
  tape: shape<Family["tape"]>({
    draft: taped,
    kept: listOf(shape({ id: text(), bike: taped }), 20_000),
    nextNumber: whole,
  }),
  picked: listOf(text(), 4),
  // Pages before this one kept none.
  club: (value, where) => (value === undefined ? { ...emptyMorning, before: [] } : morning(value, where)),
});

/** Two riders or two readings with one key would be changed together. */
function needsOwnKeys(things: { key: number }[], where: string): void {
  if (new Set(things.map(({ key }) => key)).size < things.length) throw new Unexpected(where);
}

/** The keys of readings count up as they are added: from a file they begin anew, so that they never run out. */
function numberedAnew(rider: RiderEntry): RiderEntry {
  return { ...rider, readings: rider.readings.map((reading, place) => ({ ...reading, key: place + 1 })) };
}

export const family: Reader<Family> = (value, where) => {
  const read = familyReader(value, where);
  const riders = read.riders.map((one) => one.rider);
  needsOwnKeys(riders, "riders");
  riders.forEach(({ readings }, place) => needsOwnKeys(readings, `riders[${place}].readings`));
  if (!riders.some(({ key }) => key === read.inHand)) throw new Unexpected("inHand");
  return { ...read, riders: read.riders.map((one) => ({ ...one, rider: numberedAnew(one.rider) })) };
};

/** What `read` makes of it, or why it cannot be read. `value` bears the version in its field `version`. */
export function readVersioned<Value>(value: unknown, read: Reader<Value>): Value | FormFault {
  const { version } = Object(value) as { version?: unknown };
  if (typeof version === "number" && version > formVersion) return { code: "newer", where: "" };
  try {
    oneOf(formVersion, ...olderForms)(version, "version");
    return read(value, "");
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
