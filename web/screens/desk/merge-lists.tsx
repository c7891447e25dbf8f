// Another list into the one in hand: what is alike, what only one of them has, and what differs, side by side.
import type { Conflict } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { Switch } from "../../parts/choices";
import { TickField } from "../../parts/fields";
import { Fold } from "../../parts/fold";
import { LongList } from "../../parts/long-list";
import { ScreenHead } from "../../parts/screen-head";
import { listInHand } from "../../state/list-desk";
import type { DeskState, Merge, Side } from "../../state/list-desk";
import { addingOthers, sideOf, sidesOf, tookAll, tookOne } from "../../state/list-merging";
import { BackToList } from "./back-to-list";
import { fieldName } from "./entry-fields";
import { listName } from "./open-lists";

const sides: Side[] = ["here", "there", "both", "newer", "fill"];

export function MergeLists({ desk }: { desk: DeskState }) {
  const { texts } = usePage();
  const { merge } = desk;
  const list = listInHand(desk);
  return (
    <>
      <BackToList />
      <ScreenHead title={texts.desk.mergeTitle}>
        {list !== null && <p>{texts.desk.mergeWith({ name: listName(texts, list) })}</p>}
      </ScreenHead>
      <div class="inset stack">
        {merge === null ? <ChooseOther desk={desk} /> : <Compared merge={merge} />}
      </div>
    </>
  );
}

function ChooseOther({ desk }: { desk: DeskState }) {
  const { texts, work, sourceOf } = usePage();
  return (
    <>
      {desk.open
        .filter(({ key }) => key !== desk.inHand)
        .map((list) => (
          <button
            key={list.key}
            type="button"
            class="button wide"
            onClick={() => void work.compareList(list.key, listName(texts, list))}
          >
            {listName(texts, list)} ({texts.list.bikes({ number: list.bikes })})
          </button>
        ))}
      <label class="button main wide file-choice">
        <input
          type="file"
          onChange={({ currentTarget: field }) => {
            const file = field.files?.[0];
            if (file !== undefined) void work.compareFile(sourceOf(file));
            field.value = "";
          }}
        />
        {texts.desk.mergeFile}
      </label>
    </>
  );
}

function Compared({ merge }: { merge: Merge }) {
  const { texts, change, work } = usePage();
  const { answer, add } = merge;
  const { conflicts, only_there: others } = answer;
  return (
    <>
      <section class="sheet stack">
        <h3>{merge.name}</h3>
        <p>
          {texts.desk.mergeCounts({
            same: answer.same,
            here: answer.only_here,
            there: others.length,
            differ: conflicts.length,
          })}
        </p>
        {answer.set_aside > 0 && <p>{texts.desk.mergeAside({ count: answer.set_aside })}</p>}
        {others.length > 0 && (
          <TickField
            label={texts.desk.mergeAdd({ count: others.length })}
            ticked={add}
            onTick={(on) => change(addingOthers(on))}
          />
        )}
        {conflicts.length > 0 && <ForAll merge={merge} />}
        <button type="button" class="button main wide" onClick={() => void work.merge()}>
          {texts.desk.mergeDo}
        </button>
      </section>
      {conflicts.length > 0 && (
        <>
          <h3>{texts.desk.conflicts}</h3>
          <LongList
            label={texts.desk.conflicts}
            length={conflicts.length}
            itemAt={(place) => conflicts[place] ?? null}
            keyOf={({ id }) => id}
          >
            {(conflict) =>
              conflict !== null && <ConflictRow conflict={conflict} side={sideOf(merge, conflict)} />
            }
          </LongList>
        </>
      )}
    </>
  );
}

function ForAll({ merge }: { merge: Merge }) {
  const { texts, change } = usePage();
  const { all, answer } = merge;
  const undated = answer.conflicts.filter(({ newer }) => newer === null).length;
  const some = (side: Side): boolean => answer.conflicts.some((conflict) => sidesOf(conflict).includes(side));
  const isAll = answer.conflicts.every(
    (conflict) => sideOf(merge, conflict) === all || !sidesOf(conflict).includes(all),
  );
  return (
    <>
      <Switch
        name="merge-all"
        legend={texts.desk.mergeAll}
        chosen={isAll ? all : null}
        onChoose={(side) => change(tookAll(side))}
        options={sides.filter(some).map((value) => ({ value, label: texts.desk.sides[value] }))}
      />
      {undated > 0 && <p class="soft">{texts.desk.mergeUndated({ count: undated })}</p>}
    </>
  );
}

function ConflictRow({ conflict, side }: { conflict: Conflict; side: Side }) {
  const { texts, change } = usePage();
  const { id, here, there, differs } = conflict;
  const name = here.cells.name ?? there.cells.name ?? id;
  const alike = Object.keys({ ...here.cells, ...there.cells }).filter((field) => !differs.includes(field));
  return (
    <article class="entry stack" aria-label={name}>
      <h4>{name}</h4>
      <SideBySide conflict={conflict} fields={differs} />
      {alike.length > 0 && (
        <Fold title={texts.desk.alike({ count: alike.length })}>
          <SideBySide conflict={conflict} fields={alike} />
        </Fold>
      )}
      <Switch
        name={`merge-${id}`}
        legend={texts.desk.mergeOne({ name })}
        legendShown={false}
        chosen={side}
        onChoose={(chosen) => change(tookOne(id, chosen))}
        options={sidesOf(conflict).map((value) => ({ value, label: texts.desk.sides[value] }))}
      />
      {side === "fill" && (
        <p>{texts.desk.mergeFills({ fields: conflict.fills.map((field) => fieldName(texts, field)) })}</p>
      )}
    </article>
  );
}

function SideBySide({ conflict: { here, there }, fields }: { conflict: Conflict; fields: string[] }) {
  const { texts, figures } = usePage();
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{texts.desk.field}</th>
          {[here, there].map(({ measured_on: day }, side) => (
            <th key={side} scope="col">
              {side === 0 ? texts.desk.sides.here : texts.desk.sides.there}
              {day !== null && (
                <small>
                  <br />
                  {texts.list.measuredOn({ day: figures.day(day) })}
                </small>
              )}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {fields.map((field) => (
          <tr key={field}>
            <th scope="row">{fieldName(texts, field)}</th>
            <td>{here.cells[field] ?? texts.desk.nothing}</td>
            <td>{there.cells[field] ?? texts.desk.nothing}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
