// All bikes of the rack at once, in its order and on its scale: seen as a shape, and a press leads to the place in the list.
import { inside } from "../../drawings/height-scale";
import type { HeightScale } from "../../drawings/height-scale";
import type { ShownWindow } from "../../drawings/shown-window";
import { overviewQuestion } from "../../engine/questions";
import type { Overview } from "../../engine/questions";
import { usePage } from "../../page/page-context";
import { Fold } from "../../parts/fold";
import { lastAnswer } from "../../state/answers";
import type { PageState } from "../../state/page-state";
import { unfolded } from "../../state/screen-changes";
import { countWords } from "./rack-head";

interface RackOverviewProps {
  state: PageState;
  scale: HeightScale;
  window: ShownWindow | null;
  onSeek: (sought: { place: number }) => void;
}

export function RackOverview({ state, ...drawing }: RackOverviewProps) {
  const { texts, change } = usePage();
  const { answer } = lastAnswer(state, overviewQuestion);
  return (
    <div class="what-if">
      <Fold
        title={texts.rack.overview}
        open={state.overviewOpen}
        onFold={(open) => change(unfolded("overviewOpen", open))}
      >
        {answer === null ? (
          <p role="status">{texts.whatIf.busy}</p>
        ) : (
          <Shape overview={answer} {...drawing} />
        )}
      </Fold>
    </div>
  );
}

/** In pixels: what a bike is given, where there is room, and the highest picture. */
const bikeHeight = 6;
const mostHeight = 320;

function Shape({
  overview,
  scale,
  window,
  onSeek,
}: Omit<RackOverviewProps, "state"> & { overview: Overview }) {
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
        return (
          <g key={number}>
            <path class={verdict} d={Array.from({ length: count }, (_, bike) => bar(from + bike)).join("")} />
            {from > 0 && <path class="overview-line" d={`M0 ${from}H100`} />}
          </g>
        );
      })}
      {window !== null && (
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
