// The engine's answers, as they are on the wire. null: not known. Lengths are millimetres, dates YYYY-MM-DD.
import type { Population } from "./wire-requests";

export type Stage = "gliding" | "side_wheels" | "starting" | "riding";
export type Verdict = "fits_now" | "close_call" | "too_tall" | "outgrown" | "not_measured";
export type BikeKind = "pedal" | "balance";
export type Basis = "measured" | "estimated_from_stature" | "estimated_from_age";
export type Brake = "front hand" | "rear hand" | "coaster";
export type Foot = "flat" | "ball" | "tiptoe" | "off_the_floor";

/** A problem or a question: a stable code, the figures of the sentence, and the engine's English for both. */
export interface Note {
  code: string;
  where: string;
  problem: string;
  expected: string;
  figures: Record<string, string>;
  line?: number;
  column?: number;
}

export interface Refusal {
  error: Note;
  set_aside?: SetAside[];
}

/** A bike that could not be used, with its text in the file. */
export interface SetAside {
  number: number;
  id: string | null;
  name: string | null;
  code: string;
  where: string;
  line?: number;
  column?: number;
  problem: string;
  expected: string;
  figures: Record<string, string>;
  source: string;
}

export interface ListFacts {
  title: string | null;
  measured_on: string | null;
  /** null: bare figures have none. */
  units: string | null;
  currency: string | null;
  bikes: number;
}

export interface BikeFacts {
  id: string;
  name: string;
  kind: BikeKind | null;
  wheel: {
    text: string;
    nominal_in: number | null;
    bead_seat_mm: number | null;
    tyre_mm: number | null;
  } | null;
  saddle_lowest_mm: number | null;
  saddle_highest_mm: number | null;
  standover_mm: number | null;
  lever_reach_mm: number | null;
  crank_mm: number | null;
  mass_kg: number | null;
  rider_mass_limit_kg: number | null;
  brakes: Brake[] | null;
  gears: number | null;
  price: number | null;
  currency: string | null;
  colours: string[];
  condition: string | null;
  available: boolean | null;
  notes: string | null;
}

export interface LoadAnswer {
  list: ListFacts;
  set_aside: SetAside[];
  notes: Note[];
}

export interface ListAnswer {
  list: ListFacts | null;
  bikes: BikeFacts[];
  set_aside: SetAside[];
  notes: Note[];
}

export interface SaddleWindow {
  low: number;
  target: number;
  high: number;
}

/** 10, 50 and 90 % of the forecast; null: beyond the forecast's horizon. */
export interface DateRange {
  p10: string | null;
  p50: string | null;
  p90: string | null;
}

export interface MonthsOfFit {
  mean: number;
  p10: number;
  p50: number;
  p90: number;
}

export interface WheelSize {
  nominal_in: number;
  from: "list" | "common_practice";
  /** Counts are of the open list; null by common practice. */
  bikes: number | null;
  fit_now: number | null;
  close_calls: number | null;
  reason: "only_one" | "most_fit" | "largest_that_suits" | "also";
  why: string;
}

export type CheckState = "ok" | "look" | "stop" | "unknown";

/** Figures bear their unit at the end of their names: `value_mm`, `limit_low_ratio`, `bike_kg`. */
export interface Check {
  what: string;
  state: CheckState;
  basis: "measured" | "estimated_rider_mass" | "estimated_stature" | "estimated_inseam";
  code: string;
  why: string;
  source: string;
  figures: Record<string, number>;
  to_measure: string[];
  [figure: `value_${string}` | `limit_${string}`]: number;
}

export type Standing = "unbeaten" | "beaten" | "beaten_as_far_as_known";

/** Why a bike that no other beats is worth a look. */
export interface Worth {
  code: string;
  why: string;
}

/** Words name the month of `on` and not its day. */
export interface Raise {
  on: string;
  saddle_mm: number;
  /** A change of stage: only once the child rides without training wheels, or starts, brakes and stops without help. */
  stage?: "starting" | "riding";
}

/** A time between the first day on which a bike fits and the day on which it is outgrown in which it does not fit. */
export interface Pause {
  from: string;
  /** It fits again, or is outgrown for good. */
  to: string;
  code: "too_tall" | "outgrown";
}

/** Where 8 children in 10 like this one are. */
export interface LikelyHeights {
  low: number;
  high: number;
}

export interface JudgedBike {
  id: string;
  name: string;
  taped: boolean;
  kind: BikeKind | null;
  /** A balance bike is nothing for a rider who pedals, nor the other way round. */
  suits_stage: boolean;
  wheel_nominal_in: number | null;
  span_mm: { lowest: number | null; highest: number | null };
  price: number | null;
  currency: string | null;
  mass_kg: number | null;
  verdict: Verdict;
  fits_probability: number | null;
  margin_mm: number | null;
  saddle_mm: number | null;
  /** Of a rider whom nobody measured: where the saddle goes is a range. */
  saddle_likely_mm?: LikelyHeights;
  above_lowest_mm: number | null;
  below_highest_mm: number | null;
  to_measure: string[];
  notes?: Note[];
  fits_from: DateRange | null;
  outgrown: DateRange | null;
  /** Mostly none. It fits up to the first one, and again from the end of each. */
  pauses: Pause[];
  /** Without its pauses. */
  months_of_fit: MonthsOfFit | null;
  cost_per_month: number | null;
  cost_per_month_range?: { low: number; high: number | null };
  /** Why there is no cost. */
  cost_gap?: string;
  /** Among the bikes that fit, by length of use, price and weight at once. */
  standing: { code: Standing; worth: Worth[]; beaten_by?: string; beaten_by_name?: string } | null;
  not_offered: { code: string; why: string } | null;
  /** How many checks say so. */
  stops: number;
  looks: number;
  /** With `detail: "full"` only. */
  raise?: Raise[];
  checks?: Check[];
}

export interface JudgedRider {
  inseam_mm: { mean: number; sd: number };
  basis: Basis;
  population: Population;
  stage: Stage;
  window_mm: SaddleWindow;
  /** The window with the doubt about the leg in it. */
  window_likely_mm: LikelyHeights;
  wheel_sizes: WheelSize[];
  notes: Note[];
}

/** Bikes that follow each other. */
export interface BikeGroup {
  verdict: Verdict;
  suits_stage: boolean;
  bikes: number;
}

export interface AssessAnswer {
  rider: JudgedRider;
  /** Of all bikes that were wanted, also of those not told about. */
  counts: Record<Verdict, number>;
  /** All of them, best first. */
  groups: BikeGroup[];
  heights_mm: { lowest: number | null; highest: number | null };
  bikes: JudgedBike[];
  left_out_counts: { bikes: number; because: Record<string, number> };
  set_aside: SetAside[];
}

export interface NamedBike {
  id: string;
  name: string;
}

/** The smallest change of one thing that puts another bike first. */
export type AnswerChange = { first: NamedBike | null } & (
  | { kind: "longer_reading" | "shorter_reading"; reading_shift_mm: number }
  | { kind: "next_stage"; stage: Stage }
  | { kind: "higher_budget" | "lower_budget"; budget: number }
);

export interface ChangesAnswer {
  first: NamedBike | null;
  changes: AnswerChange[];
}

export interface ForecastMonth {
  on: string;
  p10: number;
  p50: number;
  p90: number;
  /** That the bike fits then; null where an end of its span is unknown. */
  fits_probability: number | null;
}

export interface StageWindow {
  from: string;
  stage: Stage;
}

interface HeightRange {
  p10: number;
  p50: number;
  p90: number;
}

/** The saddle heights that will suit on a day; the day on which a stage begins is there twice, once with each stage. */
export interface WindowAhead {
  on: string;
  low: HeightRange;
  target: HeightRange;
  high: HeightRange;
}

/** All readings of one day as one, in shoes. */
export interface DayReading {
  on: string;
  inseam_mm: number;
  sd_mm: number;
  count: number;
}

export interface ForecastAnswer {
  today: ForecastMonth;
  months: ForecastMonth[];
  windows: WindowAhead[];
  readings: DayReading[];
  less_certain_for_young_child: boolean;
  stages: StageWindow[];
  basis: Basis;
}

export interface Point {
  x: number;
  y: number;
}

export interface WheelDrawing extends Point {
  radius: number;
  rim: number;
}

/** A bike seen from its right side: x forward from the rear axle, y up from the floor. */
export interface SideViewAnswer {
  rear_wheel: WheelDrawing;
  front_wheel: WheelDrawing;
  bottom_bracket: Point;
  crank_mm: number;
  seat_tube: { bottom: Point; top: Point };
  saddle: { x: number; lowest: Point | null; highest: Point | null; setting: Point | null };
  head: { top: Point; bottom: Point };
  grip: Point;
  top_tube: { front: Point; rear: Point };
  inseam_mm: number;
  window_mm: SaddleWindow;
  foot: Foot | null;
  /** null: there is no crank, or no setting to turn it from. */
  leg: { obstacle: string } | LegTurn | null;
  assumed: string[];
}

/** The leg on the pedal over one turn, an adult's proportions taken for granted; 0 degrees is the pedal at its highest. */
export interface LegTurn {
  poses: LegPose[];
  least_flexion_deg: number;
  greatest_flexion_deg: number;
  stature_assumed: boolean;
}

export interface LegPose {
  crank_deg: number;
  hip: Point;
  knee: Point;
  ankle: Point;
  pedal: Point;
  knee_flexion_deg: number;
}

export function isRefusal(answer: object): answer is Refusal {
  return "error" in answer;
}
