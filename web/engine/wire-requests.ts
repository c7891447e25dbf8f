// The questions the page puts to the engine. What people typed goes over as text with its unit: the engine reads it.
import type { Stage } from "./wire-answers";

export type TypedUnit = "cm" | "in";

export interface ReadingRequest {
  on: string;
  shoes: boolean;
  inseam: string;
  unit: TypedUnit;
}

export interface RiderRequest {
  readings?: ReadingRequest[];
  born?: string;
  sex?: "girl" | "boy";
  stature?: string;
  stature_unit?: TypedUnit;
  stage: Stage;
  confidence?: Confidence;
  riding_from?: string;
}

export type Confidence = "wary" | "usual" | "bold";
export type BrakeWish = "any" | "two_hand" | "coaster";
export type Order = "lasts" | "cost" | "light" | "closest";

export interface WantsRequest {
  max_price?: number;
  max_mass_kg?: number;
  brakes?: BrakeWish;
  available_only?: boolean;
  wheel?: number;
  colour?: string;
  order?: Order;
}

/** A bike taped by the family, in the form of a catalogue entry; lengths carry their unit. */
export interface TapedRequest {
  id: string;
  name: string;
  kind?: "pedal" | "balance";
  wheel?: string;
  saddle_lowest?: string;
  saddle_highest?: string;
  standover?: string;
  mass_kg?: number;
  price?: number;
}

export interface AssessRequest {
  do: "assess";
  today: string;
  rider: RiderRequest;
  wants?: WantsRequest;
  taped?: TapedRequest[];
  /** Without raise lists and checks, which are long. */
  detail?: "brief" | "full";
  /** Only these bikes are told about; all are weighed against each other. */
  only?: string[];
}

export interface ForecastRequest {
  do: "forecast";
  today: string;
  rider: RiderRequest;
  months: number;
}

export interface SideViewRequest {
  do: "side_view";
  today: string;
  rider: RiderRequest;
  bike: string;
  taped?: TapedRequest[];
}

export type EngineRequest =
  { do: "load" } | { do: "list" } | AssessRequest | ForecastRequest | SideViewRequest;
