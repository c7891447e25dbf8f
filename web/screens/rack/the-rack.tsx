// The rack: all bikes on one floor-to-saddle scale, the rider's window across them, the best first.
import { useMemo } from "preact/hooks";
import { scaleOver } from "../../drawings/height-scale";
import { WindowBand } from "../../drawings/span-bar";
import { TapeStrip } from "../../drawings/tape-strip";
import { usePage } from "../../page/page-context";
import { Cautions } from "../../parts/cautions";
import { LongList } from "../../parts/long-list";
import { ScreenHead } from "../../parts/screen-head";
import type { PageState } from "../../state/page-state";
import { went } from "../../state/screen-changes";
import { DisplayUnit, VerdictCounts } from "./rack-head";
import { RackEmpty } from "./rack-empty";
import { RackRow } from "./rack-row";
import { rackBikes } from "./rack-bikes";
import type { RackBike } from "./rack-bikes";
import { RackWishes } from "./rack-wishes";

/** Shown where nothing is known yet: from the smallest balance bike to the largest child's bike. */
const usualHeights = { low: 300, high: 900 };

function heightsOf(bikes: RackBike[], window: { low: number; high: number } | null): number[] {
  const ends = bikes.flatMap(({ span }) => [span.lowest, span.highest]).filter((end) => end !== null);
  return window === null ? ends : [...ends, window.low, window.high];
}

export function TheRack({ state }: { state: PageState }) {
  const { texts, figures, change } = usePage();
  const { judged, list } = state;
  const { answer } = judged;
  const bikes = useMemo(() => rackBikes(answer, list.loaded), [answer, list.loaded]);
  const window = answer?.rider.window_mm ?? null;
  const scale = useMemo(() => scaleOver(heightsOf(bikes, window), usualHeights), [bikes, window]);
  const leftOut = answer?.left_out ?? [];
  const setAside = list.loaded?.set_aside.length ?? 0;

  if (bikes.length === 0 && leftOut.length === 0) return <RackEmpty state={state} />;
  return (
    <>
      <ScreenHead title={texts.rack.title} aside={<DisplayUnit unit={state.unit} />}>
        {answer === null ? <p>{texts.rack.noReading}</p> : <VerdictCounts answer={answer} />}
        {judged.refusal !== null && answer !== null && <p class="problem">{texts.window.stale}</p>}
      </ScreenHead>
      <div class="inset">
        {answer === null ? (
          <button
            type="button"
            class="button main wide onward"
            onClick={() => change(went({ name: "rider" }))}
          >
            {texts.rack.toRider}
          </button>
        ) : (
          <RackWishes state={state} leftOut={leftOut} />
        )}
        <p class="soft ending">{texts.rack.key}</p>
      </div>
      <div class={judged.refusal !== null && answer !== null ? "rack stale" : "rack"}>
        <TapeStrip
          scale={scale}
          window={window}
          label={texts.rack.scale(figures.length(scale.low), figures.length(scale.high))}
        />
        <div class="rack-rows">
          {window !== null && <WindowBand scale={scale} window={window} />}
          <LongList label={texts.rack.listLabel} items={bikes} keyOf={(bike) => bike.id}>
            {(bike) => <RackRow bike={bike} scale={scale} />}
          </LongList>
        </div>
      </div>
      <div class="inset stack ending">
        {setAside > 0 && (
          <button type="button" class="plain-link" onClick={() => change(went({ name: "list" }))}>
            {texts.list.link(setAside)}
          </button>
        )}
        <Cautions />
      </div>
    </>
  );
}
