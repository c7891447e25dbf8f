// Tape one: a bike that is in no list, judged at once from two heights, and kept on the rack if it is worth it.
import { useState } from "preact/hooks";
import { BikesOnTape } from "../drawings/bikes-on-tape";
import { MeasuringGuide } from "../drawings/measuring-guide";
import { isGuess } from "../drawings/shown-window";
import { draftQuestion } from "../engine/questions";
import type { DraftTold } from "../engine/questions";
import { rackQuestion } from "../engine/rack-question";
import type { RefusalNote } from "../engine/refusal";
import type { BikeKind, SetAside } from "../engine/wire";
import { usePage } from "../page/page-context";
import { Cautions } from "../parts/cautions";
import { Switch } from "../parts/choices";
import { TextField } from "../parts/fields";
import { MassField } from "../parts/mass-field";
import { Fold } from "../parts/fold";
import { ForWhom } from "../parts/for-whom";
import { Notes, worded } from "../parts/notes";
import { ScreenHead } from "../parts/screen-head";
import { ShareText } from "../parts/share-text";
import { VerdictHead } from "../parts/verdict-head";
import { lacksOnlyStage } from "../parts/what-is-missing";
import { answerTo } from "../state/answers";
import type { Told } from "../state/answers";
import type { PageState, TapedBike } from "../state/page-state";
import { plainNumber } from "../state/request-building";
import { draftKept, draftTaped, keptBikeRemoved, messageGiven, went } from "../state/screen-changes";
import { stateWords } from "./bike/card-words";
import { DeskBar } from "./desk/desk-bar";
import { VerdictLine } from "./rack/verdict-line";
import { lastingWords } from "./rack/verdict-words";

type TextOfDraft = Exclude<keyof TapedBike, "kind" | "unit">;

export function TapeOne({ state }: { state: PageState }) {
  const { texts, change, work } = usePage();
  const { draft, kept } = state.tape;
  /** What is measured now, which the drawing shows. */
  const [inHand, take] = useState<"saddle_lowest" | "saddle_highest">("saddle_lowest");
  return (
    <>
      {state.desk.said?.done.taped !== undefined && <DeskBar desk={state.desk} />}
      <ScreenHead title={texts.tape.title}>
        <p>{texts.tape.lead}</p>
      </ScreenHead>
      <div class="inset stack">
        <Switch
          name="tape-unit"
          legend={texts.rider.unit}
          chosen={draft.unit}
          onChoose={(unit) => change(draftTaped({ unit }))}
          options={[
            { value: "cm", label: texts.units.cm },
            { value: "in", label: texts.units.in },
          ]}
        />
        <figure>
          <MeasuringGuide inHand={inHand} />
          <figcaption class="soft">{texts.measuringBike.how}</figcaption>
        </figure>
        <div
          class="pair"
          onFocusIn={({ target }) => {
            if (target instanceof Element)
              take(target.id === "tape-highest" ? "saddle_highest" : "saddle_lowest");
          }}
        >
          <DraftField state={state} field="lowest" wire="saddle_lowest" label={texts.tape.lowest} />
          <DraftField state={state} field="highest" wire="saddle_highest" label={texts.tape.highest} />
        </div>
        <p class="soft">{texts.desk.how[inHand]}</p>
        <div aria-live="polite">
          <DraftVerdict state={state} />
        </div>
        <section class="sheet">
          <Fold title={texts.tape.fromMessage}>
            <FromMessage state={state} />
          </Fold>
          <Fold title={texts.tape.more} more={`(${texts.optional})`}>
            <MoreOfDraft state={state} />
          </Fold>
        </section>
        {kept.length > 0 && (
          <section class="sheet stack">
            <h3>{texts.tape.kept}</h3>
            <ul>
              {kept.map(({ id, bike }) => (
                <li key={id} class="title-row">
                  <span>{bike.name}</span>
                  <button
                    type="button"
                    class="plain-link"
                    aria-label={`${texts.desk.toDesk}: ${bike.name}`}
                    onClick={() => void work.putTaped({ id, bike })}
                  >
                    {texts.desk.toDesk}
                  </button>
                  <button
                    type="button"
                    class="plain-link"
                    aria-label={texts.tape.removeKept({ name: bike.name })}
                    onClick={() => change(keptBikeRemoved(id))}
                  >
                    {texts.rider.remove}
                  </button>
                </li>
              ))}
            </ul>
            <button type="button" class="button wide" onClick={() => change(went({ name: "rack" }))}>
              {texts.window.toRack}
            </button>
          </section>
        )}
        <Cautions />
      </div>
    </>
  );
}

/** Fills the fields from what a seller wrote or a code carries, and asks the seller what to write. */
function FromMessage({ state }: { state: PageState }) {
  const { texts, figures, change } = usePage();
  const [text, setText] = useState("");
  const { messageTold: told } = state.tape;
  const words = texts.tape;
  return (
    <>
      <label class="field">
        <span class="label">{words.message}</span>
        <textarea rows={3} value={text} onInput={(event) => setText(event.currentTarget.value)} />
      </label>
      <button type="button" class="button wide" onClick={() => change(messageGiven(text))}>
        {words.readMessage}
      </button>
      <p role="status">
        {told !== "nothing" && (told === "read" ? words.messageRead : worded(texts, figures, told))}
      </p>
      <p>{words.askSeller}</p>
      <p class="soft">{words.sellerQuestion}</p>
      <ShareText title={words.title} text={words.sellerQuestion} />
    </>
  );
}

/** What is wrong with the draft itself: that nothing is known of the rider is none of its faults. */
function draftProblems({ answer, refusal }: Told<DraftTold>): (RefusalNote | SetAside)[] {
  if (refusal === null) return answer?.problems ?? [];
  return refusal.where.startsWith("rider") ? [] : [refusal];
}

interface DraftFieldProps {
  state: PageState;
  field: TextOfDraft;
  /** The field's name in a list, by which the engine speaks of it. */
  wire: string;
  label: string;
  whenEmpty?: string;
  kind?: "figure" | "plain";
}

function DraftField({ state, field, wire, label, kind = "figure", whenEmpty }: DraftFieldProps) {
  const { texts, figures, change } = usePage();
  const { draft } = state.tape;
  const said = draftProblems(answerTo(state, draftQuestion)).find(({ where }) => where.endsWith(wire));
  const notPlain = field === "price" && draft.price.trim() !== "" && plainNumber(draft.price) === null;
  const isLength = field === "lowest" || field === "highest" || field === "standover";
  return (
    <TextField
      id={`tape-${field}`}
      label={isLength ? `${label} (${texts.units[draft.unit]})` : label}
      text={draft[field]}
      kind={kind}
      {...(whenEmpty === undefined ? {} : { whenEmpty })}
      problem={notPlain ? texts.wishes.notANumber : said === undefined ? null : worded(texts, figures, said)}
      onType={(text) => change(draftTaped({ [field]: text }))}
    />
  );
}

function DraftMass({ state }: { state: PageState }) {
  const { texts, figures, change } = usePage();
  const { draft } = state.tape;
  const said = draftProblems(answerTo(state, draftQuestion)).find(({ where }) => where.endsWith("mass_kg"));
  return (
    <MassField
      id="tape-massKg"
      label={texts.tape.mass}
      text={draft.massKg}
      problem={said === undefined ? null : worded(texts, figures, said)}
      onType={(massKg) => change(draftTaped({ massKg }))}
    />
  );
}

function MoreOfDraft({ state }: { state: PageState }) {
  const { texts, change } = usePage();
  const kinds: BikeKind[] = ["pedal", "balance"];
  return (
    <>
      <DraftField
        state={state}
        field="name"
        wire="name"
        label={texts.tape.name}
        kind="plain"
        whenEmpty={texts.tape.nameExample}
      />
      <Switch
        name="tape-kind"
        legend={texts.tape.kind}
        chosen={state.tape.draft.kind}
        onChoose={(kind) => change(draftTaped({ kind }))}
        options={kinds.map((value) => ({ value, label: texts.tape.kinds[value] }))}
      />
      <div class="pair">
        <DraftField state={state} field="wheel" wire="wheel" label={texts.tape.wheel} />
        <DraftField state={state} field="standover" wire="standover" label={texts.tape.standover} />
        <DraftMass state={state} />
        <DraftField state={state} field="price" wire="price" label={texts.tape.price} />
      </div>
    </>
  );
}

function DraftVerdict({ state }: { state: PageState }) {
  const { texts, figures, change } = usePage();
  const { draft, nextNumber } = state.tape;
  const told = answerTo(state, draftQuestion);
  const problems = draftProblems(told);
  const judged = told.refusal === null ? (told.answer?.judged ?? null) : null;
  const rider = answerTo(state, rackQuestion).answer?.rider ?? null;
  if (judged === null) {
    const typed = draft.lowest.trim() !== "" || draft.highest.trim() !== "";
    const needed = lacksOnlyStage(state.rider) ? texts.riding.chooseFirst : texts.tape.needRider;
    const words = !typed ? texts.tape.waiting : rider === null ? needed : texts.tape.mend;
    return <p class="sheet soft">{words}</p>;
  }
  const lasting = lastingWords(texts, figures, judged);
  return (
    <section class="sheet stack told">
      <p>
        <VerdictHead bike={judged} guess={rider !== null && isGuess(rider)} large />
      </p>
      {stateWords(texts, figures, judged.checks ?? [], "stop").map((warning) => (
        <p key={warning} class="warning-why">
          {warning}
        </p>
      ))}
      <ForWhom rider={rider} />
      <BikesOnTape bikes={[judged]} rider={rider} />
      <VerdictLine bike={judged} />
      {lasting !== null && <p class="soft">{lasting}</p>}
      <Notes notes={problems} />
      <button
        type="button"
        class="button main wide"
        onClick={() =>
          change(
            draftKept(
              draft.name.trim() === "" ? texts.tape.unnamed({ number: nextNumber }) : draft.name.trim(),
            ),
          )
        }
      >
        {texts.tape.keep}
      </button>
    </section>
  );
}
