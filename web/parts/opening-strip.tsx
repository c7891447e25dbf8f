// While a big file is read: how far it is, and the way to stop it, on whatever screen somebody is meanwhile.
import type { Opening } from "../state/page-state";
import type { Texts } from "../texts/texts";
import { usePage } from "../page/page-context";

function stageWords(texts: Texts, { name, done, total }: Extract<Opening, { stopped: false }>): string {
  return total > 0 && done === total ? texts.opening.judging({ name }) : texts.opening.reading({ name });
}

export function OpeningStrip({ opening }: { opening: Opening | null }) {
  const { texts, stopOpening } = usePage();
  if (opening === null || opening.stopped) return null;
  const { done, total } = opening;
  return (
    <div class="opening-strip">
      <div>
        <p id="opening-words">{stageWords(texts, opening)}</p>
        <progress aria-labelledby="opening-words" {...(total > 0 ? { value: done, max: total } : {})} />
      </div>
      <button type="button" class="button" onClick={stopOpening}>
        {texts.opening.stop}
      </button>
    </div>
  );
}

/** What a screen reader says about it: that it began, every quarter, and that it was stopped. */
export function OpeningAloud({ opening }: { opening: Opening | null }) {
  const { texts, figures } = usePage();
  return (
    <p class="aloud" role="status">
      {opening === null
        ? ""
        : opening.stopped
          ? texts.opening.stopped
          : `${stageWords(texts, opening)} ${quarterWords(figures.share, opening)}`}
    </p>
  );
}

function quarterWords(
  share: (part: number) => string,
  { done, total }: Extract<Opening, { stopped: false }>,
): string {
  return total === 0 || done === total ? "" : share(Math.floor((4 * done) / total) / 4);
}
