// Whom each bike fits: the list turned round, as a chart, as tags for the bikes and as a strip for the wall.
import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { download, downloadTable } from "../../engine/list-saving";
import type { Stage, SuitsAnswer } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { Select, Switch } from "../../parts/choices";
import { useOnPaper } from "../../parts/on-paper";
import { ScreenHead } from "../../parts/screen-head";
import { answerTo } from "../../state/answers";
import { listInHand } from "../../state/list-desk";
import type { PageState } from "../../state/page-state";
import { went } from "../../state/screen-changes";
import { suitsQuestion, suitsTableQuestion } from "../../state/suits";
import { DisplayUnit } from "../rack/rack-head";
import { BikeTags, middleTag, tagSizes } from "./bike-tags";
import { paperNames, papers, usePaper } from "./paper-size";
import type { Paper } from "./paper-size";
import { SuitsChart } from "./suits-chart";
import { SuitsPaper } from "./suits-paper";
import { everyStage, rowsOf } from "./suits-rows";
import { WallStrip } from "./wall-strip";

type SuitsView = "chart" | "tags" | "strip";

const views: SuitsView[] = ["chart", "tags", "strip"];

export function Suits({ state }: { state: PageState }) {
  const { texts, change } = usePage();
  const words = texts.suits;
  const { answer, pending } = answerTo(state, suitsQuestion);
  return (
    <>
      <ScreenHead title={words.title} aside={<DisplayUnit unit={state.unit} />}>
        <p>{words.lead}</p>
      </ScreenHead>
      {answer === null ? (
        <div class="inset stack">
          {state.list.loaded === null ? (
            <>
              <p>{texts.club.noBikes}</p>
              <button type="button" class="button wide" onClick={() => change(went({ name: "list" }))}>
                {texts.list.title}
              </button>
            </>
          ) : (
            pending && <p>{texts.whatIf.busy}</p>
          )}
        </div>
      ) : (
        <Turned state={state} answer={answer} />
      )}
    </>
  );
}

/** Whether a sheet is printed to try the printer with, and what begins that. */
function useTrialPrint(print: () => void): [boolean, () => void] {
  const [trial, begin] = useState(false);
  useEffect(() => {
    if (!trial) return undefined;
    const end = (): void => begin(false);
    // Where print() does nothing and says nothing, whoever presses something is done.
    const ends = ["afterprint", "pointerdown"];
    for (const kind of ends) addEventListener(kind, end);
    print();
    return () => {
      for (const kind of ends) removeEventListener(kind, end);
    };
  }, [trial, print]);
  return [trial, () => begin(true)];
}

function Turned({ state, answer }: { state: PageState; answer: SuitsAnswer }) {
  const { texts, tagAddresses, print } = usePage();
  const words = texts.suits;
  const { unit, list } = state;
  const { bikes, count } = answer;
  const [view, setView] = useState<SuitsView>("chart");
  const [stage, setStage] = useState<Stage>(state.rider.stage ?? "starting");
  const [paper, setPaper] = useState<Paper>(unit === "in" ? "letter" : "a4");
  const [size, setSize] = useState(middleTag);
  const sheets = useRef<HTMLDivElement>(null);
  const { answer: table, fresh: tableIsFresh } = answerTo(state, suitsTableQuestion);
  usePaper(paper);
  const rows = rowsOf(answer, stage);
  // Whoever scans a code must find the same list.
  const addressed = tagAddresses !== null && listInHand(state.desk)?.named === true;

  const [trial, printTrial] = useTrialPrint(print);
  // The sheet is drawn while it is printed or saved: it is as long as the list.
  const onPaper = useOnPaper();
  const [saving, save] = useState(false);
  useEffect(() => {
    const drawing = saving ? sheets.current?.querySelector("svg") : null;
    if (drawing) download("suits.svg", new XMLSerializer().serializeToString(drawing));
    save(false);
  }, [saving]);

  const chosen: Record<SuitsView, () => JSX.Element> = {
    chart: () => (
      <>
        <div class="stack told on-screen">
          <SuitsChart answer={answer} rows={rows} stage={stage} />
        </div>
        <div ref={sheets} class="paper-only">
          {(onPaper || saving) && (
            <SuitsPaper answer={answer} rows={rows} stage={stage} title={list.loaded?.list?.title ?? null} />
          )}
        </div>
      </>
    ),
    tags: () => <BikeTags bikes={bikes} paper={paper} size={size} addressed={addressed} trial={trial} />,
    strip: () => <WallStrip rows={rows} paper={paper} />,
  };

  return (
    <div class="inset stack">
      <div class="stack on-screen">
        <Switch
          name="suits-view"
          legend={words.show}
          legendShown={false}
          options={views.map((value) => ({ value, label: words.views[value] }))}
          chosen={view}
          onChoose={setView}
        />
        {view === "tags" ? (
          <Select
            label={words.size}
            options={tagSizes.map((value) => ({ value, label: `${value.width} × ${value.height} mm` }))}
            chosen={size}
            onChoose={setSize}
          />
        ) : (
          <Select
            label={texts.rider.stage}
            options={everyStage.map((value) => ({ value, label: texts.rider.stages[value].title }))}
            chosen={stage}
            onChoose={setStage}
          />
        )}
        <Switch
          name="suits-paper"
          legend={words.paper}
          small
          options={papers.map((value) => ({ value, label: paperNames[value] }))}
          chosen={paper}
          onChoose={setPaper}
        />
        <div class="buttons">
          <button type="button" class="button main" onClick={print}>
            {texts.club.print}
          </button>
          {view === "tags" && (
            <button type="button" class="button" onClick={printTrial}>
              {words.trial}
            </button>
          )}
          {view === "chart" && (
            <>
              {table !== null && tableIsFresh && (
                <button type="button" class="button" onClick={() => downloadTable("suits.csv", table.text)}>
                  {words.saveTable}
                </button>
              )}
              <button type="button" class="button" onClick={() => save(true)}>
                {words.savePicture}
              </button>
            </>
          )}
        </div>
        {bikes.length < count && <p>{words.first({ told: bikes.length, all: count })}</p>}
        {view !== "tags" && rows.length < bikes.length && (
          <p class="soft">{words.others({ number: bikes.length - rows.length })}</p>
        )}
        {view === "chart" && <p class="soft">{words.rough}</p>}
      </div>
      {chosen[view]()}
    </div>
  );
}
