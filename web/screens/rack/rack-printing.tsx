// The rack on paper: all bikes that match, not only those near the screen; and for whom they were judged.
import { useEffect } from "preact/hooks";
import { isGuess, shownWindow } from "../../drawings/shown-window";
import { rackQuestion } from "../../engine/rack-question";
import { usePage } from "../../page/page-context";
import { riderName } from "../../parts/rider-switch";
import { answerTo, lastAnswer } from "../../state/answers";
import type { PageState } from "../../state/page-state";
import { printingBegun, printingOver } from "../../state/printing";
import type { RackBikes } from "./rack-bikes";

export interface Places {
  first: number;
  /** The last one excluded. */
  end: number;
}

/** Those that the engine has told about, which are all on one stretch of the rack. */
export function placesTold(bikes: RackBikes, { rows: { from: first } }: PageState): Places {
  let end = first;
  while (end < bikes.length && bikes.at(end) !== null) ++end;
  return { first, end };
}

const toldAbout = (bikes: RackBikes, state: PageState): number => {
  const { first, end } = placesTold(bikes, state);
  return end - first;
};

/** Prints once every bike is there, and follows the browser where somebody prints through it. */
export function usePrinting(state: PageState, bikes: RackBikes): void {
  const { change, print } = usePage();
  const { printing } = state;
  const ready =
    printing?.asked === true &&
    answerTo(state, rackQuestion).fresh &&
    bikes.length > 0 &&
    toldAbout(bikes, state) === bikes.length;
  useEffect(() => {
    const begin = (): void => change(printingBegun(false));
    const end = (): void => change(printingOver());
    addEventListener("beforeprint", begin);
    // Whoever presses something is done, even where nothing was printed: in some frames print() does nothing and says nothing.
    const ends = ["afterprint", "pointerdown"];
    for (const kind of ends) addEventListener(kind, end);
    return () => {
      removeEventListener("beforeprint", begin);
      for (const kind of ends) removeEventListener(kind, end);
    };
  }, [change]);
  useEffect(() => {
    if (ready) print();
  }, [ready, print]);
}

export function PaperHead({ state, bikes }: { state: PageState; bikes: RackBikes }) {
  const { texts, figures } = usePage();
  if (state.printing === null) return null;
  const { rider, waiting, today } = state;
  const named = waiting.length > 0 || rider.name.trim() !== "";
  const { answer } = lastAnswer(state, rackQuestion);
  const judged = answer?.rider ?? null;
  const window = shownWindow(judged);
  const leg = judged === null || isGuess(judged) ? null : judged.inseam_mm.mean;
  const title = state.list.loaded?.list?.title ?? null;
  const hidden = answer?.left_out_counts.bikes ?? 0;
  const told = toldAbout(bikes, state);
  return (
    <div class="paper-only">
      <p>
        {named && `${riderName(texts, rider)}. `}
        {title !== null && `${title}. `}
        {texts.card.madeOn({ day: figures.day(today) })}.{" "}
        {leg !== null && `${texts.rider.inseam}${texts.colon}${figures.length(leg)}. `}
        {window !== null &&
          `${texts.window.title}${texts.colon}${texts.window.range({
            low: figures.bareLength(window.low),
            high: figures.length(window.high),
          })}.`}
      </p>
      {hidden > 0 && <p>{texts.wishes.hidden({ number: hidden })}.</p>}
      {told < bikes.length && <p>{texts.rack.paperPart({ told, all: bikes.length })}</p>}
    </div>
  );
}
