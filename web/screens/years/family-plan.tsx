// A plan: drawn, in sentences by date, in money, what to look for, and how sure it is.
import { YearsLanes } from "../../drawings/years-lanes";
import type { YearsAnswer } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { riderName } from "../../parts/rider-switch";
import { ShareText } from "../../parts/share-text";
import { familyOf } from "../../state/family-changes";
import type { PageState } from "../../state/page-state";
import { isPlanned, sentReadings, shareOfPercent } from "../../state/request-building";
import { bikesInOrder, planAccounts, planMonths, planWanted, spokenPlan } from "./plan-words";
import type { SpokenPlan } from "./plan-words";

export function FamilyPlan({ state, plan }: { state: PageState; plan: YearsAnswer }) {
  const { texts, figures, print } = usePage();
  const spoken = spokenPlan(texts, figures, state, plan);
  const bikes = bikesInOrder(plan);
  return (
    <div class="told stack years-plan">
      <Guessed state={state} />
      <YearsLanes
        plan={plan}
        from={state.today.slice(0, 7)}
        months={12 * state.years.years}
        label={texts.years.lead}
        childName={spoken.childName}
        numberOf={(bike) => bikes.indexOf(bike) + 1}
        bikeName={spoken.bikeName}
      />
      <ol class="drawing-key years-key">
        {bikes.map((bike) => (
          <li key={bike}>{spoken.bikeName(bike)}</li>
        ))}
      </ol>
      {plan.gap_months > 0 && (
        <ul class="drawing-key">
          <li class="key-pause">{texts.pauses.key}</li>
        </ul>
      )}
      <section class="stack">
        <h3>{texts.growth.tableWhen}</h3>
        <ol class="notes">
          {planMonths(spoken).map(({ on, lines }) => (
            <li key={on}>
              <h4>{figures.month(on)}</h4>
              {lines.map((line) => (
                <p key={line}>{line}</p>
              ))}
            </li>
          ))}
        </ol>
      </section>
      <Wanted lines={planWanted(spoken)} />
      <Money spoken={spoken} share={shareOfPercent(state.wants.resalePercent)} />
      <HowSure spoken={spoken} />
      <button type="button" class="button wide" onClick={print}>
        {texts.club.print}
      </button>
    </div>
  );
}

/** Children whose legs nobody measured. */
function Guessed({ state }: { state: PageState }) {
  const { texts } = usePage();
  const names = familyOf(state)
    .filter(({ rider }) => isPlanned(rider) && sentReadings(rider).length === 0)
    .map(({ rider }) => riderName(texts, rider));
  if (names.length === 0) return null;
  return (
    <p class="estimate">
      <strong>
        {names.join(", ")}
        {texts.colon}
        {texts.guess.caveat}
      </strong>
    </p>
  );
}

function Wanted({ lines }: { lines: string[] }) {
  const { texts } = usePage();
  if (lines.length === 0) return null;
  const title = texts.club.toGet;
  const text = [title, ...lines.map((line) => `- ${line}`)].join("\n");
  return (
    <section class="stack">
      <h3>{title}</h3>
      <ul class="notes">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <div class="buttons">
        <ShareText title={title} text={text.replaceAll("\u00a0", " ")} />
      </div>
    </section>
  );
}

/** `share`: of a price that comes back; null where what was typed is none. */
function Money({ spoken, share }: { spoken: SpokenPlan; share: number | null }) {
  const { plan, texts, figures, childName, money } = spoken;
  const accounts = planAccounts(spoken);
  if (accounts.length === 0) return null;
  return (
    <section class="stack">
      <h3>{texts.years.money}</h3>
      <table class="figure">
        <tbody>
          {accounts.map(({ on, what, amount }) => (
            <tr key={on + what}>
              <td>{figures.shortMonth(on)}</td>
              <th scope="row">{what}</th>
              <td>{money(amount)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={2}>
              {texts.years.net}
            </th>
            <td>{money(-plan.cost.net)}</td>
          </tr>
        </tfoot>
      </table>
      <ul>
        {plan.riders.map(
          ({ id, net_a_month: amount }) =>
            amount !== null && (
              <li key={id}>
                {childName(id)}
                {texts.colon}
                {texts.verdict.costPerMonth({ amount: money(amount) })}
              </li>
            ),
        )}
      </ul>
      {share !== null && <p class="soft">{texts.bike.resale({ share: figures.share(share) })}</p>}
    </section>
  );
}

/** How far the plan can be relied on, and whether there may be a better one. */
function HowSure({ spoken: { plan, texts, figures, money } }: { spoken: SpokenPlan }) {
  const words = texts.years;
  const { proof, doubt, cost } = plan;
  const fewer = plan.gap_months - proof.least_gap_months;
  const end = doubt.by_year.at(-1);
  const until = doubt.holds_until && figures.month(doubt.holds_until);
  const toMeasure = texts.rack.counts.not_measured({ number: plan.not_measured.length });
  return (
    <section class="stack">
      <h3>{texts.growth.about}</h3>
      {plan.months_with_bike > 0 && end && <p>{words.holds({ share: figures.share(end.share), until })}</p>}
      <p>{words.again({ month: figures.month(doubt.measure_again) })}</p>
      <p>
        {proof.exact
          ? words.exact
          : words.better({ months: fewer > 0 ? fewer : null, amount: money(cost.net - proof.least_net) })}
      </p>
      {plan.not_measured.length > 0 && <p>{texts.rack.announced({ counts: [toMeasure] })}</p>}
    </section>
  );
}
