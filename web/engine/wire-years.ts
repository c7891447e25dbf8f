// What goes over the wire about the years ahead: the plan of bikes for a family. Months are YYYY-MM; what is up to a month ends
// before it.
import type { BikeKind, Check } from "./wire-answers";
import type { RiderRequest, TapedRequest } from "./wire-requests";

export interface YearsRequest {
  do: "years_ahead";
  today: string;
  horizon_months: number;
  riders: { id: string; rider: RiderRequest }[];
  owned: string[];
  keep: string[];
  not: string[];
  prices: Record<string, number>;
  /** Marks of bikes that are not here are passed over. */
  skip_unknown: true;
  taped?: TapedRequest[];
  resale_share?: number;
  max_per_year?: number;
  max_bikes?: number;
  buy_from?: string;
  limit_ms: number;
}

/** What a bike has to be like to serve from one month to another. */
export interface LookFor {
  lowest_at_most_mm: number;
  highest_at_least_mm: number;
  by: string;
  until: string;
  kind: BikeKind;
}

export interface YearsStretch {
  from: string;
  to: string;
  bike: string;
  how: "bought" | "owned" | "handed_on";
  handed_from: string | null;
  saddle_mm: [number, number];
  least_probability: number;
  checks: Check[];
}

export interface YearsGap {
  from: string;
  to: string;
  look_for: LookFor;
  /** Where one bike cannot close it: those after it. */
  then: LookFor[];
}

export interface YearsChild {
  id: string;
  stretches: YearsStretch[];
  gaps: YearsGap[];
  /** The time before any bike here could fit. */
  not_yet: YearsGap | null;
  net_a_month: number | null;
}

export interface YearsAnswer {
  riders: YearsChild[];
  purchases: { bike: string; on: string; price: number; look_for: LookFor }[];
  sales: { bike: string; on: string; back: number; at_the_end: boolean }[];
  cost: { net: number; currency: string | null };
  gap_months: number;
  months_with_bike: number;
  proof: { exact: boolean; least_gap_months: number; least_net: number };
  doubt: {
    holds_until: string | null;
    by_year: { month: string; share: number }[];
    measure_again: string;
  };
  not_measured: string[];
  /** Those of the plan, and those that the request marks. */
  bikes: { id: string; name: string; price: number | null }[];
}
