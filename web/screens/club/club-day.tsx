// A club's morning: the riders, who rides which bike and how high its saddle goes, and who is left.
import { usePage } from "../../page/page-context";
import { Switch } from "../../parts/choices";
import { Fold } from "../../parts/fold";
import { NoBikes } from "../../parts/no-bikes";
import { Notes, worded } from "../../parts/notes";
import { ScreenHead } from "../../parts/screen-head";
import { answerTo } from "../../state/answers";
import {
  planQuestion,
  ridersCleared,
  roundsChosen,
  settledFreed,
  stepTakenBack,
} from "../../state/club-steps";
import type { PageState } from "../../state/page-state";
import { PairList } from "./pair-list";
import { RiderIntake } from "./rider-intake";
import { RidersLeft } from "./riders-left";
import { SaddleBoard } from "./saddle-board";
import { ridersHere } from "./club-names";

const roundNumbers = [1, 2, 3, 4];

export function ClubDay({ state }: { state: PageState }) {
  const { texts, figures, change } = usePage();
  const { club } = state;
  const words = texts.club;
  const { answer: plan, refusal } = answerTo(state, planQuestion);
  return (
    <>
      <ScreenHead title={words.title}>
        <p>{words.lead}</p>
      </ScreenHead>
      <div class="inset stack">
        {state.list.loaded === null && <NoBikes />}
        <RiderIntake state={state} />
        {club.past.length > 0 && (
          <button type="button" class="plain-link club-undo" onClick={() => change(stepTakenBack())}>
            {words.undo}
          </button>
        )}
        {refusal !== null && (
          <section class="sheet stack refused" role="alert">
            <p>{worded(texts, figures, refusal)}</p>
            <button type="button" class="button" onClick={() => change(settledFreed())}>
              {words.startAnew}
            </button>
          </section>
        )}
        {plan !== null && club.riders.length > 0 && (
          <div class="told stack">
            <p class="club-count" role="status">
              {words.seated({ seated: plan.counts.seated, riders: ridersHere(club).length })}
            </p>
            <Switch
              name="club-rounds"
              legend={words.rounds}
              chosen={club.rounds}
              onChoose={(rounds) => change(roundsChosen(rounds))}
              options={roundNumbers.map((number) => ({ value: number, label: String(number) }))}
            />
            <PairList state={state} plan={plan} />
            <RidersLeft state={state} plan={plan} />
            <Fold title={words.board}>
              <SaddleBoard plan={plan} />
            </Fold>
            <Questions state={state} />
            <p class="soft">{words.caution}</p>
            <div class="links">
              <button type="button" class="plain-link" onClick={() => change(settledFreed())}>
                {words.startAnew}
              </button>
              <button type="button" class="plain-link" onClick={() => change(ridersCleared())}>
                {words.clear}
              </button>
            </div>
          </div>
        )}
      </div>
    </>
  );
}

/** What is odd about the figures of some riders. */
function Questions({ state }: { state: PageState }) {
  const { texts } = usePage();
  // The row of a table that is not on screen tells nobody anything.
  const asked = state.club.riders.flatMap(({ id, problems }) =>
    problems.map(({ code, figures }) => ({ id, problem: { code, figures } })),
  );
  if (asked.length === 0) return null;
  return (
    <section class="stack">
      <h3>{texts.club.questions}</h3>
      {asked.map(({ id, problem }, place) => (
        <div key={place}>
          <strong>{id}</strong>
          <Notes notes={[problem]} />
        </div>
      ))}
    </section>
  );
}
