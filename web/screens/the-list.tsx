// The list: open one, look through it, mend and measure, save. One view at a time.
import { checkQuestion, savedQuestion } from "../engine/desk-questions";
import { usePage } from "../page/page-context";
import { Fold } from "../parts/fold";
import { ListChooser, SampleChooser } from "../parts/list-choosers";
import { ListRefused } from "../parts/list-refused";
import { ScreenHead } from "../parts/screen-head";
import { answerTo } from "../state/answers";
import type { PageState } from "../state/page-state";
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
        {/* Those of another list are in a place of their own: what was there goes, and does not move. */}
        <Entries key={desk.inHand} state={state} />
      </div>
      <View state={state} />
    </>
  );
}

function View({ state }: { state: PageState }) {
  const { desk } = state;
  switch (desk.view) {
    case "entries":
      return null;
    case "entry":
      return <EntryForm desk={desk} check={answerTo(state, checkQuestion)} />;
    case "workshop":
      return <Workshop desk={desk} check={answerTo(state, checkQuestion)} />;
    case "head":
      return <ListHeadForm key={desk.inHand} desk={desk} />;
    case "save":
      return <SaveList desk={desk} saved={answerTo(state, savedQuestion)} />;
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
        <ListRefused list={list} />
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
