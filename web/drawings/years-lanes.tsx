// The years ahead of a family: a lane for each child, the bikes as yellow pieces of rule on it, striped where none fits. A bike
// that is handed on goes on in another lane, at the end of a dotted line.
//
// Across it counts in pixels, and downwards in letters: so it has room for whatever size these are.
import type { YearsAnswer } from "../engine/wire";
import { usePage } from "../page/page-context";
import { stripes } from "./stripes";
import { useWidth } from "./use-width";

interface YearsLanesProps {
  plan: YearsAnswer;
  /** YYYY-MM, the first month. */
  from: string;
  months: number;
  label: string;
  childName: (id: string) => string;
  /** From 1; the key below the drawing has the names. */
  numberOf: (bike: string) => number;
  bikeName: (bike: string) => string;
}

function monthCount(month: string): number {
  const [year, of] = month.split("-").map(Number);
  return 12 * (year ?? 0) + (of ?? 0);
}

const laneHeight = 4;
const barTop = 1.5;
const barHeight = 2;
const em = (letters: number): string => `${letters}em`;

/** Pixels of a letter and of a year, about: what is longer than its bar is not written on it. */
const letter = 9;
const yearRoom = 54;
const numberRoom = 14;

export function YearsLanes({ plan, from, months, label, childName, numberOf, bikeName }: YearsLanesProps) {
  const [place, width] = useWidth();
  const { figures } = usePage();
  const first = monthCount(from);
  const x = (month: string): number => 2 + ((monthCount(month) - first) / months) * (width - 4);
  const top = (lane: number): number => lane * laneHeight + barTop;
  const foot = plan.riders.length * laneHeight;
  const years = Array.from({ length: Math.ceil(months / 12) }, (_, at) => Number(from.slice(0, 4)) + at + 1);
  const everyYear = Math.ceil(yearRoom / ((width / months) * 12));
  /** Where a bike leaves one lane, and where it comes into another. */
  const handed = plan.riders.flatMap(({ id, stretches }, lane) =>
    stretches
      .filter(({ how }) => how === "handed_on")
      .map(({ from, bike, handed_from: giver }) => {
        const other = plan.riders.findIndex((rider) => rider.id === giver);
        const left = plan.riders[other]?.stretches.find((one) => one.bike === bike)?.to ?? from;
        const above = other < lane ? barHeight : 0;
        return {
          key: `${id} ${from}`,
          from: { x: x(left) - 5, y: top(other) + above },
          to: { x: x(from) + 5, y: top(lane) + barHeight - above },
        };
      }),
  );
  return (
    <div ref={place} class="growth">
      <svg class="drawing years-lanes" height={em(foot + 1.8)} role="img" aria-label={label}>
        {years.map((year, at) => {
          const here = x(`${year}-01`);
          return (
            <g key={year}>
              <line class="growth-level" x1={here} x2={here} y2={em(foot)} />
              {at % everyYear === 0 && here > 20 && here < width - 20 && (
                <text
                  class={`growth-figure year${(at / everyYear) % 2 === 1 ? " second" : ""}`}
                  x={here}
                  y={em(foot + 1.2)}
                >
                  {figures.year(String(year))}
                </text>
              )}
            </g>
          );
        })}
        {handed.map(({ key, from, to }) => (
          <line key={key} class="years-handed" x1={from.x} y1={em(from.y)} x2={to.x} y2={em(to.y)} />
        ))}
        <line class="growth-axis" x2={width} y1={em(foot)} y2={em(foot)} />
        {plan.riders.map((rider, lane) => (
          <g key={rider.id}>
            <text class="growth-figure" x="2" y={em(top(lane) - 0.4)}>
              {childName(rider.id)}
            </text>
            <rect class="years-lane" y={em(top(lane))} width={width} height={em(barHeight)} />
            {rider.gaps.map((gap) => (
              <svg
                key={gap.from}
                x={x(gap.from)}
                y={em(top(lane))}
                width={x(gap.to) - x(gap.from)}
                height={em(barHeight)}
              >
                <rect class="pause-ground" width="100%" height="100%" />
                <path class="pause-stripes" d={stripes(x(gap.to) - x(gap.from), 90)} />
              </svg>
            ))}
            {rider.stretches.map(({ from, to, bike }) => {
              const room = x(to) - x(from);
              const name = `${numberOf(bike)} ${bikeName(bike)}`;
              const written = name.length * letter < room ? name : numberOf(bike);
              return (
                <svg key={from} x={x(from)} y={em(top(lane))} width={room} height={em(barHeight)}>
                  <rect class="years-bike" x="1" width={Math.max(1, room - 2)} height="100%" />
                  {room > numberRoom && (
                    <text class="years-name" x="50%" y={em(1.35)}>
                      {written}
                    </text>
                  )}
                </svg>
              );
            })}
          </g>
        ))}
        {handed.map(({ key, to }) => (
          <circle key={key} class="years-handed" cx={to.x} cy={em(to.y)} r="4" />
        ))}
      </svg>
    </div>
  );
}
