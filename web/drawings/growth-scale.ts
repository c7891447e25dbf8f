// Scales of the growth picture: days across, millimetres upwards, to pixels.
import type { ForecastAnswer, ForecastMonth, JudgedBike } from "../engine/wire";

export interface GrowthScale {
  width: number;
  height: number;
  x: (isoDate: string) => number;
  y: (mm: number) => number;
  from: string;
  to: string;
  low: number;
  high: number;
}

const dayOf = (isoDate: string): number => Date.parse(`${isoDate}T00:00:00Z`);

/** Room for the heights on the left and for the years below. */
export const margin = { left: 38, right: 8, top: 34, bottom: 34 };
const shortestPicture = 24;
const afterTheEnd = 8;

/** The months worth drawing: a while beyond the day on which the bike is surely outgrown. */
export function monthsDrawn(forecast: ForecastAnswer, bike: JudgedBike): ForecastMonth[] {
  const end = bike.outgrown?.p90 ?? null;
  const all = [forecast.today, ...forecast.months];
  if (end === null) return all;
  const last = all.findIndex((month) => month.on >= end);
  return last < 0 ? all : all.slice(0, Math.max(shortestPicture, last + afterTheEnd));
}

export function growthScale(
  months: ForecastMonth[],
  earliest: string,
  heights: number[],
  width: number,
  height: number,
): GrowthScale {
  const from = earliest;
  const to = months.at(-1)?.on ?? earliest;
  const low = Math.min(...heights) - 15;
  const high = Math.max(...heights) + 15;
  const across = width - margin.left - margin.right;
  const upwards = height - margin.top - margin.bottom;
  const days = dayOf(to) - dayOf(from);
  return {
    width,
    height,
    from,
    to,
    low,
    high,
    x: (isoDate) => margin.left + ((dayOf(isoDate) - dayOf(from)) / days) * across,
    y: (mm) => margin.top + ((high - mm) / (high - low)) * upwards,
  };
}

export interface YearDrawn {
  /** Its first day, which may be before the picture begins. */
  begins: string;
  from: string;
  to: string;
}

/** The years between two dates, each as far as it is between them. */
export function yearsDrawn(from: string, to: string): YearDrawn[] {
  const first = Number(from.slice(0, 4));
  const last = Number(to.slice(0, 4));
  return Array.from({ length: last - first + 1 }, (_, place) => {
    const begins = `${first + place}-01-01`;
    const ends = `${first + place + 1}-01-01`;
    return { begins, from: begins < from ? from : begins, to: ends > to ? to : ends };
  });
}

/** The place of the month that a point of the picture is nearest to. */
export function monthAt(scale: GrowthScale, months: ForecastMonth[], x: number): number {
  const distances = months.map(({ on }) => Math.abs(scale.x(on) - x));
  return distances.indexOf(Math.min(...distances));
}
