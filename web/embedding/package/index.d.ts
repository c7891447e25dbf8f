// <saddlerule-fit> for TypeScript. Importing "saddlerule-fit" makes the element known to the page.

/** A screen to begin with. */
export type SaddleruleView = "rider" | "rack" | "tape" | "list" | "club" | "suits" | "years" | "keep";

/** A list of bikes that a script holds; its fields are those of a list in a file. */
export interface SaddleruleList {
  bikes: readonly object[];
  [field: string]: unknown;
}

/** Attributes as HTML has them, and what a framework hands over as a property. */
export interface SaddleruleAttributes {
  /** The address of the list of bikes, relative to the page; or the list itself. */
  list?: string | SaddleruleList | undefined;
  language?: "en" | "de" | "fr" | "es" | "nl" | undefined;
  units?: "cm" | "in" | undefined;
  /** Of prices for which the list names none: a code of ISO 4217, such as EUR. */
  currency?: string | undefined;
  view?: SaddleruleView | undefined;
  /** Of its title; the other headings are below. */
  "heading-level"?: 1 | 2 | 3 | "1" | "2" | "3" | undefined;
  /** The browser's Back returns to the screen before, inside the element. */
  "browser-back"?: boolean | "" | undefined;
}

/** The element. Its properties are its attributes: null takes one away. A list that is no address is no attribute either. */
export interface SaddleruleFit extends HTMLElement {
  list: string | SaddleruleList | null;
  /** What the last event of each kind said. */
  readonly told: {
    readonly list?: SaddleruleListDetail;
    readonly verdict?: SaddleruleVerdictDetail;
    readonly problem?: SaddleruleProblemDetail;
  };
  language: string | null;
  units: string | null;
  currency: string | null;
  view: string | null;
  get headingLevel(): string | null;
  set headingLevel(level: string | number | null);
  browserBack: boolean;
}

/** A list was opened or changed. */
export interface SaddleruleListDetail {
  title: string | null;
  bikes: number;
  set_aside: number;
}

export type SaddleruleVerdict = "fits_now" | "close_call" | "too_tall" | "outgrown" | "not_measured";

/** A verdict is shown or changes. Heights are in millimetres above the floor. */
export interface SaddleruleVerdictDetail {
  screen: "bike" | "tape" | "rack";
  id: string;
  name: string;
  verdict: SaddleruleVerdict;
  saddle_mm: number | null;
  /** The saddle heights that suit the child: treat them as private. */
  window_mm: { low: number; target: number; high: number };
  fits_probability: number | null;
}

/** Something is wrong with a list, an attribute, or the element's own files. */
export interface SaddleruleProblemDetail {
  code: string;
  /** A sentence. */
  problem: string;
  attribute?: string;
  value?: string;
  expected?: string;
}

/** Events by name; they bubble up from the element. */
export interface SaddleruleEvents {
  "saddlerule-list": CustomEvent<SaddleruleListDetail>;
  "saddlerule-verdict": CustomEvent<SaddleruleVerdictDetail>;
  "saddlerule-problem": CustomEvent<SaddleruleProblemDetail>;
}

declare global {
  interface HTMLElementTagNameMap {
    "saddlerule-fit": SaddleruleFit;
  }
  interface GlobalEventHandlersEventMap extends SaddleruleEvents {}
}
