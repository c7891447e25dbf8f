// The questions that the page keeps answered from the start; those of later screens are in page/later-parts.tsx.
import { lastAnswer } from "../state/answers";
import type { Question } from "../state/answers";
import {
  changesRequest,
  draftId,
  draftRequest,
  overviewRequest,
  sentReadings,
} from "../state/request-building";
import type { PageState } from "../state/page-state";
import { messageRead, messageRefused } from "../state/screen-changes";
import { closeUp } from "./close-up";
import { hanging } from "./list-questions";
import { rackQuestion } from "./rack-question";
import type { RefusalNote } from "./refusal";
import type { AssessAnswer, BikeSpan, ChangesAnswer, JudgedBike, ReadBikeAnswer, SetAside } from "./wire";

export interface DraftTold {
  /** The verdict on the draft alone. */
  judged: JudgedBike | null;
  /** What is wrong with the draft, by the field it concerns. */
  problems: (RefusalNote | SetAside)[];
}

/** The bike that is being taped. */
export const draftQuestion: Question<DraftTold> = {
  name: "draft",
  engine: "bench",
  pose: (state) => {
    const request = state.screen.name === "tape" ? draftRequest(state) : null;
    return request && { request, rider: state.rider.key, subject: String(state.tape.nextNumber) };
  },
  read: (answer) => {
    const { bikes, set_aside } = answer as AssessAnswer;
    const judged = bikes.find((bike) => bike.id === draftId) ?? null;
    const ofDraft = set_aside.filter(({ where }) => where.startsWith("taped["));
    return { judged, problems: [...ofDraft, ...(judged?.notes ?? [])] };
  },
};

/** A message about the bike that is being taped. */
const message: Question<ReadBikeAnswer> = {
  name: "message",
  engine: "bench",
  pose: ({ tape }) => tape.message && { request: { do: "read_bike", ...tape.message } },
  receive: messageRead,
  refused: messageRefused,
};

/** What would put another bike first; asked only while it is unfolded. */
export const changesQuestion: Question<ChangesAnswer> = {
  name: "changes",
  engine: "rack",
  pose: (state) =>
    state.whatIfOpen && state.screen.name === "rack" && lastAnswer(state, rackQuestion).answer !== null
      ? { request: changesRequest(state), edition: state.list.edition, rider: state.rider.key }
      : null,
  settles: 600,
};

/** Where every bike is on the scale, in the order of the rack; asked only while it is unfolded. */
export const overviewQuestion: Question<Overview> = {
  name: "overview",
  engine: "rack",
  pose: (state) =>
    state.overviewOpen && state.screen.name === "rack" && lastAnswer(state, rackQuestion).answer !== null
      ? { request: overviewRequest(state), edition: state.list.edition, rider: state.rider.key }
      : null,
};

export type Overview = Pick<AssessAnswer, "groups" | "counts"> & { bikes: BikeSpan[] };

export const questions = [
  rackQuestion,
  hanging,
  draftQuestion,
  message,
  closeUp,
  changesQuestion,
  overviewQuestion,
] as Question<object>[];

/** The reading a problem is about, when it is about one. */
export function readingKeyOf(state: PageState, where: string): number | null {
  const place = /^rider\.readings\[(\d+)\]/.exec(where);
  if (!place) return null;
  return sentReadings(state.rider)[Number(place[1])]?.key ?? null;
}
