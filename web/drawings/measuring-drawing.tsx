// How to measure: back to the wall, a book level between the legs, the tape from the floor to its top edge.
import { usePage } from "../page/page-context";

export function MeasuringDrawing() {
  const { texts } = usePage();
  return (
    <svg class="drawing measuring" viewBox="0 0 320 270" role="img" aria-label={texts.measuring.drawing}>
      <path class="wall" d="M12 12h296v236H12z" />
      <path class="bricks" d="M40 40h26M250 62h34M24 96h22M262 132h24M36 170h30M252 205h30" />
      <path class="floor" d="M4 248h312" />
      {/* The rider, from the front. */}
      <path
        class="rider-shape"
        d="M150 66c-22 0-32 10-34 30l-7 44 14 3 8-36v40h38v-40l8 36 14-3-7-44c-2-20-12-30-34-30z"
      />
      <path class="rider-shape" d="M131 144h38l3 92h-20l-2-68-2 68h-20z" />
      <path class="rider-shape" d="M118 248q0-13 14-13h16v13zM182 248q0-13-14-13h-16v13z" />
      <circle class="rider-shape" cx="150" cy="42" r="22" />
      <path class="rider-line" d="M142 46q8 7 16 0M143 38v.1M157 38v.1" />
      {/* The book and the line from its top edge to the tape. */}
      <path class="chalk-line" d="M172 160h66" />
      <rect class="book" x="126" y="159" width="48" height="11" rx="2" />
      {/* The tape up the wall. */}
      <rect class="tape-blade" x="226" y="112" width="24" height="136" />
      <path
        class="tape-lines"
        d="M226 238h8M226 228h8M226 218h8M226 208h13M226 198h8M226 188h8M226 178h8M226 168h8M226 158h13M226 148h8M226 138h8M226 128h8"
      />
      <rect class="tape-case" x="218" y="86" width="40" height="32" rx="8" />
      <path class="measure-line" d="M274 160v88M266 160h16M266 247h16" />
    </svg>
  );
}
