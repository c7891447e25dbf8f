// Whom each bike fits: the list turned round, as a chart, as tags for the bikes and as a strip for the wall.
import { useRef, useState } from "preact/hooks";
import { download } from "../../engine/list-saving";
import type { Stage } from "../../engine/wire-answers";
import { usePage } from "../../page/page-context";
import { Select, Switch } from "../../parts/choices";
import { ScreenHead } from "../../parts/screen-head";
import { answerTo } from "../../state/answers";
import type { PageState } from "../../state/page-state";
import { went } from "../../state/screen-changes";
import { suitsQuestion } from "../../state/suits";
import { paperNames, papers, usePaper } from "./paper-size";
import type { Paper } from "./paper-size";
import { SuitsChart } from "./suits-chart";
import { SuitsPaper } from "./suits-paper";
import { rowsOf } from "./suits-rows";
import { everyStage, suitsTable } from "./suits-table";

export function Suits({ state }: { state: PageState }) {
  const { texts, change } = usePage();
  const { unit, list } = state;
  const words = texts.suits;
  const [stage, setStage] = useState<Stage>(state.rider.stage ?? "starting");
  const [paper, setPaper] = useState<Paper>(unit === "in" ? "letter" : "a4");
  const sheets = useRef<HTMLDivElement>(null);
  usePaper(paper);
  const { answer, pending } = answerTo(state, suitsQuestion);
  const rows = answer === null ? [] : rowsOf(answer, stage);

  const savePicture = (): void => {
    const drawing = sheets.current?.querySelector("svg");
    if (drawing) download("suits.svg", new XMLSerializer().serializeToString(drawing));
  };

  return (
    <>
      <div class="on-screen">
        <ScreenHead title={words.title}>
          <p>{words.lead}</p>
        </ScreenHead>
        <div class="inset stack">
          {list.loaded === null ? (
            <section class="sheet stack">
              <p>{texts.club.noBikes}</p>
              <button type="button" class="button wide" onClick={() => change(went({ name: "list" }))}>
                {texts.list.title}
              </button>
            </section>
          ) : (
            answer === null && pending && <p>{texts.whatIf.busy}</p>
          )}
          {answer !== null && (
            <>
              <Select
                label={texts.rider.stage}
                options={everyStage.map((value) => ({ value, label: texts.rider.stages[value].title }))}
                chosen={stage}
                onChoose={setStage}
              />
              <Switch
                name="suits-paper"
                legend={words.paper}
                small
                options={papers.map((value) => ({ value, label: paperNames[value] }))}
                chosen={paper}
                onChoose={setPaper}
              />
              <div class="buttons">
                <button type="button" class="button main" onClick={() => print()}>
                  {texts.club.print}
                </button>
                <button
                  type="button"
                  class="button"
                  onClick={() => download("suits.csv", suitsTable(answer))}
                >
                  {words.saveTable}
                </button>
                <button type="button" class="button" onClick={savePicture}>
                  {words.savePicture}
                </button>
              </div>
              {answer.bikes.length < answer.count && (
                <p>{words.first({ told: answer.bikes.length, all: answer.count })}</p>
              )}
              <div class="stack told">
                <SuitsChart answer={answer} rows={rows} stage={stage} />
              </div>
              {rows.length < answer.bikes.length && (
                <p class="soft">{words.others({ number: answer.bikes.length - rows.length })}</p>
              )}
              <p class="soft">{words.rough}</p>
            </>
          )}
        </div>
      </div>
      {answer !== null && (
        <div ref={sheets} class="paper-only">
          <SuitsPaper answer={answer} rows={rows} stage={stage} title={list.loaded?.list?.title ?? null} />
        </div>
      )}
    </>
  );
}
