// The lines that a tape bears, all of one length in one path: a drawing is on screen the sooner the fewer parts it has.
import type { TapeMark } from "../figures/lengths";

const ranks = ["short", "middle", "long"] as const;

interface TapeMarksProps {
  marks: TapeMark[];
  /** One line as a piece of a path. */
  line: (mm: number, rank: TapeMark["rank"]) => string;
}

export function TapeMarks({ marks, line }: TapeMarksProps) {
  return ranks.map((rank) => (
    <path
      key={rank}
      class={`tape-mark ${rank}`}
      d={marks.map((mark) => (mark.rank === rank ? line(mark.mm, rank) : "")).join("")}
    />
  ));
}
