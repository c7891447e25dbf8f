// Over the rack: how many bikes fit, said aloud when it changes, and the unit that lengths are shown in.
import { useEffect, useState } from "preact/hooks";
import { isGuess } from "../../drawings/shown-window";
import { rackQuestion } from "../../engine/rack-question";
import type { TypedUnit } from "../../engine/narrowed";
import type { AssessAnswer, Verdict } from "../../engine/wire";
import type { Figures } from "../../figures/format-figures";
import { usePage } from "../../page/page-context";
import { Switch } from "../../parts/choices";
import { riderName } from "../../parts/rider-switch";
import { answerTo } from "../../state/answers";
import type { PageState } from "../../state/page-state";
import { shownIn } from "../../state/rider-changes";
import type { Texts } from "../../texts/texts";

const verdicts: Verdict[] = ["fits_now", "close_call", "too_tall", "outgrown", "not_measured"];

/** "3 fit now, 1 close call, 2 too tall". */
export function countWords(texts: Texts, answer: Pick<AssessAnswer, "counts">): string[] {
  const { counts } = answer;
  return verdicts
    .filter((verdict) => counts[verdict] > 0 || verdict === "fits_now")
    .map((verdict) => texts.rack.counts[verdict]({ number: counts[verdict] }));
}

export function VerdictCounts({ answer }: { answer: AssessAnswer }) {
  const { texts } = usePage();
  const [fitting, ...others] = countWords(texts, answer);
  return (
    <p class="told">
      <strong class="count-first">{fitting}</strong>
      {others.length > 0 && `, ${others.join(", ")}`}
    </p>
  );
}

/** The saddle heights to look for and the counts of the rack; before there is a rider, how many bikes hang on it. Older ones are not said. */
function aloud(texts: Texts, figures: Figures, state: PageState): string {
  const { list, rider, waiting } = state;
  const { answer, fresh, pending } = answerTo(state, rackQuestion);
  if (pending) return "";
  if (fresh && answer !== null) {
    const { low, high } = isGuess(answer.rider) ? answer.rider.window_likely_mm : answer.rider.window_mm;
    const range = texts.window.range({ low: figures.bareLength(low), high: figures.length(high) });
    const hasBikes = Object.values(answer.counts).some((count) => count > 0);
    return [
      ...(waiting.length === 0 ? [] : [`${riderName(texts, rider)}.`]),
      `${texts.window.title}: ${range}.`,
      ...(hasBikes ? [texts.rack.announced({ counts: countWords(texts, answer).join(", ") })] : []),
    ].join(" ");
  }
  const listed = list.loaded?.counts.bikes ?? 0;
  return listed === 0 ? "" : texts.rack.announced({ counts: texts.list.bikes({ number: listed }) });
}

const settled = 700;

/** Read aloud once the counts have not changed for a moment, wherever on the page somebody is. */
export function CountsAloud({ state }: { state: PageState }) {
  const { texts, figures } = usePage();
  const words = aloud(texts, figures, state);
  const [said, setSaid] = useState("");
  useEffect(() => {
    const timer = setTimeout(() => {
      setSaid(words);
    }, settled);
    return () => {
      clearTimeout(timer);
    };
  }, [words]);
  return (
    <p class="aloud" role="status">
      {said}
    </p>
  );
}

export function DisplayUnit({ unit }: { unit: TypedUnit }) {
  const { texts, change } = usePage();
  return (
    <Switch
      name="shown-in"
      legend={texts.shownIn}
      legendShown={false}
      small
      chosen={unit}
      onChoose={(chosen) => change(shownIn(chosen))}
      options={[
        { value: "cm", label: texts.units.cm },
        { value: "in", label: texts.units.in },
      ]}
    />
  );
}
