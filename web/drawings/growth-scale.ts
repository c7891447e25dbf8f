// Scales of the growth picture: days across, millimetres upwards, to pixels.
import type { ForecastAnswer, ForecastMonth, JudgedBike } from "../engine/wire-answers";

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
const margin = { left: 12, right: 8, top: 34, bottom: 34 };
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

/** The first days of the years between two dates. */
export function newYears(from: string, to: string): string[] {
  const first = Number(from.slice(0, 4)) + 1;
  const last = Number(to.slice(0, 4));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, place) => `${first + place}-01-01`);
}
