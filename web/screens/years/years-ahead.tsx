// The years ahead of a family: which bike each child rides when, what to buy, hand on, sell and look for.
import { yearsQuestion } from "../../engine/years-questions";
import { usePage } from "../../page/page-context";
import { NoBikes } from "../../parts/no-bikes";
import { worded } from "../../parts/notes";
import { riderName } from "../../parts/rider-switch";
import { ScreenHead } from "../../parts/screen-head";
import { ToRider } from "../../parts/what-is-missing";
import { answerTo } from "../../state/answers";
import { familyOf } from "../../state/family-changes";
import { childrenInvented, inventedRemoved, isInvented } from "../../state/invented-children";
import type { PageState } from "../../state/page-state";
import { isPlanned } from "../../state/request-building";
import { BackToRack } from "../bike/back-to-rack";
import { FamilyPlan } from "./family-plan";
import { YearsWhatIf } from "./years-what-if";

export function YearsAhead({ state }: { state: PageState }) {
  const { texts, figures, change } = usePage();
  const words = texts.years;
  const { answer, refusal, pending } = answerTo(state, yearsQuestion);
  const family = familyOf(state).map(({ rider }) => rider);
  const left = family.filter((rider) => !isPlanned(rider));
  /** The child whose figures cannot be used. */
  const concerned = family.filter(isPlanned)[Number(/^riders\[(\d+)\]/.exec(refusal?.where ?? "")?.[1])];
  return (
    <>
      <BackToRack />
      <ScreenHead title={words.title}>
        <p>{words.lead}</p>
      </ScreenHead>
      <div class="inset stack">
        {left.length > 0 && (
          <section class="sheet stack">
            <p>{words.left({ names: left.map((rider) => riderName(texts, rider)) })}</p>
            <ToRider rider={left.length === family.length ? state.rider : (left[0] ?? state.rider)} />
            {left.length === family.length && (
              <button
                type="button"
                class="plain-link"
                onClick={() => change(childrenInvented((number) => words.inventedChild({ number })))}
              >
                {words.invent}
              </button>
            )}
          </section>
        )}
        {family.some((rider) => isInvented(state, rider)) && (
          <button type="button" class="plain-link" onClick={() => change(inventedRemoved())}>
            {words.removeInvented}
          </button>
        )}
        {state.list.loaded === null && state.tape.kept.length === 0 && <NoBikes />}
        {left.length < family.length && <YearsWhatIf state={state} plan={answer} />}
        <p role="status">{pending && texts.whatIf.busy}</p>
        {refusal !== null && (
          <p class="problem" role="alert">
            {concerned !== undefined && riderName(texts, concerned) + texts.colon}
            {worded(texts, figures, refusal)}
          </p>
        )}
        {answer !== null && <FamilyPlan state={state} plan={answer} />}
      </div>
    </>
  );
}
