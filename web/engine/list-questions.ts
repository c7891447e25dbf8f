// The question about the list itself: bikes on a rack that nothing is judged on yet.
import type { Question } from "./questions";
import { isRefusal } from "./wire-answers";
import type { ListRowsAnswer } from "./wire-lists";

export const hanging: Question = {
  engine: "rack",
  pose: ({ judged, list, rows }) =>
    judged.answer === null && list.loaded !== null
      ? { request: { do: "list", rows, show: "bikes" }, edition: list.edition, from: rows.from }
      : null,
  receive:
    (answer, { from = 0 }) =>
    (state) => {
      if (isRefusal(answer)) return state;
      const { entries } = answer as ListRowsAnswer;
      return { ...state, list: { ...state.list, hanging: { entries, from } } };
    },
};
