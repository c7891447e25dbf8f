// The rack: all bikes on one floor-to-saddle scale, the rider's window across them, the best first.
import { useCallback, useMemo, useState } from "preact/hooks";
import { scaleBetween, scaleOver } from "../../drawings/height-scale";
import { shownWindow } from "../../drawings/shown-window";
import { WindowBand } from "../../drawings/span-bar";
import { TapeStrip } from "../../drawings/tape-strip";
import { rackQuestion } from "../../engine/rack-question";
import type { AssessAnswer } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { Cautions } from "../../parts/cautions";
import { TickField } from "../../parts/fields";
import { ForWhom } from "../../parts/for-whom";
import { InventedMark } from "../../parts/invented-mark";
import { ListAge } from "../../parts/list-age";
import { Inside, ListRefused } from "../../page/later-screen";
import { LongList } from "../../parts/long-list";
import { ScreenHead } from "../../parts/screen-head";
import { answerTo, lastAnswer } from "../../state/answers";
import { missingWords, ToRider } from "../../parts/what-is-missing";
import type { ListState, PageState } from "../../state/page-state";
import { mostPicked } from "../../state/picking";
import { saysSomething } from "../../state/request-building";
import { shown } from "../../state/list-steps";
import { rowsNeared, wanted, went } from "../../state/screen-changes";
import { isOwned } from "../../state/years-ahead";
import { GroupHead, groupName } from "./group-head";
import { DisplayUnit, VerdictCounts } from "./rack-head";
import { RackEmpty } from "./rack-empty";
import { RackRow, RowRoom } from "./rack-row";
import { rackBikes } from "./rack-bikes";
import { RackOverview } from "./rack-overview";
import { placesTold, usePrinting } from "./rack-printing";
import { RackWishes } from "./rack-wishes";
import { WhatIf } from "./what-if";

/** Shown where nothing is known yet: from the smallest balance bike to the largest child's bike. */
const usualHeights = { low: 300, high: 900 };

/** The ends of the bikes' spans, and of the rider's window. */
function heightsOf(answer: AssessAnswer | null, { loaded }: ListState): number[] {
  const heights = (answer ?? loaded)?.heights_mm;
  const window = shownWindow(answer?.rider ?? null);
  const ends = [heights?.lowest, heights?.highest, window?.low, window?.high];
  return ends.filter((end) => typeof end === "number");
}

/** The first answer for this rider is on its way. */
function isAwaited(state: PageState): boolean {
  return saysSomething(state.rider) && answerTo(state, rackQuestion).pending;
}

export function TheRack({ state }: { state: PageState }) {
  const { texts, figures, change } = usePage();
  const { list } = state;
  const { answer, refusal } = lastAnswer(state, rackQuestion);
  const bikes = rackBikes(state);
  const judgedRider = answer?.rider ?? null;
  // The same one for the same rider, so that no row is drawn again.
  const window = useMemo(() => shownWindow(judgedRider), [judgedRider]);
  const [sought, seek] = useState<{ place: number } | null>(null);
  const { folded } = state.wants;
  const { detail } = state.wants;
  const { low, high } = scaleOver(heightsOf(answer, list), usualHeights);
  const scale = useMemo(() => scaleBetween(low, high), [low, high]);
  const near = useCallback((first: number, end: number) => change(rowsNeared(first, end)), [change]);
  usePrinting(state, bikes);
  const unfoldAndSeek = (sought: { place: number }): void => {
    let end = 0;
    const group = answer?.groups.find(({ bikes: count }) => sought.place < (end += count));
    if (group !== undefined) change(wanted({ folded: folded.filter((one) => one !== groupName(group)) }));
    seek(sought);
  };
  const setAside = list.loaded?.counts.set_aside ?? 0;

  if (bikes.length === 0 && (answer?.left_out_counts.bikes ?? 0) === 0) return <RackEmpty state={state} />;
  return (
    <>
      <ScreenHead title={texts.rack.title} aside={<DisplayUnit unit={state.unit} />}>
        {answer === null ? (
          <p>{isAwaited(state) ? texts.whatIf.busy : missingWords(texts, state.rider)}</p>
        ) : (
          <VerdictCounts answer={answer} />
        )}
        <ForWhom rider={judgedRider} />
        {refusal !== null && answer !== null && <p class="problem">{texts.window.stale}</p>}
        <InventedMark state={state} />
        <ListAge state={state} />
        {state.printing !== null && (
          <Inside>{({ PaperHead }) => <PaperHead state={state} bikes={bikes} />}</Inside>
        )}
      </ScreenHead>
      <div class="inset rack-tools">
        {list.refusal?.named === true && <ListRefused list={list} />}
        {answer === null ? (
          <ToRider rider={state.rider} />
        ) : (
          <>
            <RackWishes state={state} answer={answer} shown={bikes.length} />
            <WhatIf state={state} currency={list.loaded?.list?.currency ?? null} />
            <RackOverview state={state} scale={scale} window={window} onSeek={unfoldAndSeek} />
          </>
        )}
        {answer !== null && (
          <TickField
            label={texts.wishes.detail}
            ticked={state.wants.detail}
            onTick={(detail) => change(wanted({ detail }))}
          />
        )}
        {state.waiting.length > 0 && <ToYears />}
        <p class="soft key">{texts.rack.key}</p>
      </div>
      {state.printing !== null && (
        <Inside>
          {({ PaperTable }) => (
            <PaperTable
              bikes={bikes}
              places={placesTold(bikes, state)}
              groups={answer?.groups ?? []}
              stage={judgedRider?.stage ?? null}
              scale={scale}
              window={window}
            />
          )}
        </Inside>
      )}
      <div class={`rack listed told on-screen ${detail ? "" : "brief"}`}>
        <TapeStrip
          scale={scale}
          window={window}
          label={texts.rack.scale({ low: figures.length(scale.low), high: figures.length(scale.high) })}
        />
        <div class="rack-rows">
          {window !== null && <WindowBand scale={scale} window={window} />}
          <LongList
            label={texts.rack.listLabel}
            length={bikes.length}
            groups={answer?.groups.map((group) => ({
              length: group.bikes,
              folded: folded.includes(groupName(group)),
              head: <GroupHead group={group} stage={answer.rider.stage} folded={folded} />,
            }))}
            look={[detail, ...folded].join()}
            sought={sought}
            itemAt={bikes.at}
            onNear={near}
          >
            {(bike) =>
              bike === null ? (
                <RowRoom />
              ) : (
                <RackRow
                  bike={bike}
                  picked={state.picked.includes(bike.id)}
                  owned={isOwned(state, bike.id)}
                  pickable={state.picked.length < mostPicked}
                  scale={scale}
                  window={window}
                  detail={detail}
                />
              )
            }
          </LongList>
        </div>
      </div>
      <div class="inset stack ending">
        {state.waiting.length === 0 && <ToYears />}
        {answer !== null && <p class="soft on-screen">{texts.beside.how}</p>}
        {setAside > 0 && (
          <button
            type="button"
            class="plain-link"
            onClick={() => {
              change(shown("set_aside"));
              change(went({ name: "list" }));
            }}
          >
            {texts.list.link({ number: setAside })}
          </button>
        )}
        <Cautions />
      </div>
    </>
  );
}

function ToYears() {
  const { texts, change } = usePage();
  return (
    <button type="button" class="plain-link" onClick={() => change(went({ name: "years" }))}>
      {texts.years.open}
    </button>
  );
}
