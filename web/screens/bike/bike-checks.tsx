// Checks beyond the saddle, the ones that ask for a look first; those in order folded away.
import type { Check } from "../../engine/wire-answers";
import { usePage } from "../../page/page-context";
import { Fold } from "../../parts/fold";

const firstToLast: Check["state"][] = ["stop", "look", "unknown"];

export function BikeChecks({ checks }: { checks: Check[] }) {
  const { texts } = usePage();
  if (checks.length === 0) return null;
  const toRead = firstToLast.flatMap((state) => checks.filter((check) => check.state === state));
  const inOrder = checks.filter((check) => check.state === "ok");
  return (
    <section class="sheet stack">
      <h3>{texts.bike.checks}</h3>
      <CheckLines checks={toRead} />
      {inOrder.length > 0 && (
        <Fold title={`${texts.bike.checkStates.ok}: ${inOrder.length}`}>
          <CheckLines checks={inOrder} />
        </Fold>
      )}
    </section>
  );
}

function CheckLines({ checks }: { checks: Check[] }) {
  const { texts } = usePage();
  return (
    <ul class="notes">
      {checks.map((check) => (
        <li key={check.what}>
          <strong>{texts.bike.checkStates[check.state]}</strong>: {check.why}
          <span class="soft"> ({check.source})</span>
        </li>
      ))}
    </ul>
  );
}
