// All bikes of the rack at once, folded away: see overview-shape.tsx.
import { Inside } from "../../page/later-screen";
import { usePage } from "../../page/page-context";
import { Fold } from "../../parts/fold";
import type { PageState } from "../../state/page-state";
import { unfolded } from "../../state/screen-changes";
import type { OverviewProps } from "./overview-shape";

export function RackOverview({ state, ...drawing }: OverviewProps & { state: PageState }) {
  const { texts, change } = usePage();
  return (
    <div class="what-if">
      <Fold
        title={texts.rack.overview}
        open={state.overviewOpen}
        onFold={(open) => change(unfolded("overviewOpen", open))}
      >
        <Inside>{({ OverviewShape }) => <OverviewShape state={state} {...drawing} />}</Inside>
      </Fold>
    </div>
  );
}
