// Checks beyond the saddle: those that ask for a look stand open, the rest is folded away.
import type { Check, CheckState } from "../../engine/wire-answers";
import { usePage } from "../../page/page-context";
import { Fold } from "../../parts/fold";

export function BikeChecks({ checks }: { checks: Check[] }) {
  const { texts } = usePage();
  if (checks.length === 0) return null;
  const inState = (state: CheckState): Check[] => checks.filter((check) => check.state === state);
  const toRead = [...inState("stop"), ...inState("look")];
  return (
    <section class="sheet stack">
      <h3>{texts.bike.checks}</h3>
      {toRead.length === 0 ? <p>{texts.bike.noDoubts}</p> : <CheckLines checks={toRead} />}
      <FoldedChecks title={texts.bike.checksUnknown} checks={inState("unknown")} />
      <FoldedChecks title={texts.bike.checksFine} checks={inState("ok")} />
    </section>
  );
}

function FoldedChecks({ title, checks }: { title: (number: number) => string; checks: Check[] }) {
  if (checks.length === 0) return null;
  return (
    <Fold title={title(checks.length)}>
      <CheckLines checks={checks} />
    </Fold>
  );
}

function CheckLines({ checks }: { checks: Check[] }) {
  const { texts } = usePage();
  return (
    <ul class="notes">
      {checks.map((check) => (
        <li key={check.what}>
          <strong>{texts.bike.checkStates[check.state]}</strong>: {check.why}.
          <span class="soft"> ({check.source})</span>
        </li>
      ))}
    </ul>
  );
}
