// Numbers, dates, money and lengths in the reader's form, all through the browser's own Intl.
import type { TypedUnit } from "../engine/wire-requests";
import { lengthFigure } from "./lengths";

export interface Figures {
  locale: string;
  unit: TypedUnit;
  number: (value: number) => string;
  /** "49.5 cm", "19½ in". */
  length: (mm: number) => string;
  /** "49.5" without the unit, for pairs: "47 to 50.5 cm". */
  bareLength: (mm: number) => string;
  mass: (kg: number) => string;
  money: (amount: number, currency: string | null) => string;
  /** "3 March 2027". */
  day: (isoDate: string) => string;
  /** "March 2027". */
  month: (isoDate: string) => string;
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
}

export function createFigures(locale: string, unit: TypedUnit, symbols: UnitSymbols): Figures {
  const plain = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 });
  const dateFormat = (parts: Intl.DateTimeFormatOptions): Intl.DateTimeFormat =>
    new Intl.DateTimeFormat(locale, { ...parts, timeZone: "UTC" });
  const day = dateFormat({ day: "numeric", month: "long", year: "numeric" });
  const month = dateFormat({ month: "long", year: "numeric" });
  const monthName = dateFormat({ month: "long" });

  const bareLength = (mm: number): string => lengthFigure(mm, unit, locale);
  return {
    locale,
    unit,
    bareLength,
    number: (value) => plain.format(value),
    length: (mm) => bareLength(mm) + noBreak + symbols[unit],
    mass: (kg) => plain.format(kg) + noBreak + symbols.kg,
    money: (amount, currency) => money(amount, currency, locale),
    day: (isoDate) => day.format(dateOf(isoDate)),
    month: (isoDate) => month.format(dateOf(isoDate)),
    monthName: (number) => monthName.format(new Date(Date.UTC(2000, number - 1, 1))),
    year: (isoDate) => isoDate.slice(0, 4),
  };
}

/** Whole amounts without decimals. A currency that Intl does not know stands behind its amount as it is. */
function money(amount: number, currency: string | null, locale: string): string {
  const decimals = Number.isInteger(amount) ? 0 : 2;
  const digits = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
  if (currency !== null && /^[A-Z]{3}$/.test(currency)) {
    return new Intl.NumberFormat(locale, { style: "currency", currency, ...digits }).format(amount);
  }
  const figure = new Intl.NumberFormat(locale, digits).format(amount);
  return currency === null ? figure : figure + noBreak + currency;
}
