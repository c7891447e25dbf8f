// The question about single bikes in full: all that one bike's page, its card, or bikes side by side are drawn from.
import type { Question } from "../state/answers";
import type { PageState } from "../state/page-state";
import { detailRequest, forecastRequest, sideViewRequest } from "../state/request-building";
import { isRefusal } from "./refusal";
import type {
  AssessAnswer,
  BikeFacts,
  EngineRequest,
  EntryAnswer,
  EntryRequest,
  ForecastAnswer,
  JudgedBike,
  SideViewAnswer,
} from "./wire";

/** Months of forecast that the growth picture shows. */
export const monthsShown = 60;

export interface BikesTold {
  /** null: nothing could be judged. */
  assessed: AssessAnswer | null;
  /** What the list says of them; nothing of a bike that is in no list. */
  facts: BikeFacts[];
  /** null: for several bikes, or for one that nobody measured. */
  sideView: SideViewAnswer | null;
  forecast: ForecastAnswer | null;
}

function bikesShown({ screen, picked }: PageState): string[] {
  if (screen.name === "beside") return picked;
  return "id" in screen ? [screen.id] : [];
}

/** As one question, so that all of it is drawn at once. A card asks what the bike's page asked, which is answered already. */
function requests(state: PageState, ids: string[]): EngineRequest[] {
  const { screen } = state;
  return [
    detailRequest(state, ids),
    ...ids.map((id): EntryRequest => ({ do: "entry", id })),
    ...("id" in screen
      ? [sideViewRequest(state, screen.id), forecastRequest(state, screen.id, monthsShown)]
      : []),
  ];
}

export const closeUp: Question<BikesTold> = {
  name: "close-up",
  engine: "rack",
  pose: (state) => {
    const ids = bikesShown(state);
    if (ids.length === 0) return null;
    return {
      request: requests(state, ids),
      edition: state.list.edition,
      rider: state.rider.key,
      subject: "id" in state.screen ? state.screen.id : "",
    };
  },
  read: (answer, { request }) => {
    const asked = [request].flat();
    const answers: object[] = [answer].flat();
    const told = (what: EngineRequest["do"]): object[] =>
      answers.filter((one, place) => asked[place]?.do === what && !isRefusal(one));
    const [assessed = null] = told("assess") as AssessAnswer[];
    const [sideView = null] = told("side_view") as SideViewAnswer[];
    const [forecast = null] = told("forecast") as ForecastAnswer[];
    const facts = (told("entry") as EntryAnswer[]).flatMap(({ bike }) => bike ?? []);
    return { assessed, facts, sideView, forecast };
  },
  afterPaint: true,
};

/** One bike of an answer; null: it has none, or the wishes leave it out. */
export function bikeIn(told: BikesTold | null, id: string): JudgedBike | null {
  return told?.assessed?.bikes.find((bike) => bike.id === id) ?? null;
}

/** What the list says of one bike; null until the engine has told, and for a bike that is in no list. */
export function factsIn(told: BikesTold | null, id: string): BikeFacts | null {
  return told?.facts.find((bike) => bike.id === id) ?? null;
}
