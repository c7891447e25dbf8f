// What a page around Saddlerule, or the part of an address behind its #, may say to it. Each is checked by itself; what is
// not understood counts as not said.
import type { TypedUnit } from "../engine/narrowed";
import { languages } from "../texts/languages";
import type { Screen } from "../state/page-state";
import type { Language } from "../texts/languages";

/** Screens that Saddlerule can begin with; the card is that of the bike that is named as well. */
const views = ["rider", "rack", "tape", "list", "club", "suits", "years", "keep", "card"] as const;

export type View = (typeof views)[number];

export interface Settings {
  /** The address of a list, as it was written, which is relative to the page. */
  list: string | null;
  language: Language | null;
  units: TypedUnit | null;
  /** Of prices for which the list names none. */
  currency: string | null;
  view: View | null;
  /** A bike to begin with, by its mark in the list. */
  bike: string | null;
}

export interface Misunderstood {
  name: string;
  value: string;
  /** What would be understood, in English: it is for whoever wrote the page. */
  expected: string;
}

type Reader<Value> = (value: string) => Value | null;

function oneOf<Value extends string>(...values: readonly Value[]): Reader<Value> {
  return (value) => values.find((known) => known === value.toLowerCase()) ?? null;
}

const currencies = (): string[] => Intl.supportedValuesOf("currency");

/** Browsers fetch nothing from an address with a name and a password in it. */
function isFetchable(address: string): boolean {
  try {
    const { protocol, username, password } = new URL(address, document.baseURI);
    const isServed = protocol === "http:" || protocol === "https:";
    return (isServed || protocol === document.location.protocol) && username === "" && password === "";
  } catch {
    return false;
  }
}

const readers: { [Name in keyof Settings]: [Reader<NonNullable<Settings[Name]>>, string] } = {
  list: [
    (value) => (value !== "" && isFetchable(value) ? value : null),
    "an address that begins with https: or http:, or one relative to the page",
  ],
  language: [oneOf(...languages), languages.join(", ")],
  units: [oneOf("cm", "in"), "cm or in"],
  currency: [
    (value) => currencies().find((code) => code === value.toUpperCase()) ?? null,
    "a currency of ISO 4217 in three letters, such as EUR",
  ],
  view: [oneOf(...views), views.join(", ")],
  bike: [(value) => (value === "" ? null : value), "the mark of a bike in the list"],
};

export const settingNames = Object.keys(readers) as (keyof Settings)[];

export const nothingSaid: Settings = {
  list: null,
  language: null,
  units: null,
  currency: null,
  view: null,
  bike: null,
};

/** The screen that is asked for, the rider's where none is. */
export function screenSaid({ view, bike }: Pick<Settings, "view" | "bike">): Screen {
  if (bike !== null) return { name: view === "card" ? "card" : "bike", id: bike };
  return { name: view === null || view === "card" ? "rider" : view };
}

/**
 * @param given the value of a setting as it was written, null where nothing was
 * @param misunderstood hears of every value that is not understood
 */
export function readSettings(
  given: (name: string) => string | null,
  misunderstood: (what: Misunderstood) => void,
): Settings {
  const read = settingNames.map((name) => {
    const value = given(name)?.trim() ?? null;
    const [reader, expected] = readers[name];
    const understood = value === null ? null : reader(value);
    if (value !== null && understood === null) misunderstood({ name, value, expected });
    return [name, understood];
  });
  return Object.fromEntries(read) as Settings;
}

/** For the console: whoever writes a page looks there. */
export function misunderstoodWords({ name, value, expected }: Misunderstood): string {
  const shown = value.length > 80 ? `${value.slice(0, 80)}…` : value;
  return `${name}=${JSON.stringify(shown)} is not understood; expected: ${expected}. It is left out.`;
}
