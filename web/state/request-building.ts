// From the page's state to the engine's questions. Figures that people typed go over as they are.
import type { TapedRequest, TypedUnit } from "../engine/narrowed";
import type {
  AssessRequest,
  ChangesRequest,
  ForecastRequest,
  RiderFacts,
  RiderRequest,
  SideViewRequest,
  WantsRequest,
  YearsRequest,
} from "../engine/wire";
import { familyOf } from "./family-changes";
import type {
  KeptBike,
  MonthEntry,
  PageState,
  ReadingEntry,
  RiderEntry,
  TapedBike,
  WantsEntry,
} from "./page-state";
import { massSent } from "./typed-mass";
import { marksHere } from "./years-ahead";
import type { BikeStanding } from "./years-ahead";

export const draftId = "taped-draft";

/** The readings that go to the engine, in its order: problems name them by that place. */
export function sentReadings(rider: Pick<RiderEntry, "readings">): ReadingEntry[] {
  return rider.readings.filter((reading) => reading.figure.text.trim() !== "" && reading.on !== "");
}

/** Something is typed that a verdict can rest on. */
export function saysSomething(rider: RiderEntry): boolean {
  return sentReadings(rider).length > 0 || rider.stature.text.trim() !== "" || monthText(rider.born) !== null;
}

/** YYYY-MM once both lists were used. */
function monthText({ year, month }: MonthEntry): string | null {
  return year === "" || month === "" ? null : `${year}-${month}`;
}

/** A plain number, such as of money. Text that is none is left out, and its field says so. */
export function plainNumber(text: string): number | null {
  const trimmed = text.trim().replace(",", ".");
  return /^\d+(\.\d+)?$/.test(trimmed) ? Number(trimmed) : null;
}

/** A length with its unit; one that already names a unit is left alone. */
export function lengthText(text: string, unit: TypedUnit): string | null {
  const trimmed = text.trim();
  if (trimmed === "") return null;
  return /[^\d\s.,/⁄¼½¾⅛⅜⅝⅞-]/.test(trimmed) ? trimmed : `${trimmed} ${unit}`;
}

/** `value` under `key`, or nothing where there is none. */
function given<Key extends string, Value>(key: Key, value: Value | null): Partial<Record<Key, Value>> {
  return value === null ? {} : ({ [key]: value } as Record<Key, Value>);
}

/** A weight: kilograms as a number, others as text. */
function massGiven<Name extends string>(name: Name, text: string): MassGiven<Name> {
  const mass = massSent(text);
  return (typeof mass === "number" ? { [`${name}_kg`]: mass } : given(name, mass)) as MassGiven<Name>;
}

type MassGiven<Name extends string> = Partial<Record<`${Name}_kg`, number> & Record<Name, string>>;

export function riderRequest(rider: RiderEntry): RiderRequest {
  const readings = sentReadings(rider).map(({ on, shoes, figure }) => ({
    on,
    shoes,
    inseam: figure.text.trim(),
    unit: figure.unit,
  }));
  const stature = rider.stature.text.trim();
  const facts: RiderFacts = {
    ...given("stage", rider.stage),
    ...given("readings", readings.length > 0 ? readings : null),
    ...(rider.stage === "side_wheels" ? { confidence: rider.confidence } : {}),
    ...given("born", monthText(rider.born)),
    ...given("sex", rider.sex),
    ...given("population", rider.population === "any" ? null : rider.population),
    ...(stature === "" ? {} : { stature, stature_unit: rider.stature.unit }),
    ...massGiven("mass", rider.massKg),
    ...given("riding_from", movesOn(rider.stage) ? monthText(rider.ridingFrom) : null),
  };
  // Until somebody chooses a stage the request lacks it: the engine judges nothing, and says what else is wrong first.
  return facts as RiderRequest;
}

/** The stages that lead on to another one on the same bike. */
export function movesOn(stage: RiderEntry["stage"]): stage is "side_wheels" | "starting" {
  return stage === "side_wheels" || stage === "starting";
}

function wantsRequest(wants: WantsEntry): WantsRequest {
  return {
    order: wants.order,
    ...given("max_price", plainNumber(wants.maxPrice)),
    ...massGiven("max_mass", wants.maxMassKg),
    ...given("brakes", wants.brakes === "any" ? null : wants.brakes),
    ...given("gears", wants.gears === "any" ? null : wants.gears),
    ...given("kind", wants.kind === "any" ? null : wants.kind),
    ...given("wheel", wants.wheel),
    ...given("colour", wants.colour),
    ...(wants.availableOnly ? { available_only: true } : {}),
    ...(wants.offRoad ? { off_road: true } : {}),
  };
}

function tapedRequest(id: string, bike: TapedBike): TapedRequest {
  return {
    id,
    name: bike.name === "" ? id : bike.name,
    kind: bike.kind,
    ...given("wheel", bike.wheel.trim() === "" ? null : bike.wheel.trim()),
    ...given("saddle_lowest", lengthText(bike.lowest, bike.unit)),
    ...given("saddle_highest", lengthText(bike.highest, bike.unit)),
    ...given("standover", lengthText(bike.standover, bike.unit)),
    ...given("mass_kg", massSent(bike.massKg)),
    ...given("price", plainNumber(bike.price)),
  };
}

/** A taped bike as an entry of a list. */
export function tapedCells(bike: TapedBike): Record<string, string> {
  const fields = Object.entries(tapedRequest("", bike)).filter(([, value]) => value !== "");
  return Object.fromEntries(fields.map(([field, value]) => [field, String(value)]));
}

function tapedBeside(kept: KeptBike[]): { taped?: TapedRequest[] } {
  return kept.length === 0 ? {} : { taped: kept.map(({ id, bike }) => tapedRequest(id, bike)) };
}

/** The share that a typed percentage stands for; null where it is none. */
export function shareOfPercent(text: string): number | null {
  const percent = plainNumber(text);
  return percent === null || percent > 100 ? null : percent / 100;
}

/** The question that the rack answers, alike in all its forms, so that the engine judges it once. */
function judging(state: PageState) {
  return {
    today: state.today,
    rider: riderRequest(state.rider),
    wants: wantsRequest(state.wants),
    ...tapedBeside(state.tape.kept),
    ...given("resale_share", shareOfPercent(state.wants.resalePercent)),
  };
}

/** The places of the rack that are near the screen. */
export function assessRequest(state: PageState): AssessRequest {
  return { do: "assess", ...judging(state), detail: "brief", rows: state.rows };
}

/** More places than any rack has. */
const everyPlace = { from: 0, count: 1_000_000 };

/** How low and how high the saddle goes on every bike. */
export function overviewRequest(state: PageState): AssessRequest {
  return { do: "assess", ...judging(state), detail: "spans", rows: everyPlace };
}

/** All there is to say about some bikes of the rack. */
export function detailRequest(state: PageState, only: string[]): AssessRequest {
  return { do: "assess", ...judging(state), detail: "full", rows: everyPlace, only };
}

export function changesRequest(state: PageState): ChangesRequest {
  return { do: "changes", ...judging(state) };
}

/** The draft on the tape screen, judged by itself; null while neither end of its span is typed. */
export function draftRequest(state: PageState): AssessRequest | null {
  const { draft } = state.tape;
  if (draft.lowest.trim() === "" && draft.highest.trim() === "") return null;
  return {
    do: "assess",
    today: state.today,
    rider: riderRequest(state.rider),
    taped: [tapedRequest(draftId, draft)],
    detail: "full",
  };
}

/** About one bike: with the chance that it fits, month by month, and the child among others. */
export function forecastRequest(state: PageState, bike: string, months: number): ForecastRequest {
  return {
    do: "forecast",
    today: state.today,
    rider: riderRequest(state.rider),
    months,
    bike,
    centiles: true,
    ...tapedBeside(state.tape.kept),
  };
}

export function sideViewRequest(state: PageState, bike: string): SideViewRequest {
  return {
    do: "side_view",
    today: state.today,
    rider: riderRequest(state.rider),
    bike,
    ...tapedBeside(state.tape.kept),
  };
}

/** Children who can be in a plan: how they ride is known, and something that a height can rest on. */
export function isPlanned(rider: RiderEntry): boolean {
  return rider.stage !== null && saysSomething(rider);
}

/** Milliseconds: after that the best plan so far is good enough, and says how far from the best it may be. */
const planningTime = 3000;

/** null: there is no child to plan for. */
export function yearsRequest(state: PageState): YearsRequest | null {
  const riders = familyOf(state).filter(({ rider }) => isPlanned(rider));
  if (riders.length === 0) return null;
  const { years, perYear, mostBikes, buyFrom } = state.years;
  const marks = marksHere(state);
  const that = (...ways: BikeStanding[]): string[] =>
    marks.filter(({ is }) => ways.includes(is)).map(({ id }) => id);
  const keep = that("keep");
  // Prices that the family typed, here or with a bike that it measured, are in whatever money it counts in.
  const typed = [...state.tape.kept.map(({ id, bike }) => ({ id, price: bike.price })), ...marks];
  const prices = typed.map(({ id, price }) => [id, plainNumber(price)]);
  return {
    do: "years_ahead",
    today: state.today,
    horizon_months: 12 * years,
    riders: riders.map(({ rider }) => ({ id: String(rider.key), rider: riderRequest(rider) })),
    owned: that("owned", "keep"),
    keep,
    not: that("not"),
    prices: Object.fromEntries(prices.filter(([, price]) => price !== null)) as Record<string, number>,
    skip_unknown: true,
    ...tapedBeside(state.tape.kept),
    ...given("resale_share", shareOfPercent(state.wants.resalePercent)),
    ...given("max_per_year", plainNumber(perYear)),
    // What is never sold is in the shed at any rate.
    ...given("max_bikes", mostBikes && Math.max(mostBikes, keep.length)),
    ...given("buy_from", monthText(buyFrom)),
    limit_ms: planningTime,
  };
}
