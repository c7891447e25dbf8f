// What to measure on a bike, from where to where: the measure in hand is on it as a piece of tape, the others as lines.
import { usePage } from "../page/page-context";

/** From where to where in the drawing, the lines that lead to the places meant, and the point meant where it is one. */
const measures = {
  saddle_lowest: { from: [30, 246], to: [30, 93], leads: "M30 93H136", dot: [141, 93] },
  saddle_highest: { from: [54, 246], to: [54, 49], leads: "M54 49H130", dot: [135, 49] },
  standover: { from: [206, 246], to: [206, 116], leads: "", dot: null },
  bottom_bracket_height: { from: [170, 246], to: [170, 196], leads: "", dot: null },
  crank: { from: [170, 196], to: [204, 214], leads: "", dot: null },
  lever_reach: { from: [300, 44], to: [318, 76], leads: "", dot: null },
} as const;

export type Measure = keyof typeof measures;

export function isMeasure(field: string): field is Measure {
  return field in measures;
}

export function MeasuringGuide({ inHand }: { inHand: Measure }) {
  const { texts } = usePage();
  const top = inHand === "saddle_highest";
  return (
    <svg
      class="drawing measuring-guide"
      viewBox="0 0 360 262"
      role="img"
      aria-label={texts.desk.guide({ how: texts.desk.how[inHand] })}
    >
      <path class="floor" d="M4 248h352" />
      <circle class="tyre" cx="106" cy="194" r="48" stroke-width="10" />
      <circle class="tyre" cx="272" cy="194" r="48" stroke-width="10" />
      <path class="seat-post" d={`M145 130L${top ? "132 54" : "138 98"}`} stroke-width="6" />
      <path
        class="guide-frame"
        d="M170 196L145 124L248 108M170 196L254 124M246 98L256 132L272 194M170 196L106 194L146 128M246 98L242 76"
      />
      <path class="guide-bar" d="M242 76q-4-14-22-10" />
      <circle class="chainring" cx="170" cy="196" r="13" />
      <path class="crank" d="M170 196l34 18" stroke-width="6" />
      <path class="pedal" d="M193 214h22" stroke-width="6" />
      <Saddle x={138} y={94} ghost={top} />
      <Saddle x={132} y={50} ghost={!top} />
      {/* The grip and its lever, near. */}
      <circle class="guide-lens" cx="306" cy="62" r="44" />
      <path class="chalk-line" d="M262 66l-32 0" />
      <path class="guide-grip" d="M282 34l42 22" />
      <path class="guide-lever" d="M280 52q12 24 54 30" />
      {Object.entries(measures).map(([name, { from, to, leads, dot }]) => (
        <Distance key={name} from={from} to={to} leads={leads} dot={dot} tape={name === inHand} />
      ))}
    </svg>
  );
}

function Saddle({ x, y, ghost }: { x: number; y: number; ghost: boolean }) {
  return (
    <path
      class={ghost ? "saddle-ghost" : "saddle-shape"}
      d={`M${x - 26} ${y}q4-5 20-2l38 4q6 5-3 6l-36 2-15 6q-8-6-4-16Z`}
    />
  );
}

interface DistanceProps {
  from: readonly [number, number];
  to: readonly [number, number];
  leads: string;
  dot: readonly [number, number] | null;
  tape: boolean;
}

function Distance({ from, to, leads, dot, tape }: DistanceProps) {
  const line = `M${from.join(" ")}L${to.join(" ")}`;
  if (!tape) return <path class="guide-line" d={line} />;
  return (
    <>
      <path class="chalk-line" d={leads} />
      <path class="guide-tape-edge" d={line} />
      <path class="guide-tape" d={line} />
      <path class="guide-tape-marks" d={line} />
      {dot !== null && <circle class="guide-dot" cx={dot[0]} cy={dot[1]} r="5" />}
    </>
  );
}
