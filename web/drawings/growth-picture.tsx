// The years ahead for one bike: the saddle height that the rider will need, as a band that climbs, against what the
// bike's saddle can do, as a level piece of rule. Where the band enters and leaves the rule, the bike starts and ends.
import type { ForecastAnswer, JudgedBike, Pause, WindowAhead } from "../engine/wire-answers";
import { usePage } from "../page/page-context";
import { tapeMarks } from "../figures/lengths";
import { growthScale, monthsDrawn, newYears } from "./growth-scale";
import type { GrowthScale } from "./growth-scale";
import { useWidth } from "./use-width";

const height = 300;

interface GrowthPictureProps {
  forecast: ForecastAnswer;
  bike: JudgedBike;
  label: string;
}

/** One month of the band: the window's edges, and how far they may differ. */
interface Need {
  on: string;
  low: number;
  high: number;
  least: number;
  most: number;
}

/** As far ahead as is drawn. The day a stage begins is there twice, so that its step is drawn upright. */
function needsUntil(last: string, windows: WindowAhead[]): Need[] {
  return windows
    .filter(({ on }) => on <= last)
    .map(({ on, low, high }) => ({ on, low: low.p50, high: high.p50, least: low.p10, most: high.p90 }));
}

function bandPath(scale: GrowthScale, band: Need[], lower: "low" | "least", upper: "high" | "most"): string {
  const points = [
    ...band.map((need) => `${scale.x(need.on)} ${scale.y(need[upper])}`),
    ...[...band].reverse().map((need) => `${scale.x(need.on)} ${scale.y(need[lower])}`),
  ];
  return `M${points.join("L")}Z`;
}

export function GrowthPicture({ forecast, bike, label }: GrowthPictureProps) {
  const [place, width] = useWidth();
  const { figures, texts } = usePage();
  const { lowest, highest } = bike.span_mm;

  const months = monthsDrawn(forecast, bike);
  const band = needsUntil(months.at(-1)?.on ?? forecast.today.on, forecast.windows);
  const readings = forecast.readings.filter(({ on }) => on <= forecast.today.on);
  const earliest = readings[0]?.on ?? forecast.today.on;
  const heights = [
    ...band.flatMap((need) => [need.least, need.most]),
    ...readings.map((reading) => reading.inseam_mm),
    ...[lowest, highest].filter((end) => end !== null),
  ];
  const scale = growthScale(months, earliest, heights, width, height);
  const measured = lowest !== null && highest !== null;
  const top = highest === null ? 0 : scale.y(highest);
  const bottom = lowest === null ? height : scale.y(lowest);

  return (
    <div ref={place} class="growth">
      <svg class="drawing growth-picture" width="100%" height={height} role="img" aria-label={label}>
        <rect
          class={measured ? "growth-bike" : "growth-bike open"}
          x="0"
          y={top}
          width={width}
          height={bottom - top}
        />
        {bike.pauses.map((pause) => (
          <PauseStripes key={pause.from} scale={scale} pause={pause} top={top} bottom={bottom} />
        ))}
        <path class="growth-fringe" d={bandPath(scale, band, "least", "most")} />
        <path class="growth-band" d={bandPath(scale, band, "low", "high")} />
        {tapeMarks(scale.low, scale.high, figures.unit, 8)
          .filter(({ figure }) => figure !== null)
          .map(({ mm }) => (
            <g key={mm}>
              <path class="growth-level" d={`M0 ${scale.y(mm)}H${width}`} />
              <text class="growth-figure" x="4" y={scale.y(mm) - 4}>
                {figures.length(mm)}
              </text>
            </g>
          ))}
        {[top, bottom].map((edge) => (
          <path key={edge} class="growth-edge" d={`M0 ${edge}H${width}`} />
        ))}
        {newYears(scale.from, scale.to).map((day, place) => (
          <g key={day}>
            <path class="growth-year" d={`M${scale.x(day)} ${height - 30}V${height - 22}`} />
            {scale.x(day) > 22 && scale.x(day) < width - 22 && (
              <text
                class={place % 2 === 0 ? "growth-figure year" : "growth-figure year second"}
                x={scale.x(day)}
                y={height - 5}
              >
                {figures.year(day)}
              </text>
            )}
          </g>
        ))}
        <path class="growth-axis" d={`M0 ${height - 30}H${width}`} />
        {earliest < forecast.today.on && (
          <g>
            <path class="growth-level" d={`M${scale.x(forecast.today.on)} 34V${height - 30}`} />
            <text class="growth-figure" x={scale.x(forecast.today.on) + 6} y={height - 38}>
              {texts.growth.today}
            </text>
          </g>
        )}
        {readings.map((reading) => (
          <circle
            key={reading.on}
            class="growth-reading"
            cx={scale.x(reading.on)}
            cy={scale.y(reading.inseam_mm)}
            r="6"
          />
        ))}
        {bike.pauses.map((pause) => (
          <PauseName key={pause.from} scale={scale} pause={pause} name={texts.pauses.names[pause.code]} />
        ))}
        {bike.verdict === "too_tall" && bike.fits_from?.p50 != null && (
          <Moment scale={scale} on={bike.fits_from.p50} range={bike.fits_from} name={texts.growth.start} />
        )}
        {bike.outgrown?.p50 != null && bike.verdict !== "outgrown" && (
          <Moment scale={scale} on={bike.outgrown.p50} range={bike.outgrown} name={texts.growth.end} />
        )}
      </svg>
    </div>
  );
}

interface PauseProps {
  scale: GrowthScale;
  pause: Pause;
}

/** From where to where a pause is drawn; null: it is beyond the picture. */
function stretchOf({ scale, pause }: PauseProps): { from: number; to: number } | null {
  if (pause.from > scale.to) return null;
  return { from: scale.x(pause.from), to: scale.x(pause.to > scale.to ? scale.to : pause.to) };
}

const between = 8;

/** Takes the bike's yellow away in stripes while its saddle does not fit. */
function PauseStripes({ scale, pause, top, bottom }: PauseProps & { top: number; bottom: number }) {
  const stretch = stretchOf({ scale, pause });
  if (stretch === null) return null;
  const { from, to } = stretch;
  const width = to - from;
  const height = bottom - top;
  const stripes: string[] = [];
  // Each from the left or upper edge down to the lower or right one.
  for (let start = between; start < width + height; start += between) {
    const [down, left] = start < height ? [start, 0] : [height, start - height];
    const [up, right] = start < width ? [0, start] : [start - width, width];
    stripes.push(`M${from + left} ${top + down}L${from + right} ${top + up}`);
  }
  return (
    <g>
      <rect class="pause-ground" x={from} y={top} width={width} height={height} />
      <path class="pause-stripes" d={stripes.join("")} />
      <path class="pause-edge" d={`M${from} ${top}V${bottom}M${to} ${top}V${bottom}`} />
    </g>
  );
}

/** Below the chart's dates, where the names of its moments are not. */
function PauseName({ scale, pause, name }: PauseProps & { name: string }) {
  const stretch = stretchOf({ scale, pause });
  if (stretch === null) return null;
  const middle = (stretch.from + stretch.to) / 2;
  const textAt = Math.min(scale.width - halfAWord, Math.max(halfAWord, middle));
  return (
    <text class="growth-figure pause-name" x={textAt} y={scale.height - 38}>
      {name}
    </text>
  );
}

interface MomentProps {
  scale: GrowthScale;
  on: string;
  range: { p10: string | null; p90: string | null };
  name: string;
}

const halfAWord = 30;

/** The day on which the bike begins or ends, with the days between which it may. */
function Moment({ scale, on, range, name }: MomentProps) {
  if (on > scale.to) return null;
  const at = scale.x(on);
  const from = scale.x(range.p10 ?? scale.from);
  const to = scale.x(range.p90 === null || range.p90 > scale.to ? scale.to : range.p90);
  const textAt = Math.min(scale.width - halfAWord, Math.max(halfAWord, at));
  return (
    <g class="moment">
      <path class="moment-line" d={`M${at} 26V${scale.height - 30}`} />
      <path class="moment-range" d={`M${from} 26H${to}M${from} 20v12M${to} 20v12`} />
      <text class="moment-name" x={textAt} y="16">
        {name}
      </text>
    </g>
  );
}
