// Numbers, dates, money and lengths in the reader's form, all through the browser's own Intl.
import type { TypedUnit } from "../engine/narrowed";
import { lengthFigure } from "./lengths";
import { madeOnce } from "./made-once";

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
  /** "6.4 kg"; "14.1 lb" beside inches. */
  mass: (kg: number) => string;
  /** "kg" or "lb", as labels have it. */
  massUnit: string;
  /** "3.1 m"; "10.2 ft" beside inches. */
  metres: (value: number) => string;
  speed: (kilometresPerHour: number) => string;
  /** "31°". */
  angle: (degrees: number) => string;
  /** 0.43 is "43%". */
  share: (ratio: number) => string;
  /** "2.5 years", "1 month". */
  years: (value: number) => string;
  months: (value: number) => string;
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

/** Dates on the wire carry no time zone; they are shown as they are. */
function dateOf(isoDate: string): Date {
  return new Date(`${isoDate.slice(0, 10)}T00:00:00Z`);
}

const noBreak = "\u00a0";

// By the international yard and pound agreement of 1959, exact.
const kilogramsInPound = 0.45359237;
const metresInFoot = 0.3048;
const kilometresInMile = 1.609344;

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

/** Made again when the unit changes. */
export function createFigures(locale: string, unit: TypedUnit, symbols: UnitSymbols): Figures {
  const numbers = (maximumFractionDigits: number, style: "decimal" | "percent" = "decimal") =>
    madeOnce<number>(() => new Intl.NumberFormat(locale, { style, maximumFractionDigits }));
  const dates = (parts: Intl.DateTimeFormatOptions): ((isoDate: string) => string) => {
    const form = madeOnce<Date>(() => new Intl.DateTimeFormat(locale, { ...parts, timeZone: "UTC" }));
    return (isoDate) => form(dateOf(isoDate));
  };
  const inUnit = (
    name: string,
    maximumFractionDigits: number,
    unitDisplay: "short" | "long" = "short",
  ): ((value: number) => string) => {
    const form = madeOnce<number>(
      () => new Intl.NumberFormat(locale, { style: "unit", unit: name, unitDisplay, maximumFractionDigits }),
    );
    return (value) => form(value).replaceAll(" ", noBreak);
  };
  const number = numbers(1);
  const whole = numbers(0);
  const nameOfMonth = dates({ month: "long" });

  const bareLength = (mm: number): string => lengthFigure(mm, unit, number);

  function metric(): Pick<Figures, "mass" | "massUnit" | "metres" | "speed"> {
    return {
      mass: (kg) => number(kg) + noBreak + symbols.kg,
      massUnit: symbols.kg,
      metres: (value) => number(value) + noBreak + symbols.m,
      speed: (kilometresPerHour) => whole(kilometresPerHour) + noBreak + symbols.km_h,
    };
  }

  /** Whose names are those that the browser has for the language. */
  function imperial(): ReturnType<typeof metric> {
    const pounds = inUnit("pound", 1);
    const feet = inUnit("foot", 1);
    const milesAnHour = inUnit("mile-per-hour", 0);
    return {
      mass: (kg) => pounds(kg / kilogramsInPound),
      massUnit: "lb",
      metres: (value) => feet(value / metresInFoot),
      speed: (kilometresPerHour) => milesAnHour(kilometresPerHour / kilometresInMile),
    };
  }

  return {
    locale,
    unit,
    bareLength,
    number,
    exact: numbers(2),
    length: (mm) => bareLength(mm) + noBreak + symbols[unit],
    shift: (mm) =>
      unit === "in" && mm >= smallestEighth
        ? bareLength(mm) + noBreak + symbols.in
        : whole(mm) + noBreak + symbols.mm,
    ...(unit === "in" ? imperial() : metric()),
    angle: (degrees) => `${whole(degrees)}°`,
    share: numbers(0, "percent"),
    years: inUnit("year", 1, "long"),
    months: inUnit("month", 0, "long"),
    money: moneyForm(locale),
    day: dates({ day: "numeric", month: "long", year: "numeric" }),
    month: dates({ month: "long", year: "numeric" }),
    shortMonth: dates({ month: "short", year: "numeric" }),
    monthName: (month) => nameOfMonth(`2000-${String(month).padStart(2, "0")}-01`),
    year: (isoDate) => isoDate.slice(0, 4),
  };
}

/** Whole amounts without decimals. What is no currency code comes after its amount as it is. */
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
