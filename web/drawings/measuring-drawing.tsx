// How to measure, from the front and from the side: legs a little apart, the book upright between them with its spine up and one
// end flat on the wall, its top in the crotch; and straight up from the floor to that top.
import { usePage } from "../page/page-context";

const floor = 248;
/** The crotch, and the top of the book in it. */
const top = 148;

export function MeasuringDrawing() {
  const { texts } = usePage();
  return (
    <svg class="drawing measuring" viewBox="0 0 340 262" role="img" aria-label={texts.measuring.drawing}>
      <FromTheFront />
      <FromTheSide />
      <path class="floor" d={`M6 ${floor}H162M182 ${floor}H334`} />
    </svg>
  );
}

/** Before the wall, the tape beside the child. */
function FromTheFront() {
  return (
    <g>
      <path class="wall" d={`M6 10H162V${floor}H6Z`} />
      <path class="bricks" d="M18 30h20M112 44h26M14 92h18M128 92h20M16 190h18M112 214h20" />
      <path
        class="rider-shape"
        d="M62 70q-8 3-10 14L42 132q-1 7 4 8t7-5l9-38V140h44V97l9 38q2 6 7 5t4-8L116 84q-2-11-10-14-12-6-22-6t-22 6Z"
      />
      <path class="rider-shape" d={`M62 138H106L114 236H95L88 164Q84 ${top - 4} 80 164L73 236H54Z`} />
      <path
        class="rider-shape"
        d={`M47 ${floor}q0-13 12-13H74V${floor}ZM121 ${floor}q0-13-12-13H94V${floor}Z`}
      />
      <circle class="rider-shape" cx="84" cy="42" r="21" />
      <path class="rider-line" d="M77 46q7 7 14 0M77 38v.1M91 38v.1" />
      {/* The book, seen on its end. */}
      <path class="book-pages" d={`M79 ${top + 3}V${top + 40}H89V${top + 3}Z`} />
      <path class="book-cover" d={`M78 ${top + 40}V${top + 3}q0-3 3-3h6q3 0 3 3V${top + 40}`} />
      <path class="chalk-line" d={`M94 ${top}H138`} />
      <Upright x={144} />
    </g>
  );
}

/** The back at the wall; the book is seen through the leg that hides it. */
function FromTheSide() {
  return (
    <g>
      <path class="wall" d={`M182 10H198V${floor}H182Z`} />
      <path class="wall-face" d={`M198 10V${floor}`} />
      <path class="rider-shape" d={`M206 138h26l-3 98h-19Z`} />
      <path class="rider-shape" d={`M202 ${floor}v-13H232q14 2 15 13Z`} />
      <path class="rider-shape" d="M203 140q-5-36 1-60 4-14 16-14t15 16q3 26-3 58Z" />
      <circle class="rider-shape" cx="221" cy="42" r="21" />
      <path class="rider-line" d="M232 47q5 2 8-1M236 38v.1" />
      <path class="book-side" d={`M200 ${top}H272V${top + 40}H200Z`} />
      <path class="book-spine" d={`M200 ${top}H272`} />
      <path class="rider-shape near" d={`M205 140h26l-3 96h-19Z`} />
      {/* The near arm. */}
      <path
        class="rider-shape"
        d="M214 78q8-4 12 4l6 34q8 12 20 22 4 6-1 9t-10-3q-14-10-21-24l-9-34q-2-6 3-8Z"
      />
      <path class="chalk-line" d={`M278 ${top}H308`} />
      <Upright x={314} />
    </g>
  );
}

/** From the floor straight up to the top of the book. */
function Upright({ x }: { x: number }) {
  const marks = Array.from({ length: 9 }, (_, place) => `M${x - 6} ${floor - 10 * (place + 1)}h5`);
  return (
    <g>
      <path class="tape-blade" d={`M${x - 6} ${top}h12V${floor}h-12Z`} />
      <path class="tape-lines" d={marks.join("")} />
      <path class="upright-end" d={`M${x - 11} ${top}h22`} />
    </g>
  );
}
