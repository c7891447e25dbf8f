// The years ahead for one bike: the saddle height that the rider will need, as a band that climbs, against what the
// bike's saddle can do, as a level piece of rule. Where the band enters and leaves the rule, the bike starts and ends.
import type { ForecastAnswer, JudgedBike, Pause, WindowAhead } from "../engine/wire";
import type { TargetedPointerEvent } from "preact";
import { usePage } from "../page/page-context";
import { tapeMarks } from "../figures/lengths";
import { growthScale, margin, monthAt, monthsDrawn, yearsDrawn } from "./growth-scale";
import type { GrowthScale } from "./growth-scale";
import { stripes } from "./stripes";
import { useWidth } from "./use-width";

const height = 300;

interface GrowthPictureProps {
  forecast: ForecastAnswer;
  bike: JudgedBike;
  label: string;
  /** The place among the months drawn that is looked at; 0 is today. */
  lookedAt: number;
  onLook: (month: number) => void;
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

/** A year is named where its name fits into it. */
const aYearsName = 40;

export function GrowthPicture({ forecast, bike, label, lookedAt, onLook }: GrowthPictureProps) {
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
  const bottom = lowest === null ? height - margin.bottom : scale.y(lowest);
  const { left } = margin;
  const lookedOn = months[lookedAt]?.on ?? forecast.today.on;
  const look = (event: TargetedPointerEvent<SVGSVGElement>): void => {
    const { left: edge } = event.currentTarget.getBoundingClientRect();
    if (event.buttons > 0) onLook(monthAt(scale, months, event.clientX - edge));
  };

  return (
    <div ref={place} class="growth">
      <svg
        class="drawing growth-picture"
        width="100%"
        height={height}
        role="img"
        aria-label={label}
        onPointerDown={look}
        onPointerMove={look}
      >
        <rect
          class={measured ? "growth-bike" : "growth-bike open"}
          x={left}
          y={top}
          width={width - left}
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
              <path class="growth-level" d={`M${left} ${scale.y(mm)}H${width}`} />
              <text class="growth-figure height" x={left - 6} y={scale.y(mm) + 5}>
                {figures.bareLength(mm)}
              </text>
            </g>
          ))}
        <text class="growth-figure height" x={left - 6} y="16">
          {texts.units[figures.unit]}
        </text>
        {[top, bottom].map((edge) => (
          <path key={edge} class="growth-edge" d={`M${left} ${edge}H${width}`} />
        ))}
        {yearsDrawn(scale.from, scale.to).map(({ begins, from, to }, place) => (
          <g key={begins}>
            {from === begins && (
              <path class="growth-year" d={`M${scale.x(from)} ${height - 30}V${height - 12}`} />
            )}
            {scale.x(to) - scale.x(from) > aYearsName && (
              <text
                class={place % 2 === 0 ? "growth-figure year" : "growth-figure year second"}
                x={(scale.x(from) + scale.x(to)) / 2}
                y={height - 8}
              >
                {figures.year(from)}
              </text>
            )}
          </g>
        ))}
        <path class="growth-axis" d={`M${left} ${height - 30}H${width}`} />
        <path class="growth-looked" d={`M${scale.x(lookedOn)} 34V${height - 30}`} />
        <text
          class="growth-figure"
          x={scale.x(forecast.today.on) + (earliest < forecast.today.on ? -6 : 6)}
          y={height - 38}
          text-anchor={earliest < forecast.today.on ? "end" : "start"}
        >
          {texts.growth.today}
        </text>
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

/** Takes the bike's yellow away in stripes while its saddle does not fit. */
function PauseStripes({ scale, pause, top, bottom }: PauseProps & { top: number; bottom: number }) {
  const stretch = stretchOf({ scale, pause });
  if (stretch === null) return null;
  const { from, to } = stretch;
  const width = to - from;
  const height = bottom - top;
  return (
    <g>
      <rect class="pause-ground" x={from} y={top} width={width} height={height} />
      <path class="pause-stripes" transform={`translate(${from} ${top})`} d={stripes(width, height)} />
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
