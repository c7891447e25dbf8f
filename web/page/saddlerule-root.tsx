// The frame of the page: its head, the screens and the way between them.
import { useRef } from "preact/hooks";
import { Mark, ScreenSign } from "../drawings/signs";
import { LanguageChoice } from "../parts/language-choice";
import { RiderSwitch } from "../parts/rider-switch";
import { CountsAloud } from "../screens/rack/rack-head";
import { OneBike } from "../screens/bike/one-bike";
import { TapeOne } from "../screens/tape-one";
import { TheList } from "../screens/the-list";
import { TheRack } from "../screens/rack/the-rack";
import { TheRider } from "../screens/rider/the-rider";
import type { PageState, Screen } from "../state/page-state";
import { went } from "../state/screen-changes";
import { useArrival, useFocusKept } from "./focus";
import { KeptScreen } from "./kept-screen";
import { usePage } from "./page-context";
import { useWide } from "./wide";

type Tab = "rider" | "rack" | "tape" | "list";

const tabs: Tab[] = ["rider", "rack", "tape", "list"];

/** The tab a screen stands under. */
const tabOf: Partial<Record<Screen["name"], Tab>> = {
  rider: "rider",
  rack: "rack",
  bike: "rack",
  card: "rack",
  beside: "rack",
  tape: "tape",
  list: "list",
};

export function SaddleruleRoot({ state }: { state: PageState }) {
  const { texts, language } = usePage();
  const { screen } = state;
  const place = useRef<HTMLDivElement>(null);
  useArrival(place, screen, state.list.edition);
  useFocusKept(place);
  const wide = useWide(place);
  /** On a wide page the rider stands on the left, and the rack beside it. */
  const shows = (name: Screen["name"]): string =>
    `screen ${name}${screen.name === name ? " current" : ""}` +
    (screen.name === "rider" && name === "rack" ? " beside-rider" : "");
  return (
    <div ref={place} class={screen.name === "rider" ? "frame at-rider" : "frame"} lang={language}>
      <header class={state.waiting.length > 0 ? "head several" : "head"}>
        <Mark />
        <h1>{texts.name}</h1>
        <RiderSwitch state={state} />
        <LanguageChoice language={state.language} />
      </header>
      <Navigation screen={screen} />
      <div class={state.judged.about === state.rider.key ? "screens" : "screens stale"}>
        <section class={shows("rider")}>
          <KeptScreen
            seen={screen.name === "rider" || wide}
            from={[
              state.today,
              state.unit,
              state.rider,
              state.waiting,
              state.removed,
              state.judged,
              screen.name === "rider" && screen.at,
            ]}
          >
            {() => <TheRider state={state} />}
          </KeptScreen>
        </section>
        {rackStands(screen) && (
          <section class={shows("rack")}>
            <KeptScreen
              seen={screen.name === "rack" || (screen.name === "rider" && wide)}
              from={[state.unit, state.judged, state.list, state.wants, state.whatIf]}
            >
              {() => <TheRack state={state} />}
            </KeptScreen>
          </section>
        )}
        {screen.name === "bike" && (
          <section class={shows("bike")}>
            <OneBike state={state} id={screen.id} />
          </section>
        )}
        {screen.name === "tape" && (
          <section class={shows("tape")}>
            <TapeOne state={state} />
          </section>
        )}
        {screen.name === "list" && (
          <section class={shows("list")}>
            <TheList state={state} />
          </section>
        )}
      </div>
      <CountsAloud state={state} />
    </div>
  );
}

/** Beside the rider it is seen on a wide page; behind one bike it waits, as it was left. */
function rackStands({ name }: Screen): boolean {
  return name === "rack" || name === "rider" || name === "bike";
}

function Navigation({ screen }: { screen: Screen }) {
  const { texts, change } = usePage();
  const current = tabOf[screen.name];
  return (
    <nav class="navigation" aria-label={texts.navigation.label}>
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
