// A length of tape measure, lying on its side: the scale over the rack and under the rider's window.
import { usePage } from "../page/page-context";
import type { Figures } from "../figures/format-figures";
import { tapeMarks } from "../figures/lengths";
import type { Texts } from "../texts/texts";
import type { HeightScale } from "./height-scale";
import type { ShownWindow } from "./shown-window";
import { TapeMarks } from "./tape-marks";

interface TapeStripProps {
  scale: HeightScale;
  window: ShownWindow | null;
  /** What it is the scale of, where it is one. */
  label?: string;
}

const markLength = { short: 9, middle: 15, long: 21 };
const height = 48;
/** Ends above the figures. */
const targetLength = 27;

export function TapeStrip({ scale, window, label }: TapeStripProps) {
  const { texts, figures } = usePage();
  const at = (mm: number): string => `${scale.percent(mm)}%`;
  const marks = tapeMarks(scale.low, scale.high, figures.unit, 7);
  const shows = [label, window && windowWords(texts, figures, window)];
  return (
    <div class="tape-strip" role="img" aria-label={shows.filter(Boolean).join(" ")}>
      <svg width="100%" height={height} aria-hidden="true">
        {window !== null && (
          <rect
            class={window.target === null ? "tape-window guess" : "tape-window"}
            x={at(window.low)}
            width={`${scale.percent(window.high) - scale.percent(window.low)}%`}
            y="0"
            height={height}
          />
        )}
        {/* A path knows no percentages: here it is a hundred wide. */}
        <svg viewBox={`0 0 100 ${height}`} preserveAspectRatio="none">
          <TapeMarks marks={marks} line={({ mm, rank }) => `M${scale.percent(mm)} 0v${markLength[rank]}`} />
        </svg>
        {marks.map(
          ({ mm, figure }) =>
            figure !== null &&
            scale.percent(mm) > 5 &&
            scale.percent(mm) < 95 && (
              <text key={mm} class="tape-figure" x={at(mm)} y={height - 7}>
                {figure}
              </text>
            ),
        )}
        {window !== null && window.target !== null && (
          <line class="tape-target" x1={at(window.target)} x2={at(window.target)} y1="0" y2={targetLength} />
        )}
      </svg>
    </div>
  );
}

function windowWords(texts: Texts, figures: Figures, { low, high, target }: ShownWindow): string {
  const ends = { low: figures.length(low), high: figures.length(high) };
  return target === null
    ? texts.guess.drawing(ends)
    : texts.window.drawing({ ...ends, target: figures.length(target) });
}
