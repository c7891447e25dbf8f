// The rider's band on a scale of saddle heights: the window of a measured leg, or, as wide as the doubt, that of a guessed one.
import type { JudgedRider } from "../engine/wire";

export interface ShownWindow {
  low: number;
  high: number;
  /** null: a guess has no one height. */
  target: number | null;
}

/** Nobody measured the leg: no height may be read as one to set a saddle to. */
export function isGuess({ basis }: Pick<JudgedRider, "basis">): boolean {
  return basis !== "measured";
}

export function shownWindow(rider: JudgedRider | null): ShownWindow | null {
  if (rider === null) return null;
  return isGuess(rider) ? { ...rider.window_likely_mm, target: null } : rider.window_mm;
}
