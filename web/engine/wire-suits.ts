// What goes over the wire about a list turned round: the inside legs that each bike and each wheel size fits.
import type { BikeKind, Stage } from "./wire-answers";
import type { RowsRequest } from "./wire-requests";

export interface SuitsRequest {
  do: "suits";
  rows?: RowsRequest;
  form?: "csv";
}

/** As a table for spreadsheets. */
export interface SuitsTable {
  text: string;
}

/** From and to. An end that is absent is not known: nobody measured it, or it is beyond the growth reference. */
export type Ends = [number | null, number | null];

export interface SuitedLegs {
  inseam_mm: Ends;
  /** The legs that fit for sure, where an end is absent. */
  surely_mm?: Ends;
  typical_years: Ends | null;
}

export interface SuitsBike {
  id: string;
  name: string;
  kind: BikeKind;
  wheel_nominal_in: number | null;
  span_mm: { lowest: number | null; highest: number | null };
  stages: Partial<Record<Stage, SuitedLegs>>;
}

export interface SharedLegs {
  inseam_mm: [number, number];
  /** Between the ends, where fewer bikes fit. */
  gaps_mm: [number, number][];
  typical_years: Ends | null;
}

export interface SuitsWheel {
  nominal_in: number;
  stages: Partial<
    Record<Stage, { bikes: number; measured: number; any: SharedLegs | null; half: SharedLegs | null }>
  >;
}

export interface SuitsAnswer {
  bikes: SuitsBike[];
  wheels: SuitsWheel[];
  count: number;
}
