// Checks beyond the saddle: those that ask for a look are open, the rest is folded away.
import type { Check, CheckState } from "../../engine/wire";
import { checkFigures } from "../../figures/check-figures";
import type { CheckFigures } from "../../figures/check-figures";
import { usePage } from "../../page/page-context";
import { CheckSign } from "../../parts/check-sign";
import { Fold } from "../../parts/fold";
import { went } from "../../state/screen-changes";
import { checkWords } from "./check-words";
import { byCode } from "../../texts/texts";
import type { Texts } from "../../texts/texts";
import { upperFirst } from "../../texts/upper-first";

export function BikeChecks({ checks, weighed }: { checks: Check[]; weighed: boolean }) {
  const { texts } = usePage();
  if (checks.length === 0) return null;
  const inState = (state: CheckState): Check[] => checks.filter((check) => check.state === state);
  const toRead = [...inState("stop"), ...inState("look")];
  const fine = inState("ok");
  return (
    <section class="sheet stack">
      <h3>{texts.checks.title}</h3>
      {toRead.length === 0 ? <p>{texts.checks.noDoubts}</p> : <CheckLines checks={toRead} />}
      {!weighed && checks.some(restsOnRiderMass) && <WeighTheRider />}
      <NotMeasured checks={inState("unknown")} />
      {fine.length > 0 && (
        <Fold title={texts.checks.fine({ number: fine.length })}>
          <CheckLines checks={fine} />
        </Fold>
      )}
    </section>
  );
}

function restsOnRiderMass({ basis, to_measure }: Check): boolean {
  return basis === "estimated_rider_mass" || to_measure.includes("rider.mass_kg");
}

function CheckLines({ checks }: { checks: Check[] }) {
  return (
    <ul class="checks">
      {checks.map((check) => (
        <CheckLine key={check.what} check={check} />
      ))}
    </ul>
  );
}

function CheckLine({ check }: { check: Check }) {
  const { texts, figures } = usePage();
  const { basis, source, sources } = texts.checks;
  const { title, why } = checkWords(texts, figures, check);
  const small = [
    byCode(basis, check.basis),
    limitWords(texts, check.what, checkFigures(figures, check)),
    source({ source: byCode(sources, check.what) ?? check.source }),
  ].filter((part) => part !== undefined);
  return (
    <li class={`check ${check.state}`}>
      <CheckSign state={check.state} />
      <div>
        <p>
          <strong>{title}</strong> {why}
        </p>
        <p class="soft">{small.join(" ")}</p>
      </div>
    </li>
  );
}

/** The limits of a check, and whose they are. */
function limitWords(texts: Texts, what: string, figures: CheckFigures): string | undefined {
  const { limit, limit_low: low, limit_high: high } = figures;
  const whose = byCode(texts.checks.whoseLimits, what) ?? null;
  if (limit !== undefined) return texts.checks.limit({ whose, limit });
  return low === undefined || high === undefined ? undefined : texts.checks.limits({ whose, low, high });
}

function WeighTheRider() {
  const { texts, change } = usePage();
  return (
    <div>
      <p class="soft">{texts.checks.riderMassGuessed}</p>
      <button type="button" class="plain-link" onClick={() => change(went({ name: "rider", at: "mass" }))}>
        {texts.checks.typeRiderMass}
      </button>
    </div>
  );
}

/** One line for all that nobody measured; unfolded, what each of it would tell. */
function NotMeasured({ checks }: { checks: Check[] }) {
  const { texts } = usePage();
  const fields = [...new Set(checks.flatMap((check) => check.to_measure))];
  if (checks.length === 0) return null;
  const { measure, names, wouldTell } = texts.checks;
  const inWords = (field: string): string => byCode(measure, field) ?? field;
  return (
    <Fold title={texts.checks.notMeasured} more={fields.map(inWords).join(", ")}>
      <ul class="notes">
        {fields.map((field) => {
          const told = checks.filter((check) => check.to_measure.includes(field));
          return (
            <li key={field}>
              {wouldTell({
                what: upperFirst(inWords(field)),
                checks: told.map((check) => byCode(names, check.what) ?? check.what).join(", "),
              })}
            </li>
          );
        })}
      </ul>
    </Fold>
  );
}
