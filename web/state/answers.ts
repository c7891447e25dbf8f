// Answers are kept under the question that they answer. Whoever draws one is told whether it still is the answer to what is
// asked now, or older, or about another rider.
import type { RowsRequest } from "../engine/narrowed";
import { isRefusal } from "../engine/refusal";
import type { RefusalNote } from "../engine/refusal";
import type { Asked } from "../engine/worker-messages";
import type { PageState } from "./page-state";
import type { Change } from "./store";

/** What is asked, and all else that its answer depends on. */
export interface Posed {
  request: Asked;
  /** The list it is asked about. */
  edition?: number;
  /** The rider it is asked about. */
  rider?: number;
  /** An older answer about something else, such as another bike, is no answer at all. */
  subject?: string;
  /** The places that are told about. Whichever these are, it is the same question. */
  rows?: RowsRequest;
}

export interface Question<Answer extends object> {
  /** Its answer is kept under this name. */
  name: string;
  /** `rack` holds the list; `bench` holds none and judges a bike by itself. */
  engine: "rack" | "bench";
  /** null: the state calls for no answer. */
  pose: (state: PageState) => Posed | null;
  /** What is kept of an answer, as it comes by itself where this is left out. `before` is the last answer to the same question. */
  read?: (answer: object, posed: Posed, before: Answer | null) => Answer;
  /** Where an answer goes that is not kept here. */
  receive?: (answer: Answer, posed: Posed) => Change<PageState>;
  /** Where a refusal goes then. */
  refused?: (why: RefusalNote) => Change<PageState>;
  /** Asked once the screen that wants to know is there with what is known already. */
  afterPaint?: true;
  /** Too long to work out at every keystroke: asked once the state has not changed for so many milliseconds. */
  settles?: number;
}

interface Kept<Answer> {
  told: { key: string; posed: Posed; answer: Answer } | null;
  /** Newer than what was told. */
  refused: { key: string; rider: number | undefined; why: RefusalNote } | null;
}

export type Answers = Partial<Record<string, Kept<object>>>;

export interface Told<Answer> {
  /** The last one about the same subject. null: none, or one that must not be shown for what was refused since. */
  answer: Answer | null;
  /** It is the answer to what is asked now. */
  fresh: boolean;
  /** It is about the rider in hand, or about none. */
  ours: boolean;
  /** The first place that is told about. */
  from: number;
  /** Why there is no newer one; about the rider in hand, but perhaps not about what was typed since. */
  refusal: RefusalNote | null;
  /** What is asked now was neither answered nor refused yet. */
  pending: boolean;
}

export function keyOf({ request, edition, rider }: Posed): string {
  return JSON.stringify([request, edition, rider]);
}

function keptOf<Answer extends object>(
  { answers }: Pick<PageState, "answers">,
  { name }: Question<Answer>,
): Kept<Answer> {
  return (answers[name] as Kept<Answer> | undefined) ?? { told: null, refused: null };
}

/** What is known of the answer to a question as it is asked now. */
export function answerTo<Answer extends object>(state: PageState, question: Question<Answer>): Told<Answer> {
  const posed = question.pose(state);
  const { told, refused } = keptOf(state, question);
  if (posed === null)
    return { answer: null, fresh: false, ours: true, from: 0, refusal: null, pending: false };
  const key = keyOf(posed);
  const shown = told?.posed.subject === posed.subject ? told : null;
  return {
    answer: shown?.answer ?? null,
    fresh: shown?.key === key,
    ours: shown === null || shown.posed.rider === posed.rider,
    from: shown?.posed.rows?.from ?? 0,
    refusal: refused !== null && refused.rider === posed.rider ? refused.why : null,
    pending: told?.key !== key && refused?.key !== key,
  };
}

/**
 * The last answer, whatever is asked now, for a screen that is drawn again only when an answer came: around it, somebody else
 * has to say whether it is fresh.
 */
export function lastAnswer<Answer extends object>(
  state: Pick<PageState, "answers">,
  question: Question<Answer>,
): Pick<Told<Answer>, "answer" | "from" | "refusal"> {
  const { told, refused } = keptOf(state, question);
  return {
    answer: told?.answer ?? null,
    from: told?.posed.rows?.from ?? 0,
    refusal: refused?.why ?? null,
  };
}

/** True where `posed` has its answer already, with the same places. */
export function isAnswered(state: PageState, question: Question<object>, posed: Posed): boolean {
  const { told, refused } = keptOf(state, question);
  const key = keyOf(posed);
  return (
    refused === null &&
    told?.key === key &&
    told.posed.rows?.from === posed.rows?.from &&
    told.posed.rows?.count === posed.rows?.count
  );
}

/** Too little of the rider is known yet, which is no mistake of anybody's, and no reason to show what was known before. */
function nothingKnown({ code, where }: RefusalNote): boolean {
  return code === "rider_without_measure" || (code === "request_field_missing" && where === "rider.stage");
}

/** `answer` has come. While a figure is half typed the last answer stays, for the same rider. */
export function answered<Answer extends object>(
  question: Question<Answer>,
  posed: Posed,
  answer: object,
): Change<PageState> {
  if (question.receive !== undefined) {
    if (!isRefusal(answer)) return question.receive(answer as Answer, posed);
    return question.refused?.(answer.error) ?? ((state) => state);
  }
  return (state) => {
    const { told } = keptOf(state, question);
    const key = keyOf(posed);
    const kept = (): Kept<Answer> => {
      if (isRefusal(answer)) {
        const stays = told?.posed.rider === posed.rider && !nothingKnown(answer.error);
        return { told: stays ? told : null, refused: { key, rider: posed.rider, why: answer.error } };
      }
      const before = told?.key === key ? told.answer : null;
      const read = question.read?.(answer, posed, before) ?? (answer as Answer);
      return { told: { key, posed, answer: read }, refused: null };
    };
    return { ...state, answers: { ...state.answers, [question.name]: kept() } };
  };
}
