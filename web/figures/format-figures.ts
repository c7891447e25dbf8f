// Numbers, dates, money and lengths in the reader's form, all through the browser's own Intl.
import type { TypedUnit } from "../engine/wire-requests";
import { lengthFigure } from "./lengths";

export interface Figures {
  locale: string;
  unit: TypedUnit;
  number: (value: number) => string;
  /** To the hundredth, as the engine says a figure of a list. */
  exact: (value: number) => string;
  /** "49.5 cm", "19½ in". */
  length: (mm: number) => string;
  /** "49.5" without the unit, for pairs: "47 to 50.5 cm". */
  bareLength: (mm: number) => string;
  /** A small difference, finer than a tape is read: "3 mm", "⅛ in". */
  shift: (mm: number) => string;
  mass: (kg: number) => string;
  metres: (value: number) => string;
  speed: (kilometresPerHour: number) => string;
  /** "31°". */
  angle: (degrees: number) => string;
  /** 0.43 is "43%". */
  share: (ratio: number) => string;
  money: (amount: number, currency: string | null) => string;
  /** "3 March 2027". */
  day: (isoDate: string) => string;
  /** "March 2027". */
  month: (isoDate: string) => string;
  /** "Mar 2027", for columns. */
  shortMonth: (isoDate: string) => string;
  /** The name of a month, from 1. */
  monthName: (month: number) => string;
  year: (isoDate: string) => string;
}

/** Dates on the wire carry no time zone; they are shown as they stand. */
function dateOf(isoDate: string): Date {
  return new Date(`${isoDate.slice(0, 10)}T00:00:00Z`);
}

const noBreak = "\u00a0";

/** How units are written in the reader's language. */
export interface UnitSymbols {
  cm: string;
  in: string;
  kg: string;
  mm: string;
  m: string;
  km_h: string;
}

/** What is less would be shown as no eighth of an inch at all. */
const smallestEighth = 25.4 / 8;

/** Making a form is slow and using it is not: make the figures once, and again when the unit changes. */
export function createFigures(locale: string, unit: TypedUnit, symbols: UnitSymbols): Figures {
  const plain = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 });
  const dateForm = (parts: Intl.DateTimeFormatOptions): Intl.DateTimeFormat =>
    new Intl.DateTimeFormat(locale, { ...parts, timeZone: "UTC" });
  const day = dateForm({ day: "numeric", month: "long", year: "numeric" });
  const month = dateForm({ month: "long", year: "numeric" });
  const shortMonth = dateForm({ month: "short", year: "numeric" });
  const monthName = dateForm({ month: "long" });

  const hundredth = new Intl.NumberFormat(locale, { maximumFractionDigits: 2 });
  const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 });
  const percent = new Intl.NumberFormat(locale, { style: "percent", maximumFractionDigits: 0 });

  const bareLength = (mm: number): string => lengthFigure(mm, unit, plain);
  return {
    locale,
    unit,
    bareLength,
    number: (value) => plain.format(value),
    exact: (value) => hundredth.format(value),
    length: (mm) => bareLength(mm) + noBreak + symbols[unit],
    shift: (mm) =>
      unit === "in" && mm >= smallestEighth
        ? bareLength(mm) + noBreak + symbols.in
        : whole.format(mm) + noBreak + symbols.mm,
    metres: (value) => plain.format(value) + noBreak + symbols.m,
    speed: (kilometresPerHour) => whole.format(kilometresPerHour) + noBreak + symbols.km_h,
    angle: (degrees) => `${whole.format(degrees)}°`,
    share: (ratio) => percent.format(ratio),
    mass: (kg) => plain.format(kg) + noBreak + symbols.kg,
    money: moneyForm(locale),
    day: (isoDate) => day.format(dateOf(isoDate)),
    month: (isoDate) => month.format(dateOf(isoDate)),
    shortMonth: (isoDate) => shortMonth.format(dateOf(isoDate)),
    monthName: (number) => monthName.format(new Date(Date.UTC(2000, number - 1, 1))),
    year: (isoDate) => isoDate.slice(0, 4),
  };
}

/** Whole amounts without decimals. What is no currency code stands behind its amount as it is. */
function moneyForm(locale: string): Figures["money"] {
  const forms = new Map<string, Intl.NumberFormat>();

  function formFor(currency: string | null, decimals: number): Intl.NumberFormat {
    const key = `${currency ?? ""} ${decimals}`;
    const made = forms.get(key);
    if (made !== undefined) return made;
    const digits = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
    const style = currency === null ? {} : ({ style: "currency", currency } as const);
    const form = new Intl.NumberFormat(locale, { ...style, ...digits });
    forms.set(key, form);
    return form;
  }

  return (amount, currency) => {
    const code = currency !== null && /^[A-Z]{3}$/.test(currency) ? currency : null;
    const figure = formFor(code, Number.isInteger(amount) ? 0 : 2).format(amount);
    return currency === null || code !== null ? figure : figure + noBreak + currency;
  };
}
