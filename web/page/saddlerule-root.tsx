// The frame of the page: its head, the screens and the way between them.
import type { JSX } from "preact";
import { useRef } from "preact/hooks";
import { closeUp } from "../engine/close-up";
import { hanging } from "../engine/list-questions";
import { draftQuestion } from "../engine/questions";
import { rackQuestion } from "../engine/rack-question";
import { Mark, ScreenSign } from "../drawings/signs";
import { LanguageChoice } from "../parts/language-choice";
import { OpeningAloud, OpeningStrip } from "../parts/opening-strip";
import { Overdue } from "../parts/overdue";
import { RiderSwitch } from "../parts/rider-switch";
import { CountsAloud } from "../screens/rack/rack-head";
import { TheRack } from "../screens/rack/the-rack";
import { TheRider } from "../screens/rider/the-rider";
import { answerTo } from "../state/answers";
import type { Told } from "../state/answers";
import type { PageState, Screen } from "../state/page-state";
import { went } from "../state/screen-changes";
import { useArrival, useFocusKept } from "./focus";
import { KeptScreen } from "./kept-screen";
import { LaterScreen } from "./later-screen";
import type { LaterParts } from "./later-parts";
import { usePage } from "./page-context";
import { useReadyMoney } from "./ready-figures";
import { useWide } from "./wide";

type Tab = "rider" | "rack" | "tape" | "list" | "keep";

const tabs: Tab[] = ["rider", "rack", "tape", "list", "keep"];

/** The tab a screen is under. */
const tabOf: Partial<Record<Screen["name"], Tab>> = {
  rider: "rider",
  rack: "rack",
  bike: "rack",
  card: "rack",
  beside: "rack",
  tape: "tape",
  list: "list",
  club: "list",
  years: "rack",
  suits: "list",
  keep: "keep",
};

export function SaddleruleRoot({ state }: { state: PageState }) {
  const { texts, language, site, later } = usePage();
  const { screen } = state;
  const place = useRef<HTMLDivElement>(null);
  useArrival(place, screen, state.list.edition, state.desk);
  useFocusKept(place);
  useReadyMoney(state.list.loaded?.list?.currency ?? null);
  const wide = useWide(place);
  const picking = screen.name === "rack" || screen.name === "bike" || (screen.name === "rider" && wide);
  const picks = picking && state.picked.length > 0 ? <PickBar number={state.picked.length} /> : null;
  const told = toldOn(state, later.parts);
  /** On a wide page the rider is on the left, and the rack beside it. */
  const shows = (name: Screen["name"]): string =>
    `screen ${name}${screen.name === name ? " current" : ""}` +
    (screen.name === "rider" && name === "rack" ? " beside-rider" : "") +
    marksOf(told[name] ?? []);
  return (
    <div ref={place} class={screen.name === "rider" ? "frame at-rider" : "frame"} lang={language}>
      <header class={state.waiting.length > 0 ? "head several" : "head"}>
        <Mark />
        <h1>{texts.name}</h1>
        <RiderSwitch state={state} />
        <LanguageChoice language={state.language} />
      </header>
      <div class="foot">
        {site && <site.strip />}
        <OpeningStrip opening={state.opening} />
        <Navigation screen={screen} picks={wide ? null : picks} />
      </div>
      {screen.name !== "keep" && later.parts && <later.parts.KeepingTroubleLine keeping={state.keeping} />}
      <div class="screens">
        <Overdue pending={(told[screen.name] ?? []).some(({ pending }) => pending)} />
        <section class={shows("rider")}>
          <KeptScreen seen={screen.name === "rider" || wide} state={state}>
            {(state) => <TheRider state={state} />}
          </KeptScreen>
        </section>
        {rackStands(screen) && (
          <section class={shows("rack")}>
            <KeptScreen seen={screen.name === "rack" || (screen.name === "rider" && wide)} state={state}>
              {(state) => <TheRack state={state} />}
            </KeptScreen>
          </section>
        )}
        {screen.name !== "rider" && screen.name !== "rack" && (
          <section key={screen.name} class={shows(screen.name)}>
            <LaterScreen state={state} />
          </section>
        )}
      </div>
      {wide && picks}
      <CountsAloud state={state} />
      <OpeningAloud opening={state.opening} />
    </div>
  );
}

/** The answers that each screen is drawn from. */
function toldOn(state: PageState, later: LaterParts | null): Partial<Record<Screen["name"], Told<object>[]>> {
  const judged = answerTo(state, rackQuestion);
  // Before there is a rider, the rack shows the list as it is.
  const rack = judged.answer === null ? [judged, answerTo(state, hanging)] : [judged];
  const bikes = answerTo(state, closeUp);
  const one = bikes.answer === null ? { ...judged, pending: bikes.pending } : bikes;
  return {
    rider: [judged],
    rack,
    bike: [one],
    card: [bikes],
    beside: [bikes],
    tape: [judged, answerTo(state, draftQuestion)],
    ...later?.toldOn(state),
  };
}

/** What is drawn from them is drawn as it is: old, about another rider and not to be seen, or still being asked about. */
function marksOf(told: Told<object>[]): string {
  const old = told.some(({ answer, fresh }) => answer !== null && !fresh);
  const others = told.some(({ ours }) => !ours);
  const pending = told.some(({ pending }) => pending);
  return `${old ? " stale" : ""}${others ? " others" : ""}${pending ? " asking" : ""}`;
}

/** Beside the rider it is seen on a wide page; behind one bike it waits, as it was left. */
function rackStands({ name }: Screen): boolean {
  return ["rack", "rider", "bike", "card", "beside"].includes(name);
}

function Navigation({ screen, picks }: { screen: Screen; picks: JSX.Element | null }) {
  const { texts, change } = usePage();
  const current = tabOf[screen.name];
  return (
    <nav class="navigation" aria-label={texts.navigation.label}>
      {picks}
      {tabs.map((tab) => (
        <button
          key={tab}
          type="button"
          class={`to-${tab}${current === "rider" && tab === "rack" ? " beside-rider" : ""}`}
          {...(current === tab ? { "aria-current": "page" as const } : {})}
          onClick={() => change(went({ name: tab }))}
        >
          <ScreenSign screen={tab} />
          {texts.navigation[tab]}
        </button>
      ))}
    </nav>
  );
}

/** How many bikes are picked to be seen side by side, and the way to them. */
function PickBar({ number }: { number: number }) {
  const { texts, change } = usePage();
  return (
    <div class="pick-bar">
      <p role="status">
        {texts.beside.picked({ number })} {number === 1 && texts.beside.pickMore}
      </p>
      {number > 1 && (
        <button type="button" class="pick-open" onClick={() => change(went({ name: "beside" }))}>
          {texts.beside.open}
        </button>
      )}
    </div>
  );
}
