// The rack before there is a bike on it: the three ways to one.
import { usePage } from "../../page/page-context";
import { Cautions } from "../../parts/cautions";
import { ListChooser, SampleChooser } from "../../parts/list-choosers";
import { ListRefused } from "../../page/later-screen";
import { ScreenHead } from "../../parts/screen-head";
import type { PageState } from "../../state/page-state";
import { went } from "../../state/screen-changes";

export function RackEmpty({ state }: { state: PageState }) {
  const { texts, change } = usePage();
  return (
    <>
      <ScreenHead title={texts.rack.title}>
        <p>{texts.rack.emptyWhy}</p>
      </ScreenHead>
      <div class="inset stack">
        <ListRefused list={state.list} />
        <ListChooser list={state.list} />
        <button type="button" class="button wide" onClick={() => change(went({ name: "tape" }))}>
          {texts.navigation.tape}
        </button>
        <SampleChooser />
        <Cautions />
      </div>
    </>
  );
}
