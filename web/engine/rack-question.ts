// The question that the rack answers: every bike judged for the rider in hand, told about as far as it is near the screen.
import type { Posed, Question } from "../state/answers";
import type { PageState } from "../state/page-state";
import { assessRequest } from "../state/request-building";
import type { AssessAnswer, JudgedBike } from "./wire";

/** Bikes that were answered already stay the same objects, so that their rows are not drawn again. */
function withKept(answer: AssessAnswer, before: JudgedBike[]): AssessAnswer {
  const kept = new Map(before.map((bike) => [bike.id, bike]));
  return { ...answer, bikes: answer.bikes.map((bike) => kept.get(bike.id) ?? bike) };
}

export const rackQuestion = {
  name: "rack",
  engine: "rack",
  pose: (state: PageState): Posed => ({
    request: assessRequest(state),
    edition: state.list.edition,
    rider: state.rider.key,
    rows: state.rows,
  }),
  read: (answer, _posed, before) => withKept(answer as AssessAnswer, before?.bikes ?? []),
} satisfies Question<AssessAnswer>;
