// All bikes of the rack at once, in its order and on its scale: seen as a shape, and a press leads to the place in the list.
import { useState } from "preact/hooks";
import { inside } from "../../drawings/height-scale";
import type { HeightScale } from "../../drawings/height-scale";
import type { ShownWindow } from "../../drawings/shown-window";
import { overviewQuestion } from "../../engine/questions";
import type { Overview } from "../../engine/questions";
import type { BikeSpan, Verdict } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { MonthSlider } from "../../parts/month-slider";
import { lastAnswer } from "../../state/answers";
import type { PageState } from "../../state/page-state";
import { countWords } from "./rack-head";

export interface OverviewProps {
  scale: HeightScale;
  window: ShownWindow | null;
  onSeek: (sought: { place: number }) => void;
}

type DrawingProps = OverviewProps & { overview: Overview };

export function OverviewShape({ state, ...drawing }: OverviewProps & { state: PageState }) {
  const { texts } = usePage();
  const { answer } = lastAnswer(state, overviewQuestion);
  return answer === null ? (
    <p role="status">{texts.whatIf.busy}</p>
  ) : (
    <OverTime overview={answer} {...drawing} />
  );
}

const mostMonths = 60;

/** A slider of months lights up what will fit by then, and lets go out what will not any more. */
function OverTime(drawing: DrawingProps) {
  const { texts, figures } = usePage();
  const [months, look] = useState(0);
  const { bikes } = drawing.overview;
  const fits = months === 0 ? null : bikes.map(({ fits_months: stretches }) => fitsIn(months, stretches));
  const says =
    fits === null
      ? texts.rack.look
      : texts.rack.lookSays({
          months: figures.months(months),
          number: fits.filter((one) => one === "fits_now").length,
        });
  return (
    <>
      <Shape {...drawing} fits={fits} />
      <MonthSlider label={texts.rack.look} months={months} most={mostMonths} says={says} onLook={look} />
    </>
  );
}

/** The colour of a bike in that month: as one that fits now, is outgrown or was not measured. */
function fitsIn(month: number, stretches: BikeSpan["fits_months"]): Verdict {
  if (stretches === null) return "not_measured";
  return stretches.some(([from = 0, to = 0]) => from <= month && month < to) ? "fits_now" : "outgrown";
}

/** In pixels: what a bike is given, where there is room, and the highest picture. */
const bikeHeight = 6;
const mostHeight = 320;

function Shape({ overview, scale, window, onSeek, fits }: DrawingProps & { fits: Verdict[] | null }) {
  const { texts } = usePage();
  const { bikes, groups } = overview;
  const at = (mm: number | null, open: number): number => (mm === null ? open : inside(scale.percent(mm)));
  // Apart where there is room between them.
  const thick = bikes.length > mostHeight / 4 ? 1 : 0.7;
  const bar = (place: number): string => {
    const { lowest, highest } = bikes[place]?.span_mm ?? { lowest: null, highest: null };
    const [left, right] = [at(lowest, 0), at(highest, 100)];
    return `M${left.toFixed(1)} ${place}H${right.toFixed(1)}v${thick}H${left.toFixed(1)}z`;
  };
  let first = 0;
  return (
    <svg
      class="overview told"
      role="img"
      aria-label={texts.rack.announced({ counts: countWords(texts, overview).join(", ") })}
      viewBox={`0 0 100 ${bikes.length}`}
      preserveAspectRatio="none"
      height={Math.min(mostHeight, bikes.length * bikeHeight)}
      onClick={({ currentTarget, clientY }) => {
        const { top, height } = currentTarget.getBoundingClientRect();
        onSeek({ place: Math.floor(((clientY - top) / height) * bikes.length) });
      }}
    >
      {groups.map(({ verdict, bikes: count }, number) => {
        const from = first;
        first += count;
        const places = Array.from({ length: count }, (_, bike) => from + bike);
        const colours = fits === null ? [verdict] : [...new Set(places.map((place) => fits[place]))];
        return (
          <g key={number}>
            {colours.map((colour) => (
              <path
                key={colour}
                class={colour}
                d={places
                  .filter((place) => fits === null || fits[place] === colour)
                  .map(bar)
                  .join("")}
              />
            ))}
            {from > 0 && <path class="overview-line" d={`M0 ${from}H100`} />}
          </g>
        );
      })}
      {window !== null && fits === null && (
        <rect
          class="overview-window"
          x={at(window.low, 0)}
          width={at(window.high, 100) - at(window.low, 0)}
          height={bikes.length}
        />
      )}
    </svg>
  );
}
