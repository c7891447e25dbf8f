// The questions the page puts to the engine. What people typed goes over as text with its unit: the engine reads it.
import type { Stage } from "./wire-answers";
import type { ClubDayRequest, ReadRidersRequest, WriteRidersRequest } from "./wire-club";
import type { ListsRequest } from "./wire-lists";
import type { YearsRequest } from "./wire-years";
import type { SuitsRequest } from "./wire-suits";

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
  population?: Population;
  stature?: string;
  stature_unit?: TypedUnit;
  mass_kg?: number;
  /** Instead, as typed: "40 lb". */
  mass?: string;
  /** The engine judges nothing without it, and says what else is wrong first. */
  stage?: Stage;
  confidence?: Confidence;
  riding_from?: string;
}

/** Whose children the legs are guessed from where they were not measured. */
export type Population = "us" | "gb" | "nl" | "any";
export type Confidence = "wary" | "usual" | "bold";
export type GearsWish = "any" | "single" | "several";
export type BrakeWish = "any" | "two_hand" | "coaster";
export type Order = "lasts" | "cost" | "light" | "closest";

export interface WantsRequest {
  max_price?: number;
  max_mass_kg?: number;
  max_mass?: string;
  brakes?: BrakeWish;
  gears?: GearsWish;
  available_only?: boolean;
  wheel?: number;
  colour?: string;
  off_road?: boolean;
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
  mass_kg?: number | string;
  price?: number;
}

/** What bikes are judged for. */
interface JudgingRequest {
  today: string;
  rider: RiderRequest;
  wants?: WantsRequest;
  taped?: TapedRequest[];
  /** The share of its price that a bike brings when it is sold on. */
  resale_share?: number;
}

/** Places of the ranked rack, from 0. */
export interface RowsRequest {
  from: number;
  count: number;
}

export interface AssessRequest extends JudgingRequest {
  do: "assess";
  /** Only these places are told about. */
  rows?: RowsRequest;
  /** Without raise lists and checks, which are long; or only where the saddle goes. */
  detail?: "brief" | "full" | "spans";
  /** Only these bikes are told about; all are weighed against each other. */
  only?: string[];
}

export interface ChangesRequest extends JudgingRequest {
  do: "changes";
}

export interface ForecastRequest {
  do: "forecast";
  today: string;
  rider: RiderRequest;
  months: number;
  /** Of which bike the chance is to be told, month by month. */
  bike: string;
  taped?: TapedRequest[];
}

export interface SideViewRequest {
  do: "side_view";
  today: string;
  rider: RiderRequest;
  bike: string;
  taped?: TapedRequest[];
}

export type EngineRequest =
  | ListsRequest
  | AssessRequest
  | ChangesRequest
  | ForecastRequest
  | SideViewRequest
  | ReadRidersRequest
  | WriteRidersRequest
  | ClubDayRequest
  | YearsRequest
  | SuitsRequest;
