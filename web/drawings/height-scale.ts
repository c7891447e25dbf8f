// One common scale for heights: from millimetres above the floor to a share of a drawing's length.

export interface HeightScale {
  low: number;
  high: number;
  /** Where a height is, in percent of the drawing. */
  percent: (mm: number) => number;
}

/** Ends of a scale fall on whole steps. */
const step = 50;

/** The scale on which all the given heights can be seen, with a little air at both ends. */
export function scaleOver(heights: Iterable<number>, usual: { low: number; high: number }): HeightScale {
  let low = Infinity;
  let high = -Infinity;
  for (const height of heights) {
    low = Math.min(low, height);
    high = Math.max(high, height);
  }
  if (low > high) ({ low, high } = usual);
  const first = Math.max(0, Math.floor((low - 10) / step) * step);
  const last = Math.ceil((high + 10) / step) * step;
  return scaleBetween(first, last);
}

export function scaleBetween(low: number, high: number): HeightScale {
  return { low, high, percent: (mm) => ((mm - low) / (high - low)) * 100 };
}

/** Keeps a percentage inside the drawing, for figures that are beyond it. */
export function inside(percent: number): number {
  return Math.min(100, Math.max(0, percent));
}
