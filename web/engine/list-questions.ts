// The question about the list itself: bikes on a rack that nothing is judged on yet.
import { lastAnswer } from "../state/answers";
import type { Question } from "../state/answers";
import type { ListRowsAnswer } from "./wire";
import { rackQuestion } from "./rack-question";

export const hanging: Question<ListRowsAnswer> = {
  name: "hanging",
  engine: "rack",
  pose: (state) =>
    state.list.loaded !== null && lastAnswer(state, rackQuestion).answer === null
      ? { request: { do: "list", show: "bikes" }, edition: state.list.edition, rows: state.rows }
      : null,
};
