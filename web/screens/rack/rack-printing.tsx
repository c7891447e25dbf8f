// When the rack goes to paper: once the engine has told about every bike, not only those near the screen.
import { useEffect } from "preact/hooks";
import { rackQuestion } from "../../engine/rack-question";
import { usePage } from "../../page/page-context";
import { answerTo } from "../../state/answers";
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

/** Prints once every bike is there, and follows the browser where somebody prints through it. */
export function usePrinting(state: PageState, bikes: RackBikes): void {
  const { change, print } = usePage();
  const { printing } = state;
  const { first, end } = placesTold(bikes, state);
  const ready =
    printing?.asked === true &&
    answerTo(state, rackQuestion).fresh &&
    bikes.length > 0 &&
    end - first === bikes.length;
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
