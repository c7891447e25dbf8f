// One bike from the side, to scale, in millimetres: the tape beside it with the saddle's range, the rider's leg at the
// saddle. The engine gives every point; here they are only joined.
import { usePage } from "../page/page-context";
import type { Foot, LegPose, Point, SideViewAnswer } from "../engine/wire";
import { tapeMarks } from "../figures/lengths";
import { TapeMarks } from "./tape-marks";
import { useWidth } from "./use-width";

/** Where the ankle and the toes are over the floor, for drawing the leg. */
const feet: Record<Foot, { heel: number; toe: number }> = {
  flat: { heel: 0, toe: 0 },
  ball: { heel: 45, toe: 0 },
  tiptoe: { heel: 85, toe: 0 },
  off_the_floor: { heel: 120, toe: 70 },
};

const air = 60;
const tapeWidth = 90;
const markLength = { short: 20, middle: 34, long: 48 };

/** So that the drawing keeps its size as the crank turns. */
function highestKnee({ leg }: SideViewAnswer): number {
  return leg !== null && "poses" in leg ? Math.max(...leg.poses.map(({ knee }) => knee.y)) : 0;
}

interface SideViewProps {
  view: SideViewAnswer;
  /** The leg on the pedal; null: the foot is on the ground, or there is no leg to draw. */
  pose: LegPose | null;
  /** Nobody measured the leg: no figure stands for it, nor for the saddle it asks for. */
  guess: boolean;
  label: string;
}

export function SideView({ view, pose, guess, label }: SideViewProps) {
  const [place, width] = useWidth();
  const { figures, texts } = usePage();

  const tops = [
    view.head.top.y,
    view.grip.y,
    view.saddle.highest?.y,
    view.saddle.lowest?.y,
    view.inseam_mm,
    highestKnee(view),
  ];
  const top = Math.max(...tops.map((y) => y ?? 0)) + air;
  const rear = view.rear_wheel.x - view.rear_wheel.radius - air - tapeWidth - air;
  const front = view.front_wheel.x + view.front_wheel.radius + air;
  const scale = width / (front - rear);
  const height = (top + air) * scale;

  const x = (mm: number): number => (mm - rear) * scale;
  const y = (mm: number): number => (top - mm) * scale;
  const line = (...points: Point[]): string =>
    points.map((point, place) => `${place === 0 ? "M" : "L"}${x(point.x)} ${y(point.y)}`).join("");

  const { lowest, highest, setting } = view.saddle;
  const drawnSaddle = setting ?? lowest ?? highest;
  const tapeX = rear + air;

  return (
    <div ref={place} class="drawing-place">
      <svg class="drawing side-view" width="100%" height={height} role="img" aria-label={label}>
        <path class="floor" d={`M0 ${y(0)}H${width}`} />

        {/* The tape: what the saddle can do, as heights above the floor. */}
        <rect
          class="tape-blade"
          x={x(tapeX)}
          y={y(top - air / 2)}
          width={tapeWidth * scale}
          height={(top - air / 2) * scale}
        />
        {lowest !== null && highest !== null && (
          <rect
            class="tape-span"
            x={x(tapeX)}
            y={y(highest.y)}
            width={tapeWidth * scale}
            height={(highest.y - lowest.y) * scale}
          />
        )}
        <TapeMarks
          marks={tapeMarks(0, top - air / 2, figures.unit, 12)}
          line={({ mm, rank }) => `M${x(tapeX + tapeWidth)} ${y(mm)}h${-markLength[rank] * scale}`}
        />

        {[view.rear_wheel, view.front_wheel].map((wheel) => (
          <g key={wheel.x}>
            <circle
              class="tyre"
              cx={x(wheel.x)}
              cy={y(wheel.y)}
              r={((wheel.radius + wheel.rim) / 2) * scale}
              stroke-width={(wheel.radius - wheel.rim) * scale}
            />
            <circle class="hub" cx={x(wheel.x)} cy={y(wheel.y)} r={14 * scale} />
          </g>
        ))}

        {/* Ghosts of the saddle at both ends of its range. */}
        {[lowest, highest].map(
          (end, place) =>
            end !== null &&
            end.y !== drawnSaddle?.y && <SaddleShape key={place} at={end} x={x} y={y} scale={scale} ghost />,
        )}

        <path
          class="seat-post"
          d={line(view.seat_tube.top, {
            x: drawnSaddle?.x ?? view.seat_tube.top.x,
            y: (drawnSaddle?.y ?? view.seat_tube.top.y) - 25,
          })}
          stroke-width={24 * scale}
        />
        <g class="frame-tubes" stroke-width={30 * scale}>
          <path d={line(view.seat_tube.bottom, view.seat_tube.top)} />
          <path d={line(view.top_tube.rear, view.top_tube.front)} />
          <path d={line(view.bottom_bracket, view.head.bottom)} />
          <path d={line(view.head.bottom, view.head.top)} />
        </g>
        <g class="frame-tubes" stroke-width={20 * scale}>
          <path d={line(view.rear_wheel, view.bottom_bracket)} />
          <path d={line(view.rear_wheel, view.seat_tube.top)} />
          <path d={line(view.head.bottom, view.front_wheel)} />
          <path d={line(view.head.top, view.grip)} />
        </g>
        <circle
          class="chainring"
          cx={x(view.bottom_bracket.x)}
          cy={y(view.bottom_bracket.y)}
          r={42 * scale}
        />
        <path
          class="crank"
          d={line(
            view.bottom_bracket,
            pose?.pedal ?? { x: view.bottom_bracket.x + view.crank_mm, y: view.bottom_bracket.y },
          )}
          stroke-width={18 * scale}
        />

        {pose !== null && <PedallingLeg pose={pose} line={line} x={x} y={y} scale={scale} />}
        {pose === null && view.foot !== null && setting !== null && (
          <Leg hip={setting} foot={view.foot} x={x} y={y} scale={scale} />
        )}
        {drawnSaddle !== null && <SaddleShape at={drawnSaddle} x={x} y={y} scale={scale} />}

        {setting !== null && !guess && (
          <g>
            <path class="setting-line" d={`M${x(tapeX)} ${y(setting.y)}H${x(setting.x - 120)}`} />
            <text class="drawing-figure" x={x(tapeX + tapeWidth) + 6} y={y(setting.y) - 6}>
              {figures.length(setting.y)}
            </text>
          </g>
        )}
      </svg>
      {!guess && (
        <ul class="drawing-key">
          <li class="key-bike">
            {texts.bike.saddle}
            {texts.colon}
            {figures.length(setting?.y ?? drawnSaddle?.y ?? 0)}
          </li>
          <li class="key-rider">
            {texts.bike.inseam}
            {texts.colon}
            {figures.length(view.inseam_mm)}
          </li>
        </ul>
      )}
    </div>
  );
}

interface PartProps {
  x: (mm: number) => number;
  y: (mm: number) => number;
  scale: number;
}

function SaddleShape({ at, ghost = false, x, y, scale }: PartProps & { at: Point; ghost?: boolean }) {
  const path =
    `M${x(at.x - 95)} ${y(at.y)}q${10 * scale} ${-14 * scale} ${60 * scale} ${-4 * scale}` +
    `L${x(at.x + 115)} ${y(at.y - 8)}q${6 * scale} ${14 * scale} ${-14 * scale} ${14 * scale}` +
    `L${x(at.x - 20)} ${y(at.y - 44)}L${x(at.x - 85)} ${y(at.y - 40)}Z`;
  return <path class={ghost ? "saddle-ghost" : "saddle-shape"} d={path} />;
}

/** Thigh, shin and shoe as a linkage on the pedal. */
function PedallingLeg({
  pose,
  line,
  x,
  y,
  scale,
}: PartProps & { pose: LegPose; line: (...points: Point[]) => string }) {
  const { hip, knee, ankle, pedal } = pose;
  const shoe =
    `M${x(ankle.x - 42)} ${y(ankle.y - 40)}L${x(ankle.x - 32)} ${y(ankle.y + 20)}L${x(ankle.x + 34)} ${y(ankle.y + 14)}` +
    `L${x(pedal.x + 45)} ${y(pedal.y + 44)}Q${x(pedal.x + 66)} ${y(pedal.y + 14)} ${x(pedal.x + 40)} ${y(pedal.y + 12)}` +
    `L${x(pedal.x - 30)} ${y(pedal.y + 12)}Z`;
  return (
    <g>
      <path class="leg" d={line(hip, knee, ankle)} stroke-width={64 * scale} />
      <path class="shoe" d={shoe} />
      <path
        class="pedal"
        d={line({ x: pedal.x - 40, y: pedal.y }, { x: pedal.x + 40, y: pedal.y })}
        stroke-width={16 * scale}
      />
      {[hip, knee, ankle].map((joint, place) => (
        <circle key={place} class="joint" cx={x(joint.x)} cy={y(joint.y)} r={9 * scale} />
      ))}
    </g>
  );
}

function Leg({ hip, foot, x, y, scale }: PartProps & { hip: Point; foot: Foot }) {
  const { heel, toe } = feet[foot];
  const ankle = { x: hip.x + 40, y: heel + 45 };
  const shoe =
    `M${x(ankle.x - 45)} ${y(heel)}L${x(ankle.x - 30)} ${y(heel + 60)}L${x(ankle.x + 35)} ${y(heel + 60)}` +
    `L${x(ankle.x + 120)} ${y(toe + 32)}Q${x(ankle.x + 135)} ${y(toe)} ${x(ankle.x + 110)} ${y(toe)}` +
    `L${x(ankle.x + 60)} ${y(toe)}Z`;
  return (
    <g>
      <path
        class="leg"
        d={`M${x(hip.x + 20)} ${y(hip.y - 30)}L${x(ankle.x)} ${y(ankle.y)}`}
        stroke-width={78 * scale}
      />
      <path class="shoe" d={shoe} />
    </g>
  );
}
