// The questions that the page keeps answered: what each asks for a given state, and what its answer changes.
import {
  assessRequest,
  changesRequest,
  draftId,
  draftRequest,
  sentReadings,
} from "../state/request-building";
import type { PageState } from "../state/page-state";
import type { Change } from "../state/store";
import { isRefusal } from "./wire-answers";
import type { AssessAnswer, ChangesAnswer, JudgedBike, Note, Refusal } from "./wire-answers";
import { closeUp } from "./close-up";
import { clubQuestions } from "./club-questions";
import { deskQuestions } from "./desk-questions";
import { hanging } from "./list-questions";
import type { AssessRequest, EngineRequest } from "./wire-requests";

/** A question, and beside it what else its answer depends on. */
export interface Posed {
  request: EngineRequest | EngineRequest[];
  edition?: number;
  /** The first place of a window of rows. */
  from?: number;
  rider?: number;
}

export interface Question {
  /** `rack` holds the list; `bench` holds none and judges a bike by itself. */
  engine: "rack" | "bench";
  /** null: the state calls for no answer. */
  pose: (state: PageState) => Posed | null;
  receive: (answer: object, posed: Posed) => Change<PageState>;
  /** Asked once the screen that wants to know stands there with what is known already. */
  afterPaint?: true;
  /** Too long to work out at every keystroke: asked once the state has stood for so many milliseconds. */
  settles?: { after: number; meanwhile: Change<PageState> };
}

/** True where too little of the rider is known yet, which is no mistake of anybody's. */
function nothingKnown({ error: { code, where } }: Refusal): boolean {
  return code === "rider_without_measure" || (code === "request_field_missing" && where === "rider.stage");
}

/** Bikes that were told of already stay the same objects, so that their rows are not drawn again. */
function withKept(answer: AssessAnswer, before: JudgedBike[]): AssessAnswer {
  const kept = new Map(before.map((bike) => [bike.id, bike]));
  return { ...answer, bikes: answer.bikes.map((bike) => kept.get(bike.id) ?? bike) };
}

export const rackQuestion = {
  engine: "rack",
  pose: (state: PageState): Posed => ({
    request: assessRequest(state),
    edition: state.list.edition,
    rider: state.rider.key,
    from: state.rows.from,
  }),
  receive:
    (answer: object, { request, edition, from = 0, rider: about = 0 }: Posed): Change<PageState> =>
    (state) => {
      if (!isRefusal(answer)) {
        const question = JSON.stringify([{ ...(request as AssessRequest), rows: null }, edition]);
        const before = question === state.judged.question ? (state.judged.answer?.bikes ?? []) : [];
        const told = withKept(answer as AssessAnswer, before);
        return { ...state, judged: { answer: told, question, about, from, refusal: null } };
      }
      // While a figure is half typed the last verdicts stay, marked as such.
      const { judged } = state;
      const kept = nothingKnown(answer) || about !== judged.about ? null : judged.answer;
      return { ...state, judged: { ...judged, answer: kept, about, refusal: answer.error } };
    },
} satisfies Question;

const draft: Question = {
  engine: "bench",
  pose: (state) => {
    const request = state.screen.name === "tape" ? draftRequest(state) : null;
    return request && { request };
  },
  receive: (answer) => (state) => {
    if (draftRequest(state) === null) return state;
    const { judged, problems } = draftVerdict(answer);
    return { ...state, tape: { ...state.tape, judged, problems } };
  },
};

function draftVerdict(answer: object): Pick<PageState["tape"], "judged" | "problems"> {
  if (isRefusal(answer)) {
    const about: Note[] = answer.error.where.startsWith("rider") ? [] : [answer.error];
    return { judged: null, problems: about };
  }
  const { bikes, set_aside } = answer as AssessAnswer;
  const judged = bikes.find((bike) => bike.id === draftId) ?? null;
  const ofDraft = set_aside.filter(({ where }) => where.startsWith("taped["));
  return { judged, problems: [...ofDraft, ...(judged?.notes ?? [])] };
}

const changes: Question = {
  engine: "rack",
  pose: (state) =>
    state.whatIf.open && state.screen.name === "rack" && state.judged.answer !== null
      ? { request: changesRequest(state), edition: state.list.edition }
      : null,
  receive: (answer) => (state) => ({
    ...state,
    whatIf: { ...state.whatIf, answer: isRefusal(answer) ? null : (answer as ChangesAnswer) },
  }),
  settles: {
    after: 600,
    meanwhile: (state) =>
      state.whatIf.answer === null ? state : { ...state, whatIf: { ...state.whatIf, answer: null } },
  },
};

export const questions: Question[] = [rackQuestion, hanging, ...deskQuestions, draft, closeUp, changes, ...clubQuestions];

/** The reading a problem is about, when it is about one. */
export function readingKeyOf(state: PageState, where: string): number | null {
  const place = /^rider\.readings\[(\d+)\]/.exec(where);
  if (!place) return null;
  return sentReadings(state.rider)[Number(place[1])]?.key ?? null;
}
