// Two to four bikes side by side: their spans on one scale, then what differs, and folded away what is the same on all.
import { BikesOnTape } from "../../drawings/bikes-on-tape";
import { bikeIn, closeUp, factsIn } from "../../engine/close-up";
import { usePage } from "../../page/page-context";
import { Cautions } from "../../parts/cautions";
import { CheckSign } from "../../parts/check-sign";
import { Fold } from "../../parts/fold";
import { ForWhom } from "../../parts/for-whom";
import { ScreenHead } from "../../parts/screen-head";
import { TagNumber } from "../../parts/tag-number";
import { VerdictSign } from "../../parts/verdict-sign";
import { answerTo } from "../../state/answers";
import type { PageState } from "../../state/page-state";
import { bikePicked, picksCleared } from "../../state/picking";
import { wantsCleared, went } from "../../state/screen-changes";
import { BackToRack } from "../bike/back-to-rack";
import { FactList } from "../bike/bike-facts";
import { DisplayUnit } from "../rack/rack-head";
import { besideRows, differs } from "./beside-rows";
import type { BikeBeside, Cell, FactRow } from "./beside-rows";

export function SideBySide({ state }: { state: PageState }) {
  const { texts, figures, change } = usePage();
  const { picked } = state;
  const { answer, fresh } = answerTo(state, closeUp);
  const bikes = picked.flatMap((id): BikeBeside[] => {
    const judged = bikeIn(answer, id);
    return judged === null ? [] : [{ judged, facts: factsIn(answer, id) }];
  });
  const missing = picked.length - bikes.length;
  const rows = besideRows(texts, figures, bikes);
  const same = rows.filter((row) => !differs(row));
  return (
    <>
      <BackToRack />
      <ScreenHead title={texts.beside.title} aside={<DisplayUnit unit={state.unit} />}>
        {picked.length < 2 && <p>{texts.beside.needMore}</p>}
        <ForWhom rider={answer?.assessed?.rider ?? null} />
      </ScreenHead>
      <div class="inset stack">
        {missing > 0 && fresh && (
          <div>
            <p>{texts.beside.missing({ number: missing })}</p>
            <button type="button" class="plain-link" onClick={() => change(wantsCleared())}>
              {texts.wishes.showAll}
            </button>
          </div>
        )}
        {bikes.length > 0 && (
          <div class="told stack">
            <BikesOnTape
              bikes={bikes.map(({ judged }) => judged)}
              rider={answer?.assessed?.rider ?? null}
              named
            />
            <Differences bikes={bikes} rows={rows.filter(differs)} />
            {bikes.length > 1 && same.length > 0 && (
              <section class="sheet">
                <Fold title={texts.beside.same({ number: same.length })}>
                  <FactList rows={same.map(({ name, cells }) => [name, cells[0]?.text ?? null])} />
                </Fold>
              </section>
            )}
          </div>
        )}
        <div class="buttons">
          {picked.length < 4 && (
            <button type="button" class="button" onClick={() => change(went({ name: "rack" }))}>
              {texts.beside.add}
            </button>
          )}
          <button type="button" class="button" onClick={() => change(picksCleared())}>
            {texts.beside.clear}
          </button>
        </div>
        <Cautions />
      </div>
    </>
  );
}

function Differences({ bikes, rows }: { bikes: BikeBeside[]; rows: FactRow[] }) {
  const { texts, change } = usePage();
  return (
    <section class="stack">
      <h3>{texts.beside.differences}</h3>
      {rows.length === 0 && bikes.length > 1 && <p>{texts.beside.noDifferences}</p>}
      <section class="beside-scroll" aria-label={texts.beside.table} tabIndex={0}>
        <table class="beside" style={{ minWidth: `${bikes.length * 8.5}em` }}>
          <thead>
            <tr>
              {bikes.map(({ judged: { id, name, taped } }) => (
                <th key={id} scope="col">
                  <TagNumber bike={{ id, name, taped }} />
                  <button type="button" class="plain-link" onClick={() => change(went({ name: "bike", id }))}>
                    {name}
                  </button>
                  <button
                    type="button"
                    class="button"
                    aria-label={texts.family.remove({ name })}
                    onClick={() => change(bikePicked(id, false))}
                  >
                    {texts.rider.remove}
                  </button>
                </th>
              ))}
            </tr>
          </thead>
          {rows.map(({ name, cells }, number) => (
            <tbody key={number}>
              <tr>
                <th scope="rowgroup" colSpan={bikes.length}>
                  <span>{name}</span>
                </th>
              </tr>
              <tr>
                {cells.map((cell, place) => (
                  <td key={place}>
                    <CellWords cell={cell} />
                  </td>
                ))}
              </tr>
            </tbody>
          ))}
        </table>
      </section>
    </section>
  );
}

function CellWords({ cell: { text, verdict, stops, check } }: { cell: Cell }) {
  const { texts } = usePage();
  if (text === null) return <span class="soft">{texts.bike.unknown}</span>;
  return (
    <span class={verdict === undefined ? "cell" : "cell verdict"}>
      {verdict !== undefined && <VerdictSign verdict={verdict} />}
      {check !== undefined && <CheckSign state={check} />}
      <span>
        {text}
        {stops !== undefined && (
          <strong class="warning-below">
            <CheckSign state="stop" /> {stops}
          </strong>
        )}
      </span>
    </span>
  );
}
