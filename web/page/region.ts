// Where the reader is, as far as the browser's languages say.
import type { Population } from "../engine/wire";

const populations: Record<string, Population> = { US: "us", GB: "gb", NL: "nl" };

/** Whose children are most like the reader's: by the first of the languages that names a region. */
export function populationFor(wanted: readonly string[]): Population {
  for (const tag of wanted) {
    const region = regionOf(tag);
    if (region !== undefined) return populations[region] ?? "any";
  }
  return "any";
}

function regionOf(tag: string): string | undefined {
  try {
    return new Intl.Locale(tag).region;
  } catch {
    return undefined; // no language tag: browsers hand on what the reader typed
  }
}
