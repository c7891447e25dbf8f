// What would change the answer, folded away: see what-changes.tsx.
import { Inside } from "../../page/later-screen";
import { usePage } from "../../page/page-context";
import { Fold } from "../../parts/fold";
import type { PageState } from "../../state/page-state";
import { unfolded } from "../../state/screen-changes";

export function WhatIf({ state, currency }: { state: PageState; currency: string | null }) {
  const { texts, change } = usePage();
  return (
    <div class="what-if">
      <Fold
        title={texts.whatIf.title}
        open={state.whatIfOpen}
        onFold={(open) => change(unfolded("whatIfOpen", open))}
      >
        <Inside>{({ WhatChanges }) => <WhatChanges state={state} currency={currency} />}</Inside>
      </Fold>
    </div>
  );
}
