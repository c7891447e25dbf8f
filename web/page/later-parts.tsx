// What a reader of the first verdict has not met yet: every screen but the rider and the rack, and the work behind those screens. In
// the page file and on a site it is in the one script; the element has it in a script of its own, which comes afterwards.
import type { ComponentType, JSX } from "preact";
import { clubQuestions } from "../engine/club-questions";
import { checkQuestion, deskQuestions } from "../engine/desk-questions";
import { listWork } from "../engine/list-desk-work";
import { unpackedBytes } from "../engine/spreadsheet";
import { yearsQuestion, yearsQuestions } from "../engine/years-questions";
import { familyKeeper } from "../keeping/family-keeper";
import { listsAtHand } from "../keeping/lists-at-hand";
import { ListRefused } from "../parts/list-refused";
import { SideBySide } from "../screens/beside/side-by-side";
import { BikeCard } from "../screens/bike/bike-card";
import { OneBike } from "../screens/bike/one-bike";
import { ClubDay } from "../screens/club/club-day";
import { KeepScreen } from "../screens/keep/keep-screen";
import { KeepingTroubleLine } from "../screens/keep/keeping-trouble";
import { OverviewShape } from "../screens/rack/overview-shape";
import { PaperHead, PaperTable } from "../screens/rack/rack-paper";
import { WhatChanges } from "../screens/rack/what-changes";
import { WishFields } from "../screens/rack/wish-fields";
import { EarlierReadings } from "../screens/rider/earlier-readings";
import { RiderMore } from "../screens/rider/rider-more";
import { Suits } from "../screens/suits/suits";
import { TapeOne } from "../screens/tape-one";
import { TheList } from "../screens/the-list";
import { YearsAhead } from "../screens/years/years-ahead";
import { answerTo } from "../state/answers";
import type { Question, Told } from "../state/answers";
import { planQuestion } from "../state/club-steps";
import type { PageState } from "../state/page-state";
import { suitsQuestion, suitsTableQuestion } from "../state/suits";
import type { SpokenWords } from "./spoken-words";

function LaterScreen({ state }: { state: PageState }): JSX.Element | null {
  const { screen } = state;
  switch (screen.name) {
    case "rider":
    case "rack":
      return null;
    case "bike":
      return <OneBike state={state} id={screen.id} />;
    case "card":
      return <BikeCard state={state} id={screen.id} />;
    case "beside":
      return <SideBySide state={state} />;
    case "tape":
      return <TapeOne state={state} />;
    case "list":
      return <TheList state={state} />;
    case "club":
      return <ClubDay state={state} />;
    case "years":
      return <YearsAhead state={state} />;
    case "suits":
      return <Suits state={state} />;
    case "keep":
      return <KeepScreen state={state} />;
  }
}

/** The answers that these screens are drawn from. */
function toldOn(state: PageState): Partial<Record<PageState["screen"]["name"], Told<object>[]>> {
  return {
    list: [answerTo(state, checkQuestion)],
    club: [answerTo(state, planQuestion)],
    years: [answerTo(state, yearsQuestion)],
    suits: [answerTo(state, suitsQuestion)],
  };
}

export const laterParts = {
  LaterScreen,
  ListRefused,
  WishFields,
  WhatChanges,
  OverviewShape,
  PaperHead,
  PaperTable,
  RiderMore,
  EarlierReadings,
  KeepingTroubleLine,
  toldOn,
  questions: [
    ...deskQuestions,
    ...clubQuestions,
    ...yearsQuestions,
    suitsQuestion,
    suitsTableQuestion,
  ] as Question<object>[],
  listWork,
  familyKeeper,
  listsAtHand,
  unpackedBytes,
};

export type LaterParts = typeof laterParts;

/** On a screen of its own, inside something folded away, or on a sheet. */
export interface WaitingProps {
  place: "screen" | "inside" | "sheet";
}

export interface Later {
  /** null: they are not here yet. */
  parts: LaterParts | null;
  /** They were asked for, and did not come. */
  lost: boolean;
  /** Asks for them, where they are neither here nor on their way. */
  fetch: () => void;
  /** Shown in their place. */
  Waiting: ComponentType<WaitingProps>;
}

export interface LaterLoading {
  now: () => Later;
  /** Asks for them as well; rejects where they do not come. */
  whenHere: () => Promise<LaterParts>;
  /** Asks for nothing, and never rejects. */
  firstHere: Promise<LaterParts>;
}

/**
 * How they come.
 * @param arrived called before anybody is told that they are here; with the style of what is in them, where that came with them
 * @param changed called whenever they came, or did not
 */
export type LaterSource = (
  words: SpokenWords,
  arrived: (parts: LaterParts, sheet?: string) => void,
  changed: () => void,
) => LaterLoading;
