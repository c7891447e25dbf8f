// A child's own readings among the inside legs of other children: age across, heights upwards. Five lines, each with the
// share of children that stays below it.
import type { Centiles } from "../engine/wire";
import { tapeMarks } from "../figures/lengths";
import { usePage } from "../page/page-context";
import { useWidth } from "./use-width";

const height = 320;
/** Room for heights, for the shares at the lines' ends, and for the years. */
const margin = { left: 38, right: 52, top: 26, bottom: 34 };

interface CentileChartProps {
  centiles: Centiles;
  label: string;
}

export function CentileChart({ centiles, label }: CentileChartProps) {
  const [place, width] = useWidth();
  const { figures, texts } = usePage();
  const { rows, readings, shares } = centiles;

  const heights = [...rows.flatMap((row) => row.inseams_mm), ...readings.map(({ inseam_mm: mm }) => mm)];
  const low = Math.min(...heights) - 10;
  const high = Math.max(...heights) + 10;
  const first = rows[0]?.age_years ?? 0;
  const last = rows.at(-1)?.age_years ?? 1;
  const right = width - margin.right;
  const floor = height - margin.bottom;
  const x = (age: number): number => margin.left + ((age - first) / (last - first)) * (right - margin.left);
  const y = (mm: number): number => margin.top + ((high - mm) / (high - low)) * (floor - margin.top);

  const lineOf = (line: number): string[] =>
    rows.map((row) => `${x(row.age_years)} ${y(row.inseams_mm[line] ?? low)}`);
  const between = (lower: number, upper: number): string =>
    `M${[...lineOf(upper), ...lineOf(lower).reverse()].join("L")}Z`;
  const outermost = shares.length - 1;
  const years = rows.filter(({ age_years: age }) => Number.isInteger(age)).map(({ age_years: age }) => age);
  // Over many years the lines' ends are close together: then the outermost and the middle one are named.
  const endOf = (line: number): number => y(rows.at(-1)?.inseams_mm[line] ?? low);
  const namedLines = endOf(0) - endOf(outermost) > 18 * outermost ? 1 : outermost / 2;
  const everyYear = Math.ceil((30 * years.length) / (right - margin.left));

  return (
    <div ref={place}>
      <svg class="drawing centiles" width="100%" height={height} role="img" aria-label={label}>
        <path class="centile-most" d={between(0, outermost)} />
        <path class="centile-half" d={between(1, outermost - 1)} />
        {tapeMarks(low, high, figures.unit, 8)
          .filter(({ figure }) => figure !== null)
          .map(({ mm }) => (
            <g key={mm}>
              <path class="growth-level" d={`M${margin.left} ${y(mm)}H${right}`} />
              <text class="growth-figure height" x={margin.left - 6} y={y(mm) + 5}>
                {figures.bareLength(mm)}
              </text>
            </g>
          ))}
        <text class="growth-figure height" x={margin.left - 6} y="16">
          {texts.units[figures.unit]}
        </text>
        {shares.map((share, line) => (
          <g key={share}>
            <path
              class={share === 0.5 ? "centile-line middle" : "centile-line"}
              d={`M${lineOf(line).join("L")}`}
            />
            {line % namedLines === 0 && (
              <text class="growth-figure" x={right + 6} y={endOf(line) + 5}>
                {figures.share(share)}
              </text>
            )}
          </g>
        ))}
        <path class="growth-axis" d={`M${margin.left} ${floor + 4}H${right}`} />
        {years
          .filter((_, place) => place % everyYear === 0)
          .map((age) => (
            <g key={age}>
              <path class="growth-year" d={`M${x(age)} ${floor + 4}v8`} />
              <text class="growth-figure year" x={x(age)} y={height - 6}>
                {age}
              </text>
            </g>
          ))}
        <path
          class="centile-child"
          d={`M${readings.map((reading) => `${x(reading.age_years)} ${y(reading.inseam_mm)}`).join("L")}`}
        />
        {readings.map((reading) => (
          <circle
            key={reading.on}
            class="growth-reading"
            cx={x(reading.age_years)}
            cy={y(reading.inseam_mm)}
            r="6"
          />
        ))}
      </svg>
    </div>
  );
}
