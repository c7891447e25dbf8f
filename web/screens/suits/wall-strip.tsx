// A strip for the wall at true size, on sheets to cut and join: a scale from the floor up, and beside it where each bike begins
// and stops to fit. All drawings count in millimetres.
import type { TypedUnit } from "../../engine/narrowed";
import { usePage } from "../../page/page-context";
import type { Paper } from "./paper-size";
import { drawnEnds, openEnd } from "./suits-rows";
import type { SuitsRow } from "./suits-rows";

/** How much of the scale a sheet bears: whole units, so that sheets meet at a numbered line. */
const lengths: Record<Paper, Record<TypedUnit, number>> = {
  a4: { cm: 250, in: 254 },
  letter: { cm: 230, in: 228.6 },
};

/** The smallest division, and how many make a middle line and a unit. */
const scales = {
  cm: { mm: 1, middle: 5, whole: 10 },
  in: { mm: 3.175, middle: 4, whole: 8 },
} as const;

const width = 186;
/** Above the upper cut and below the lower one. */
const above = 8;
const below = 12;
const lanesFrom = 30;
const mostLanes = 40;
const checkLength = 100;

interface Lane {
  row: SuitsRow;
  from: number;
  to: number;
  lane: number;
}

/** A bike begins in the first lane that is free again; `left`: how many found none. */
function lanesOf(rows: SuitsRow[]): { lanes: Lane[]; number: number; left: number } {
  const ends: number[] = [];
  const lanes: Lane[] = [];
  const sorted = rows
    .map((row) => ({ row, ends: drawnEnds(row.legs) }))
    .sort((a, b) => a.ends[0] - b.ends[0] || a.ends[1] - b.ends[1]);
  for (const {
    row,
    ends: [from, to],
  } of sorted) {
    const free = ends.findIndex((end) => end + 5 < from);
    const lane = free < 0 ? ends.length : free;
    if (lane >= mostLanes) continue;
    ends[lane] = to;
    lanes.push({ row, from, to, lane });
  }
  return { lanes, number: ends.length, left: rows.length - lanes.length };
}

interface WallStripProps {
  rows: SuitsRow[];
  paper: Paper;
}

export function WallStrip({ rows, paper }: WallStripProps) {
  const { texts, figures } = usePage();
  const { unit } = figures;
  const { lanes, number: columns, left } = lanesOf(rows);
  const step = Math.min(8, (width - lanesFrom) / Math.max(columns, 1));
  const length = lengths[paper][unit];
  const number = Math.ceil(Math.max(length, ...lanes.map(({ to }) => to + 1)) / length);
  const floor = above + length;
  const sheets = Array.from({ length: number }, (_, sheet) => {
    const base = sheet * length;
    const at = (mm: number): number => floor - (mm - base);
    return (
      <svg
        key={sheet}
        class="strip-sheet"
        viewBox={`0 0 ${width} ${floor + below}`}
        style={{ "--high": `${floor + below}mm` }}
        role="img"
        aria-label={texts.suits.sheet({ number: sheet + 1, all: number })}
      >
        <text x="0" y="5">
          {texts.suits.sheet({ number: sheet + 1, all: number })}
        </text>
        {lanes.map(({ row: { bike, legs }, from, to, lane }) => {
          const low = Math.max(from, base);
          const high = Math.min(to, base + length);
          if (low >= high) return null;
          const x = lanesFrom + lane * step;
          return (
            <g key={bike.id} class="strip-bike">
              <rect
                class={openEnd(legs)}
                x={x}
                y={at(high)}
                width={step - 0.8}
                height={high - low}
                data-bike={bike.id}
              />
              <path
                d={[from, to]
                  .map((end) => (end === low || end === high ? `M${x} ${at(end)}h${step - 0.8}` : ""))
                  .join("")}
              />
              {high - low > 8 && (
                <text
                  transform={`translate(${x + step / 2 + 0.8} ${at(low) - 1.5}) rotate(-90)`}
                  font-size={Math.min(step - 1, 4)}
                >
                  {bike.id}
                </text>
              )}
            </g>
          );
        })}
        <StripScale base={base} length={length} at={at} unit={unit} />
        {[above, floor].map((y) => (
          <path key={y} class="strip-cut" d={`M24 ${y}H${width}`} />
        ))}
        <text x="0" y={floor + 7}>
          {texts.suits.check({ length: "100 mm" })}
        </text>
        <path class="strip-check" d={`M75 ${floor + 6}h${checkLength}m0-2v4m${-checkLength} 0v-4`} />
      </svg>
    );
  });
  return (
    <>
      <div class="stack on-screen">
        <p>{texts.suits.strip({ sheets: number })}</p>
        <p>{texts.suits.how}</p>
        {left > 0 && <p>{texts.suits.full({ number: left })}</p>}
      </div>
      <div class="strip-sheets">{sheets}</div>
    </>
  );
}

interface StripScaleProps {
  base: number;
  length: number;
  at: (mm: number) => number;
  unit: TypedUnit;
}

function StripScale({ base, length, at, unit }: StripScaleProps) {
  const { mm, middle, whole } = scales[unit];
  const first = Math.round(base / mm);
  const counts = Array.from({ length: Math.round(length / mm) + 1 }, (_, count) => first + count);
  const reach = (count: number): number => (count % whole === 0 ? 14 : count % middle === 0 ? 9 : 5);
  return (
    <>
      <path
        class="strip-scale"
        d={`M0 ${at(base)}V${at(base + length)}${counts.map((count) => `M0 ${at(count * mm)}h${reach(count)}`).join("")}`}
      />
      {counts
        .filter((count) => count % whole === 0)
        .map((count) => (
          <text key={count} x="16" y={at(count * mm) + 1.5} font-size="5" font-weight="700">
            {count / whole}
          </text>
        ))}
    </>
  );
}
