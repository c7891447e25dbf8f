// The questions about the list itself: bikes on a rack that nothing is judged on yet, and what the list says of some.
import type { PageState } from "../state/page-state";
import type { Question } from "./questions";
import { isRefusal } from "./wire-answers";
import type { BikeFacts } from "./wire-answers";
import type { EntryAnswer, EntryRequest, ListRowsAnswer } from "./wire-lists";

const hanging: Question = {
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

/** The bikes of which the screen shows all that the list says. */
function bikesShown({ screen, picked }: PageState): string[] {
  if (screen.name === "beside") return picked;
  return screen.name === "bike" ? [screen.id] : [];
}

const facts: Question = {
  engine: "rack",
  pose: (state) => {
    const request = bikesShown(state).map((id): EntryRequest => ({ do: "entry", id }));
    return request.length === 0 ? null : { request, edition: state.list.edition };
  },
  receive: (answer) => (state) => {
    const told = Array.isArray(answer) ? (answer as object[]) : [];
    // A bike that is in no list, such as a taped one, is refused.
    const bikes = told.flatMap((one): BikeFacts[] => {
      const bike = isRefusal(one) ? null : (one as EntryAnswer).bike;
      return bike === null ? [] : [bike];
    });
    return { ...state, list: { ...state.list, facts: bikes } };
  },
};

export const listQuestions: Question[] = [hanging, facts];
