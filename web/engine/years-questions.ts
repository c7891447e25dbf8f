// The questions of the years ahead: the family's plan, and the bikes of the list that something can be said of.
import type { Question } from "../state/answers";
import { yearsRequest } from "../state/request-building";
import type { ListRowsAnswer, YearsAnswer } from "./wire";

export const yearsQuestion: Question<YearsAnswer> = {
  name: "years",
  engine: "rack",
  pose: (state) => {
    const request = state.screen.name === "years" ? yearsRequest(state) : null;
    return request && { request, edition: state.list.edition, subject: String(state.list.edition) };
  },
  settles: 300,
};

/** As many as can be looked over. */
const mostFound = 6;

export const foundQuestion: Question<ListRowsAnswer> = {
  name: "found",
  engine: "rack",
  pose: ({ screen, list, years: { find } }) =>
    screen.name === "years" && list.loaded !== null
      ? {
          request: { do: "list", show: "bikes", find },
          edition: list.edition,
          rows: { from: 0, count: mostFound },
        }
      : null,
};

export const yearsQuestions = [yearsQuestion, foundQuestion];
