// A few bikes under one piece of tape, the rider's window across them: the rack's drawing for bikes on a sheet.
import type { JudgedBike, JudgedRider } from "../engine/wire";
import { usePage } from "../page/page-context";
import { scaleOver } from "./height-scale";
import { isGuess, shownWindow } from "./shown-window";
import { SpanBar, WindowBand } from "./span-bar";
import { TapeStrip } from "./tape-strip";

const air = 60;

interface BikesOnTapeProps {
  bikes: JudgedBike[];
  rider: JudgedRider | null;
  named?: boolean;
}

export function BikesOnTape({ bikes, rider, named = false }: BikesOnTapeProps) {
  const { texts, figures } = usePage();
  const window = shownWindow(rider);
  const guess = rider !== null && isGuess(rider);
  const heights = [
    ...bikes.flatMap(({ span_mm: { lowest, highest } }) => [lowest, highest]),
    ...(window === null ? [] : [window.low, window.high]),
  ]
    .filter((height) => height !== null)
    .flatMap((height) => [height - air, height + air]);
  const scale = scaleOver(heights, { low: 300, high: 900 });
  return (
    <div class="rack alone">
      <TapeStrip
        scale={scale}
        window={window}
        label={texts.rack.scale({ low: figures.length(scale.low), high: figures.length(scale.high) })}
      />
      <div class="rack-rows">
        {window !== null && <WindowBand scale={scale} window={window} />}
        {bikes.map(({ id, name, span_mm, verdict, saddle_mm }) => (
          <div key={id} class="row">
            {named && <p class="lane-name">{name}</p>}
            <SpanBar
              scale={scale}
              span={span_mm}
              window={window}
              verdict={verdict}
              saddle={guess ? null : saddle_mm}
            />
          </div>
        ))}
      </div>
    </div>
  );
}
