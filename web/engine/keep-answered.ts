// Follows the state: whenever it calls for another answer than the one on screen, the engine is asked.
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";
import { afterPaint } from "./after-paint";
import type { Engine } from "./engine-door";
import { latestWins } from "./latest-wins";
import type { Posed, Question } from "./questions";

/** Returns what is to be told of every state, before it is drawn: then the engine works while the page is busy drawing. */
export function keepAnswered(
  store: Store<PageState>,
  engines: Record<Question["engine"], Engine>,
  questions: Question[],
): (state: PageState) => void {
  const followers = questions.map((question) => follow(store, engines[question.engine], question));
  return (state) => {
    for (const follower of followers) follower(state);
  };
}

function follow(store: Store<PageState>, engine: Engine, question: Question): (state: PageState) => void {
  let asked = "";
  const ask = latestWins(
    async ({ request }: Posed) => {
      if (question.afterPaint) await afterPaint();
      return engine.ask(request);
    },
    (answer, posed) => store.change(question.receive(answer, posed)),
  );
  let settling: ReturnType<typeof setTimeout> | undefined;
  return (state) => {
    const posed = question.pose(state);
    const key = posed === null ? "" : JSON.stringify(posed);
    if (key === asked) return;
    asked = key;
    clearTimeout(settling);
    if (posed === null) return;
    if (question.settles === undefined) {
      ask(posed);
      return;
    }
    store.change(question.settles.meanwhile);
    settling = setTimeout(() => ask(posed), question.settles.after);
  };
}
