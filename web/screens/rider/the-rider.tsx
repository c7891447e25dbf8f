// The rider: the inside leg, how the child rides, and what saddle height to look for.
import { ScreenHead } from "../../parts/screen-head";
import { lacksOnlyStage } from "../../parts/what-is-missing";
import { CardChoice, Switch } from "../../parts/choices";
import { Cautions } from "../../parts/cautions";
import { SampleChooser } from "../../parts/list-choosers";
import { worded } from "../../parts/notes";
import { Inside, ListRefused } from "../../page/later-screen";
import { Fold } from "../../parts/fold";
import { StageSketch } from "../../drawings/stage-sketch";
import { usePage } from "../../page/page-context";
import { riderAdded } from "../../state/family-changes";
import { went } from "../../state/screen-changes";
import { riderSaid } from "../../state/rider-changes";
import { lastAnswer } from "../../state/answers";
import type { PageState } from "../../state/page-state";
import { rackQuestion } from "../../engine/rack-question";
import type { RefusalNote } from "../../engine/refusal";
import type { Confidence, Stage } from "../../engine/wire";
import { TodaysReadings } from "./rider-readings";
import { RiderFamily } from "./rider-family";
import { MeasuringSteps } from "./measuring-steps";
import { WindowResult } from "./window-result";

const stages: Stage[] = ["gliding", "side_wheels", "starting", "riding"];
const confidences: Confidence[] = ["wary", "usual", "bold"];

/** There is no bike on the page yet. */
export function bikeless({ list, tape }: PageState): boolean {
  return list.loaded === null && tape.kept.length === 0;
}

export function TheRider({ state }: { state: PageState }) {
  const { texts, change } = usePage();
  const { rider } = state;
  const { answer, refusal } = lastAnswer(state, rackQuestion);
  return (
    <>
      <ScreenHead
        title={texts.rider.title}
        aside={
          <button type="button" class="plain-link" onClick={() => change(riderAdded())}>
            {texts.family.add}
          </button>
        }
      >
        <p>{texts.rider.lead}</p>
      </ScreenHead>
      <div class="inset stack">
        <RiderFamily state={state} />
        <TodaysReadings state={state} />

        <section class="stack">
          <CardChoice
            name="stage"
            legend={texts.rider.stage}
            chosen={rider.stage}
            onChoose={(stage) => change(riderSaid({ stage }))}
            options={stages.map((value) => ({
              value,
              label: (
                <>
                  <StageSketch stage={value} />
                  {texts.rider.stages[value].title}
                </>
              ),
            }))}
          />
          {rider.stage !== null ? (
            <p class="soft">{texts.rider.stages[rider.stage].more}</p>
          ) : (
            <p class={lacksOnlyStage(rider) ? "estimate" : "soft"} role="status">
              {texts.riding.choose}
            </p>
          )}
          {rider.stage === "side_wheels" && (
            <Switch
              name="confidence"
              legend={texts.rider.confidence}
              chosen={rider.confidence}
              onChoose={(confidence) => change(riderSaid({ confidence }))}
              options={confidences.map((value) => ({ value, label: texts.rider.confidences[value] }))}
            />
          )}
        </section>

        <EngineTrouble refusal={refusal} />
        {answer === null ? (
          <section class="sheet stack">
            <h3>{texts.measuring.title}</h3>
            <MeasuringSteps />
          </section>
        ) : (
          <WindowResult answer={answer} refusal={refusal} tag={state.tag} />
        )}

        <section class="sheet">
          <Fold title={texts.rider.more} more={`(${texts.optional})`} open={asksForMass(state)}>
            <Inside>{({ RiderMore }) => <RiderMore state={state} massAsked={asksForMass(state)} />}</Inside>
          </Fold>
        </section>
        <section class="sheet">
          <Fold title={texts.rider.earlier} more={`(${texts.optional})`}>
            <Inside>{({ EarlierReadings }) => <EarlierReadings state={state} />}</Inside>
          </Fold>
        </section>
        {answer !== null && (
          <section class="sheet">
            <Fold title={texts.measuring.title}>
              <MeasuringSteps />
            </Fold>
          </section>
        )}
        {bikeless(state) && (
          <div class="onward stack">
            <ListRefused list={state.list} />
            <SampleChooser onChosen={() => change(went({ name: "rack" }))} />
          </div>
        )}
        <div class="cautions-place">
          <Cautions />
        </div>
      </div>
    </>
  );
}

/** Somebody came here to type the weight. */
const asksForMass = ({ screen }: PageState): boolean => screen.name === "rider" && screen.at === "mass";

/** No figure of the reader's is at fault: the engine broke down, or a site's host did not give it. */
function EngineTrouble({ refusal }: { refusal: RefusalNote | null }) {
  const { texts, figures } = usePage();
  if (refusal?.code !== "internal") return null;
  return (
    <p class="problem at-once" role="alert">
      {worded(texts, figures, refusal)}
    </p>
  );
}
