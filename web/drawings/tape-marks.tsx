// The lines that a tape bears, all of one thickness in one path: a drawing is on screen the sooner the fewer parts it has.
import type { TapeMark } from "../figures/lengths";

interface TapeMarksProps {
  marks: TapeMark[];
  /** One line as a piece of a path. */
  line: (mark: TapeMark) => string;
}

export function TapeMarks({ marks, line }: TapeMarksProps) {
  return [1, 2].map((width) => (
    <path
      key={width}
      class="tape-mark"
      stroke-width={width}
      d={marks
        .filter(({ rank }) => (rank === "short") === (width === 1))
        .map(line)
        .join("")}
    />
  ));
}
