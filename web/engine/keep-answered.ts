// Follows the state: whenever it calls for another answer than the one that is kept, the engine is asked.
import { answered, isAnswered, keyOf } from "../state/answers";
import type { Posed, Question } from "../state/answers";
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";
import { afterPaint } from "./after-paint";
import type { Engine } from "./engine-door";
import { latestWins } from "./latest-wins";
import type { Asked } from "./worker-messages";

/** Returns what is to hear of every state, before it is drawn: then the engine works while the page is busy drawing. */
export function keepAnswered(
  store: Store<PageState>,
  engines: Record<Question<object>["engine"], Engine>,
  questions: Question<object>[],
): (state: PageState) => void {
  const followers = questions.map((question) => follow(store, engines[question.engine], question));
  return (state) => {
    for (const follower of followers) follower(state);
  };
}

interface Wanted {
  posed: Posed;
  mark: string;
}

/** The request as the engine is asked it. */
export function sent({ request, rows }: Posed): Asked {
  return rows === undefined || Array.isArray(request) ? request : ({ ...request, rows } as Asked);
}

function follow(
  store: Store<PageState>,
  engine: Engine,
  question: Question<object>,
): (state: PageState) => void {
  /** What the state calls for. */
  let wanted = "";
  const ask = latestWins(
    async ({ posed }: Wanted) => {
      if (question.afterPaint) await afterPaint();
      return engine.ask(sent(posed));
    },
    (answer, { posed, mark }) => {
      // Somebody may have gone back to a question whose answer is kept.
      if (mark === wanted) store.change(answered(question, posed, answer));
    },
  );
  let settling: ReturnType<typeof setTimeout> | undefined;
  return (state) => {
    const posed = question.pose(state);
    const mark = posed === null ? "" : JSON.stringify([keyOf(posed), posed.rows]);
    if (mark === wanted) return;
    wanted = mark;
    clearTimeout(settling);
    if (posed === null || isAnswered(state, question, posed)) return;
    if (question.settles === undefined) ask({ posed, mark });
    else settling = setTimeout(() => ask({ posed, mark }), question.settles);
  };
}
