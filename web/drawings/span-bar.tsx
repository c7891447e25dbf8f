// One bike on the rack's scale: its span as a piece of rule, the rider's window behind it, the saddle where it is set.
import { usePage } from "../page/page-context";
import type { Verdict } from "../engine/wire";
import type { Figures } from "../figures/format-figures";
import type { Texts } from "../texts/texts";
import { inside } from "./height-scale";
import type { HeightScale } from "./height-scale";
import type { ShownWindow } from "./shown-window";

interface Span {
  lowest: number | null;
  highest: number | null;
}

interface SpanBarProps {
  scale: HeightScale;
  span: Span;
  /** What suits the rider: where it meets the span, the bar says so. */
  window?: ShownWindow | null;
  verdict: Verdict | null;
  /** null: it cannot be set, or where is a guess. */
  saddle: number | null;
}

/** The span in words, as figures have it. */
export function spanWords(texts: Texts, figures: Figures, { lowest, highest }: Span): string {
  const shown = (mm: number | null): string | null => (mm === null ? null : figures.length(mm));
  return texts.rack.bar({ lowest: shown(lowest), highest: shown(highest) });
}

export function SpanBar({ scale, span, window = null, verdict, saddle }: SpanBarProps) {
  const { texts, figures } = usePage();
  const left = span.lowest === null ? 0 : inside(scale.percent(span.lowest));
  const right = span.highest === null ? 100 : inside(scale.percent(span.highest));
  // With an end unknown it may end anywhere.
  const suits = verdict === "fits_now" || verdict === "close_call";
  const open = span.lowest === null ? "open-below" : span.highest === null ? "open-above" : "";
  return (
    <div class="lane" role="img" aria-label={spanWords(texts, figures, span)}>
      <span
        class={`span-bar ${verdict ?? "unjudged"} ${open}`}
        style={{ left: `${left}%`, width: `${right - left}%` }}
      />
      {suits && window?.target != null && <Shared scale={scale} window={window} left={left} right={right} />}
      {saddle !== null && <span class="peg" style={{ left: `${inside(scale.percent(saddle))}%` }} />}
    </div>
  );
}

/** Where the bar, which goes from `left` to `right`, is in the window of a measured rider. */
function Shared({ scale, window, left, right }: SharedProps) {
  const from = Math.max(left, inside(scale.percent(window.low)));
  const width = Math.min(right, inside(scale.percent(window.high))) - from;
  return width > 0 ? <span class="shared" style={{ left: `${from}%`, width: `${width}%` }} /> : null;
}

interface SharedProps {
  scale: HeightScale;
  window: ShownWindow;
  left: number;
  right: number;
}

/** The rider's window, one band behind all bikes. */
export function WindowBand({ scale, window }: { scale: HeightScale; window: ShownWindow }) {
  const left = inside(scale.percent(window.low));
  const width = inside(scale.percent(window.high)) - left;
  return (
    <div class="band-room" aria-hidden="true">
      <span
        class={window.target === null ? "band guess" : "band"}
        style={{ left: `${left}%`, width: `${width}%` }}
      />
    </div>
  );
}
