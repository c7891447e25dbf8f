// A bike of the rack on its scale, on screen and on paper alike. Where nobody measured the leg, no setting is marked.
import type { HeightScale } from "../../drawings/height-scale";
import type { ShownWindow } from "../../drawings/shown-window";
import { SpanBar } from "../../drawings/span-bar";
import type { RackBike } from "./rack-bikes";

interface BikeSpanProps {
  bike: RackBike;
  scale: HeightScale;
  window: ShownWindow | null;
}

export function BikeSpan({ bike: { judged, span }, scale, window }: BikeSpanProps) {
  return (
    <SpanBar
      scale={scale}
      span={span}
      window={window}
      verdict={judged?.verdict ?? null}
      saddle={window?.target === null ? null : (judged?.saddle_mm ?? null)}
    />
  );
}
