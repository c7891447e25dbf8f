// The question about single bikes in full: all that one bike's page, its card, or bikes side by side are drawn from.
import type { PageState } from "../state/page-state";
import { detailRequest, forecastRequest, sideViewRequest } from "../state/request-building";
import type { Question } from "./questions";
import { isRefusal } from "./wire-answers";
import type { AssessAnswer, ForecastAnswer, SideViewAnswer } from "./wire-answers";
import type { EntryAnswer, EntryRequest } from "./wire-lists";
import type { EngineRequest } from "./wire-requests";

/** Months of forecast that the growth picture shows. */
export const monthsShown = 60;

function bikesShown({ screen, picked }: PageState): string[] {
  if (screen.name === "beside") return picked;
  return "id" in screen ? [screen.id] : [];
}

/** As one question, so that all of it is drawn at once. */
function requests(state: PageState, ids: string[]): EngineRequest[] {
  const { screen } = state;
  return [
    detailRequest(state, ids),
    ...ids.map((id): EntryRequest => ({ do: "entry", id })),
    ...(screen.name === "bike"
      ? [sideViewRequest(state, screen.id), forecastRequest(state, monthsShown)]
      : []),
  ];
}

export const closeUp: Question = {
  engine: "rack",
  pose: (state) => {
    const ids = bikesShown(state);
    return ids.length === 0 ? null : { request: requests(state, ids), edition: state.list.edition };
  },
  receive:
    (answer, { request }) =>
    (state) => {
      const asked = [request].flat();
      const answers: object[] = [answer].flat();
      /** A bike that is in no list, such as a taped one, has no entry, and one that nobody measured no side view. */
      const told = (what: EngineRequest["do"]): object[] =>
        answers.filter((one, place) => asked[place]?.do === what && !isRefusal(one));

      const [assessed] = told("assess") as AssessAnswer[];
      const bikes = assessed?.bikes ?? [];
      const facts = (told("entry") as EntryAnswer[]).flatMap(({ bike }) => bike ?? []);
      const list = { ...state.list, facts };
      const { screen } = state;
      if (screen.name === "beside") return { ...state, list, beside: bikes };
      if (!("id" in screen)) return state;
      const { id } = screen;
      const detail = assessed === undefined ? null : { id, judged: bikes[0] ?? null };
      if (screen.name === "card") return { ...state, list, bike: { ...state.bike, detail } };
      const [side] = told("side_view") as SideViewAnswer[];
      const sideView = side === undefined ? null : { id, answer: side };
      const [forecast = null] = told("forecast") as ForecastAnswer[];
      return { ...state, list, bike: { detail, sideView, forecast } };
    },
  afterPaint: true,
};
