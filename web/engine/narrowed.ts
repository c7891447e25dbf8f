// Where the page sends less than the engine takes.
import type { LengthUnit, RowsRequest as AnyRows, TapedBike } from "./wire";

/** What readers choose between. */
export type TypedUnit = Exclude<LengthUnit, "mm">;

export type RowsRequest = Record<keyof AnyRows, number>;

/** A bike taped by the family; lengths carry their unit. */
export type TapedRequest = Pick<
  TapedBike,
  "id" | "name" | "kind" | "wheel" | "saddle_lowest" | "saddle_highest" | "standover" | "mass_kg" | "price"
>;
