// The smallest change of reading, stage or budget that puts another bike first, of each kind.
import { changesQuestion } from "../../engine/questions";
import type { AnswerChange } from "../../engine/wire";
import type { Figures } from "../../figures/format-figures";
import { usePage } from "../../page/page-context";
import { answerTo } from "../../state/answers";
import type { PageState } from "../../state/page-state";
import { went } from "../../state/screen-changes";
import type { Texts } from "../../texts/texts";

export function WhatChanges({ state, currency }: { state: PageState; currency: string | null }) {
  const { texts } = usePage();
  const { answer, fresh } = answerTo(state, changesQuestion);
  return answer === null || !fresh ? (
    <p role="status">{texts.whatIf.busy}</p>
  ) : (
    <>
      <p>{texts.whatIf.now({ first: answer.first?.name ?? null })}</p>
      {answer.changes.length === 0 && <p>{texts.whatIf.nothing}</p>}
      <ul class="notes">
        {answer.changes.map((one) => (
          <li key={one.kind}>
            <ChangeLine one={one} currency={currency} />
          </li>
        ))}
      </ul>
    </>
  );
}

/** Stands for the name of the bike, which is drawn by itself. */
const nameHere = "\0";

function ChangeLine({ one, currency }: { one: AnswerChange; currency: string | null }) {
  const { texts, figures, change } = usePage();
  const { first } = one;
  const supposed = supposition(texts, figures, one, currency);
  if (first === null) return <>{texts.whatIf.noneFirst({ supposed })}</>;
  const [before, after] = texts.whatIf.otherFirst({ supposed, bike: nameHere }).split(nameHere);
  return (
    <button type="button" class="sentence-link" onClick={() => change(went({ name: "bike", id: first.id }))}>
      {before}
      <strong>{first.name}</strong>
      {after}
    </button>
  );
}

function supposition(texts: Texts, figures: Figures, one: AnswerChange, currency: string | null): string {
  const { suppose } = texts.whatIf;
  switch (one.kind) {
    case "longer_reading":
    case "shorter_reading":
      return suppose[one.kind]({ by: figures.shift(Math.abs(one.reading_shift_mm)) });
    case "next_stage":
      return suppose.next_stage[one.stage];
    case "higher_budget":
      return suppose.higher_budget({ amount: figures.money(one.budget, currency) });
    case "lower_budget":
      // Just below a price: said with that price.
      return suppose.lower_budget({ amount: figures.money(Math.ceil(one.budget * 100) / 100, currency) });
  }
}
