// What goes over the wire about a club's morning: tables of riders, and who rides which bike.
import type { BikeKind, Note, Stage, Verdict } from "./wire-answers";
import type { PlacedNote } from "./wire-lists";
import type { TypedUnit } from "./wire-requests";

export interface ReadRidersRequest {
  do: "read_riders";
  today: string;
  text: string;
  units: TypedUnit;
}

export type RiderCell = "name" | "inseam" | "shoes" | "stage" | "age" | "born" | "weight" | "height";

/** A rider as the engine read it, in the form in which it takes riders. */
export type ReadRider = Record<string, unknown>;

export interface TableRow {
  row: number;
  id: string;
  measured: boolean;
  cells: Record<RiderCell, string>;
  rider: ReadRider;
  problems: PlacedNote[];
}

export interface ReadRidersAnswer {
  riders: TableRow[];
  set_aside: PlacedNote[];
  columns: RiderCell[];
  unknown_columns: string[];
  heading_row: number | null;
}

export interface WriteRidersRequest {
  do: "write_riders";
  riders: Record<RiderCell, string>[];
}

export interface WrittenRiders {
  text: string;
}

export interface ClubPairRequest {
  rider: string;
  bike: string;
  round?: number;
}

export interface ClubDayRequest {
  do: "club_day";
  today: string;
  riders: { id: string; rider: ReadRider }[];
  absent: string[];
  available_only: true;
  locked: ClubPairRequest[];
  not: ClubPairRequest[];
  before: ClubPairRequest[];
  rounds: number;
}

export interface ClubPair {
  rider: string;
  bike: string;
  round: number;
  locked: boolean;
  verdict: Verdict;
  fits_probability: number | null;
  saddle_mm: number | null;
  above_lowest_mm: number | null;
  below_highest_mm: number | null;
  stops: number;
  looks: number;
}

export type LeftCode = "not_measured" | "all_taken" | "ruled_out" | "away" | "check_stops" | "none_fits";

export interface LeftRider {
  rider: string;
  code: LeftCode;
  bikes?: { bike: string; by: string[] }[];
  nearest?: string | null;
  by_mm?: number | null;
  verdict?: Verdict | null;
  to_measure?: string[];
}

export interface ClubBike {
  id: string;
  name: string;
  kind: BikeKind;
  span_mm: { lowest: number | null; highest: number | null };
}

export interface ClubRiderToday {
  id: string;
  measured: boolean;
  inseam_mm?: { mean: number; sd: number };
  stage?: Stage;
  stage_assumed?: boolean;
  window_mm?: { low: number; target: number; high: number };
  notes?: Note[];
}

export interface ClubDayAnswer {
  pairs: ClubPair[];
  left: LeftRider[];
  spare: string[];
  would_fit: { bike: string; riders: string[] }[];
  to_get: {
    kind: BikeKind;
    lowest_at_most_mm: number;
    highest_at_least_mm: number;
    seats: string[];
    bikes: number;
  }[];
  riders: ClubRiderToday[];
  bikes: ClubBike[];
  counts: { riders: number; seated: number; left: number; bikes: number; absent: number; spare: number };
}
