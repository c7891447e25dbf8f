// The rider among the others of the family: a name, if one is wanted, and the way to take a rider out again.
import { usePage } from "../../page/page-context";
import { TextField } from "../../parts/fields";
import { riderName } from "../../parts/rider-switch";
import { riderBroughtBack, riderRemoved } from "../../state/family-changes";
import { longestName } from "../../state/limits";
import type { PageState } from "../../state/page-state";
import { riderSaid } from "../../state/rider-changes";

export function RiderFamily({ state }: { state: PageState }) {
  const { texts, change } = usePage();
  const { rider, removed, waiting } = state;
  return (
    <>
      {removed !== null && (
        <p class="undo-line" role="status">
          {texts.family.removed({ name: riderName(texts, removed.rider) })}{" "}
          <button type="button" class="plain-link" onClick={() => change(riderBroughtBack())}>
            {texts.family.undo}
          </button>
        </p>
      )}
      {waiting.length > 0 && (
        <div class="rider-named">
          <TextField
            id="rider-name"
            label={texts.family.name}
            text={rider.name}
            whenEmpty={texts.family.unnamed({ number: rider.key })}
            kind="plain"
            longest={longestName}
            onType={(name) => change(riderSaid({ name }))}
          />
          <button type="button" class="plain-link" onClick={() => change(riderRemoved())}>
            {texts.family.remove({ name: riderName(texts, rider) })}
          </button>
        </div>
      )}
    </>
  );
}
