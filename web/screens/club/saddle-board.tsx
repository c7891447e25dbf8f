// The board: riders on the left and bikes on the right of one scale of saddle heights, pairs as lines between them.
import type { ClubDayAnswer } from "../../engine/wire";
import { usePage } from "../../page/page-context";

const height = 560;
const margin = 18;
const riderAxis = 84;
const bikesFrom = 150;
const right = 360;
const leastGap = 15;

/** Labels keep clear of each other: each goes as far down as the one above it needs. */
function apart(places: number[]): number[] {
  let last = -Infinity;
  return places.map((place) => (last = Math.max(place, last + leastGap)));
}

export function SaddleBoard({ plan }: { plan: ClubDayAnswer }) {
  const { texts, figures } = usePage();
  const targets = plan.riders.flatMap(({ id, window_mm: window }) =>
    window ? [{ id, target: window.target }] : [],
  );
  const ridden = plan.bikes
    .filter(({ id }) => plan.pairs.some((pair) => pair.bike === id))
    .map(({ id, span_mm: { lowest, highest } }) => ({
      id,
      low: lowest ?? highest ?? 0,
      high: highest ?? lowest ?? 0,
    }))
    .sort((a, b) => a.low - b.low || a.high - b.high);
  const all = [...targets.map(({ target }) => target), ...ridden.flatMap(({ low, high }) => [low, high])];
  if (ridden.length === 0) return null;
  const lowest = Math.min(...all);
  const highest = Math.max(...all);
  const at = (mm: number): number =>
    margin + ((highest - mm) / Math.max(highest - lowest, 1)) * (height - 2 * margin);
  const riders = [...targets].sort((a, b) => b.target - a.target);
  const labels = apart(riders.map(({ target }) => at(target)));
  const step = (right - bikesFrom) / Math.max(ridden.length, 1);
  const x = (place: number): number => bikesFrom + (place + 0.5) * step;
  const marks = heightMarks(lowest, highest);
  const tall = Math.max(height, (labels.at(-1) ?? 0) + margin) + 40;
  return (
    <svg
      class="club-board"
      viewBox={`0 0 ${right + 10} ${tall}`}
      role="img"
      aria-label={texts.club.boardSays}
    >
      {marks.map((mm) => (
        <g key={mm}>
          <line class="board-mark" x1={riderAxis} x2={right} y1={at(mm)} y2={at(mm)} />
          <text class="board-height" x={riderAxis + 4} y={at(mm) - 3}>
            {figures.length(mm)}
          </text>
        </g>
      ))}
      {ridden.map(({ id, low, high }, place) => (
        <g key={id}>
          <rect
            class="board-bike"
            x={x(place) - Math.min(step * 0.35, 8)}
            width={Math.min(step * 0.7, 16)}
            y={at(high)}
            height={Math.max(at(low) - at(high), 3)}
          />
          <text
            class="board-label"
            transform={`translate(${x(place) + 4} ${height + 2}) rotate(-90)`}
            text-anchor="end"
          >
            {id}
          </text>
        </g>
      ))}
      {plan.pairs.map((pair) => {
        const rider = targets.find(({ id }) => id === pair.rider);
        const place = ridden.findIndex(({ id }) => id === pair.bike);
        if (rider === undefined || place < 0 || pair.saddle_mm === null) return null;
        return (
          <g key={pair.rider}>
            <line
              class="board-pair"
              x1={riderAxis}
              y1={at(rider.target)}
              x2={x(place)}
              y2={at(pair.saddle_mm)}
            />
            <circle class="board-saddle" cx={x(place)} cy={at(pair.saddle_mm)} r="4" />
          </g>
        );
      })}
      {riders.map(({ id, target }, place) => (
        <g key={id}>
          <text class="board-label" x={riderAxis - 16} y={(labels[place] ?? 0) + 4} text-anchor="end">
            {id.length > 9 ? `${id.slice(0, 8)}…` : id}
          </text>
          <line class="board-lead" x1={riderAxis - 13} y1={labels[place]} x2={riderAxis} y2={at(target)} />
          <circle class="board-rider" cx={riderAxis} cy={at(target)} r="4" />
        </g>
      ))}
    </svg>
  );
}

/** Every five or ten centimetres. */
function heightMarks(lowest: number, highest: number): number[] {
  const step = highest - lowest > 400 ? 100 : 50;
  const marks = [];
  for (let mm = Math.ceil(lowest / step) * step; mm <= highest; mm += step) marks.push(mm);
  return marks;
}
