// Four small sketches of how a child rides: the foot tells the stage.
import type { Stage } from "../engine/wire";

const legs: Record<Stage, string> = {
  gliding: "M25 14 33 27 22 40M18 41.5h8",
  side_wheels: "M25 14 36 23 33 34",
  starting: "M25 14V41M24 41.5h10",
  riding: "M25 14 37 22 34 36",
};

export function StageSketch({ stage }: { stage: Stage }) {
  return (
    <svg class="stage-sketch" viewBox="0 0 60 46" aria-hidden="true">
      <path class="floor" d="M2 43h56" />
      <circle class="sketch-wheel" cx="14" cy="33" r="9" />
      <circle class="sketch-wheel" cx="46" cy="33" r="9" />
      <path class="sketch-frame" d="M14 33 25 19 42 17 46 33M25 19 30 33M42 17 41 11h5" />
      {stage !== "gliding" && <path class="sketch-frame" d="M14 33h16" />}
      {stage === "side_wheels" && <circle class="sketch-wheel" cx="9" cy="38" r="4.5" />}
      {stage === "riding" && <path class="sketch-frame" d="M1 18h7M0 24h5" />}
      <path class="sketch-saddle" d="M20 14.5h11" />
      <path class="sketch-leg" d={legs[stage]} />
    </svg>
  );
}
