// The list: open one, look through it, mend and measure, save. One view at a time.
import type { SetAside } from "../engine/wire-answers";
import { usePage } from "../page/page-context";
import { Fold } from "../parts/fold";
import { ListChooser, SampleChooser } from "../parts/list-choosers";
import { LongList } from "../parts/long-list";
import { worded } from "../parts/notes";
import { ScreenHead } from "../parts/screen-head";
import type { DeskState } from "../state/list-desk";
import type { ListState, PageState } from "../state/page-state";
import { DeskBar } from "./desk/desk-bar";
import { EntryForm } from "./desk/entry-form";
import { ListEntries } from "./desk/list-entries";
import { ListHeadForm } from "./desk/list-head-form";
import { ListInHand } from "./desk/list-in-hand";
import { MergeLists } from "./desk/merge-lists";
import { OpenLists } from "./desk/open-lists";
import { SaveList } from "./desk/save-list";
import { Workshop } from "./desk/workshop";

export function TheList({ state }: { state: PageState }) {
  const { desk } = state;
  return (
    <>
      <DeskBar desk={desk} />
      {/* Kept while something else is in view: the reader comes back to the same place of a long list. */}
      <div class={desk.view === "entries" ? "" : "out-of-view"}>
        {/* Those of another list stand in a place of their own: what was there goes, and does not move. */}
        <Entries key={desk.inHand} state={state} />
      </div>
      <View desk={desk} />
    </>
  );
}

function View({ desk }: { desk: DeskState }) {
  switch (desk.view) {
    case "entries":
      return null;
    case "entry":
      return <EntryForm desk={desk} />;
    case "workshop":
      return <Workshop desk={desk} />;
    case "head":
      return <ListHeadForm key={desk.inHand} desk={desk} />;
    case "save":
      return <SaveList desk={desk} />;
    case "merge":
      return <MergeLists desk={desk} />;
  }
}

function Entries({ state }: { state: PageState }) {
  const { texts, work } = usePage();
  const { list, desk, unit } = state;
  const none = desk.inHand === 0;
  const start = (
    <button type="button" class="button wide" onClick={() => void work.start({ units: unit })}>
      {texts.desk.start}
    </button>
  );
  return (
    <>
      <ScreenHead title={texts.list.title}>{none && <p>{texts.list.lead}</p>}</ScreenHead>
      <div class="inset stack">
        <Refused list={list} />
        <OpenLists desk={desk} />
        <ListInHand state={state} />
        {none ? (
          <>
            <ListChooser list={list} />
            {start}
            <div class="ending">
              <SampleChooser />
            </div>
          </>
        ) : (
          <>
            <ListChooser list={list} />
            <Fold title={texts.desk.otherWays}>
              {start}
              <SampleChooser />
            </Fold>
            <ListEntries desk={desk} />
          </>
        )}
      </div>
    </>
  );
}

const listUnits = ["cm", "mm", "in"] as const;

function Refused({ list }: { list: ListState }) {
  const { texts, figures, openListAs } = usePage();
  const { refusal, loaded } = list;
  if (refusal === null) return null;
  const unitUnknown = refusal.problem.code === "table_without_units";
  const stillOpen =
    loaded === null
      ? texts.list.keptNone
      : texts.list.keptOld({ title: loaded.list?.title ?? texts.list.untitled });
  return (
    <section class="sheet stack refused" role="alert">
      <p>
        <strong>{texts.list.refused({ fileName: refusal.fileName })}</strong>
      </p>
      <p>{worded(texts, figures, refusal.problem)}</p>
      {unitUnknown && (
        <>
          <p>{texts.desk.whichUnit}</p>
          <div class="buttons">
            {listUnits.map((unit) => (
              <button
                key={unit}
                type="button"
                class="button"
                onClick={() => openListAs({ tableUnits: unit })}
              >
                {texts.units[unit]}
              </button>
            ))}
          </div>
        </>
      )}
      {["file_no_usable_bike", "file_bikes_empty"].includes(refusal.problem.code) && (
        <button type="button" class="button" onClick={() => openListAs({ toMend: true })}>
          {texts.desk.openToMend}
        </button>
      )}
      {refusal.problem.code === "file_not_utf8" && (
        <>
          <button type="button" class="button" onClick={() => openListAs({ encoding: "windows-1252" })}>
            {texts.desk.asWindows}
          </button>
          <p class="soft">{texts.desk.asWindowsWhy}</p>
        </>
      )}
      <p>{stillOpen}</p>
      {/* All of them for want of the unit: once it is said, nothing is wrong with them. */}
      {!unitUnknown && <SetAsideEntries entries={refusal.setAside} />}
    </section>
  );
}

/** All entries of a file in which none could be used. */
function SetAsideEntries({ entries }: { entries: SetAside[] }) {
  const { texts, figures } = usePage();
  if (entries.length === 0) return null;
  return (
    <LongList
      label={texts.list.setAside({ number: entries.length })}
      length={entries.length}
      itemAt={(place) => entries[place] ?? null}
      keyOf={(entry) => String(entry.number)}
    >
      {(entry) =>
        entry !== null && (
          <div class="set-aside">
            <p>
              <strong>{entry.name ?? entry.id ?? texts.list.setAsideName({ number: entry.number })}</strong>
            </p>
            <p>{worded(texts, figures, entry)}</p>
            <Fold title={texts.list.asWritten}>
              <pre tabIndex={0}>{entry.source}</pre>
            </Fold>
          </div>
        )
      }
    </LongList>
  );
}
