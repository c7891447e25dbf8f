// One bike: where the saddle goes, the bike from the side, how long it lasts, and what else is known.
import { bikeIn, closeUp, factsIn } from "../../engine/close-up";
import type { BikesTold } from "../../engine/close-up";
import { rackQuestion } from "../../engine/rack-question";
import type { BikeFacts, JudgedBike, JudgedRider } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { isGuess } from "../../drawings/shown-window";
import { Cautions } from "../../parts/cautions";
import { ForWhom } from "../../parts/for-whom";
import { InTurn } from "../../parts/in-turn";
import { ListRefused } from "../../parts/list-refused";
import { InventedMark } from "../../parts/invented-mark";
import { Notes } from "../../parts/notes";
import { ScreenHead } from "../../parts/screen-head";
import { TagNumber } from "../../parts/tag-number";
import { ShareText } from "../../parts/share-text";
import { VerdictHead } from "../../parts/verdict-head";
import { ToRider, missingWords } from "../../parts/what-is-missing";
import { Choosing } from "../rack/choosing";
import { beatenBy } from "../rack/rack-bikes";
import { answerTo } from "../../state/answers";
import type { Told } from "../../state/answers";
import type { PageState } from "../../state/page-state";
import type { Tag } from "../../state/suits";
import { bikePicked, mostPicked } from "../../state/picking";
import { shareOfPercent } from "../../state/request-building";
import { wantsCleared, went } from "../../state/screen-changes";
import { cautionWords, costWords, lastingWords, rangeWords, settingWords } from "../rack/verdict-words";
import { BackToRack } from "./back-to-rack";
import { BikeChecks } from "./bike-checks";
import { BikeFactsTable } from "./bike-facts";
import { BikeGrowth } from "./bike-growth";
import { BikeDrawing } from "./bike-drawing";
import { cardText, cardWords, stateWords } from "./card-words";
import { upperFirst } from "../../texts/upper-first";

export function OneBike({ state, id }: { state: PageState; id: string }) {
  const { texts } = usePage();
  const { list } = state;
  const tag = state.tag?.id === id ? state.tag : null;
  const told = answerTo(state, closeUp);
  if (tag?.awaited === true || (tag !== null && list.loaded === null))
    return <TagAlone state={state} tag={tag} />;
  const facts = factsIn(told.answer, id);
  // Until the engine has told all about it, what the rack knows of it is shown.
  const judged =
    told.answer === null
      ? (answerTo(state, rackQuestion).answer?.bikes.find((bike) => bike.id === id) ?? null)
      : bikeIn(told.answer, id);
  const name =
    judged?.name ??
    facts?.name ??
    (told.pending ? texts.whatIf.busy : tag === null ? texts.bike.gone : texts.suits.noBike({ id }));
  return (
    <>
      <BackToRack />
      <ScreenHead title={name}>
        {judged !== null && <TagNumber bike={judged} />}
        <InventedMark state={state} taped={judged?.taped === true} />
      </ScreenHead>
      <div class="inset stack">
        {judged === null ? (
          <Unjudged state={state} told={told} facts={facts} />
        ) : (
          <Judged state={state} judged={judged} told={told.answer} fresh={told.fresh} facts={facts} />
        )}
        {judged === null && told.answer !== null && <Cautions />}
      </div>
    </>
  );
}

/** The mark of a bike, before there is a list to look it up in. */
function TagAlone({ state: { list }, tag: { id, awaited } }: { state: PageState; tag: Tag }) {
  const { texts, change } = usePage();
  return (
    <>
      <ScreenHead title={texts.suits.bike({ id })}>{awaited && <p>{texts.whatIf.busy}</p>}</ScreenHead>
      {!awaited && (
        <div class="inset stack">
          <ListRefused list={list} />
          <p>{texts.club.noBikes}</p>
          <button type="button" class="button wide" onClick={() => change(went({ name: "list" }))}>
            {texts.list.title}
          </button>
        </div>
      )}
    </>
  );
}

interface JudgedProps {
  state: PageState;
  judged: JudgedBike;
  /** null: the engine has not told all about it. */
  told: BikesTold | null;
  /** Whether it is the answer to what is asked now. */
  fresh: boolean;
  facts: BikeFacts | null;
}

function Judged({ state, judged, told, fresh, facts }: JudgedProps) {
  const { texts, figures } = usePage();
  const caution = cautionWords(texts, figures, judged);
  const lasting = lastingWords(texts, figures, judged);
  const rider = told?.assessed?.rider ?? answerTo(state, rackQuestion).answer?.rider ?? null;
  const guess = rider !== null && isGuess(rider);
  return (
    <>
      <section class={`sheet stack told verdict-sheet ${judged.verdict}`}>
        <p>
          <VerdictHead bike={judged} guess={guess} large />
        </p>
        {stateWords(texts, figures, judged.checks ?? [], "stop").map((warning) => (
          <p key={warning} class="warning-why">
            {warning}
          </p>
        ))}
        <ForWhom rider={rider} />
        {caution !== null && <p>{caution}</p>}
        <Setting judged={judged} />
        <Notes notes={judged.notes ?? []} />
        {lasting !== null && <p>{lasting}</p>}
        <Choosing bike={judged} beatenBy={beatenBy(judged)} />
      </section>
      <OnFromBike state={state} judged={judged} rider={fresh ? rider : null} />
      {/* From above downwards: nothing that somebody looks at is moved on by what comes later. */}
      {told !== null && (
        <div class="told stack">
          <InTurn key={judged.id}>
            {[
              told.sideView !== null && (
                <BikeDrawing view={told.sideView} checks={judged.checks ?? []} guess={guess} />
              ),
              <BikeChecks checks={judged.checks ?? []} weighed={state.rider.massKg.trim() !== ""} />,
              <BikeGrowth judged={judged} rider={rider} forecast={told.forecast} />,
              <Costs judged={judged} resalePercent={state.wants.resalePercent} />,
              facts !== null && <BikeFactsTable facts={facts} />,
              <Cautions />,
            ]}
          </InTurn>
        </div>
      )}
    </>
  );
}

interface OnFromBikeProps {
  state: PageState;
  judged: JudgedBike;
  /** For whom it was judged; null while that is asked anew: what is sent outlives every mark. */
  rider: JudgedRider | null;
}

/** The card for the fridge, other bikes beside this one, and the card as a message. */
function OnFromBike({ state: { picked, today }, judged, rider }: OnFromBikeProps) {
  const { texts, figures, change } = usePage();
  const { id } = judged;
  const isPicked = picked.includes(id);
  return (
    <div class="buttons on-from-bike">
      <button type="button" class="button" onClick={() => change(went({ name: "card", id }))}>
        {texts.card.open}
      </button>
      {(isPicked || picked.length < mostPicked) && (
        <button
          type="button"
          class="button"
          aria-pressed={isPicked}
          onClick={() => change(bikePicked(id, !isPicked))}
        >
          {isPicked ? texts.beside.unpickThis : texts.beside.pickThis}
        </button>
      )}
      {rider !== null && (
        <ShareText
          title={texts.card.title}
          text={cardText(texts, cardWords(texts, figures, judged, rider, { rider: null, today }))}
        />
      )}
    </div>
  );
}

/** How far the cost a month may differ, and what it rests on; or why there is no figure. */
function Costs({ judged, resalePercent }: { judged: JudgedBike; resalePercent: string }) {
  const { texts, figures } = usePage();
  const costing = costWords(texts, figures, judged);
  const share = judged.cost_per_month === null ? null : shareOfPercent(resalePercent);
  if (costing.length === 0) return null;
  return (
    <section class="sheet stack">
      <h3>{texts.beside.cost}</h3>
      <p>{costing.join(" ")}</p>
      {share !== null && <p class="soft">{texts.bike.resale({ share: figures.share(share) })}</p>}
    </section>
  );
}

/** What would be shown as no height at all says nothing; the sentence above has it in words. */
const nothing = 0.5;

/** The setting as three heights, for three ways of measuring it; in words where one of them is nothing, or unknown. */
function Setting({ judged }: { judged: JudgedBike }) {
  const { texts, figures } = usePage();
  const rows: [number | null, string][] = [
    [judged.saddle_mm, texts.bike.aboveFloor],
    [judged.above_lowest_mm, texts.bike.aboveLowest],
    [judged.below_highest_mm, texts.bike.belowHighest],
  ];
  if (judged.saddle_mm === null || judged.verdict === "too_tall" || judged.verdict === "outgrown")
    return null;
  if (judged.saddle_likely_mm !== undefined) {
    return (
      <dl class="settings guess">
        <div>
          <dt>{texts.guess.aboveFloor}</dt>
          <dd class="figure">{rangeWords(texts, figures, judged.saddle_likely_mm)}</dd>
        </div>
      </dl>
    );
  }
  const told = rows.flatMap(([height, words]) =>
    height === null || height < nothing ? [] : [{ words, height: figures.length(height) }],
  );
  return (
    <>
      <dl class="settings">
        {told.map(({ words, height }) => (
          <div key={words}>
            <dt>{words}</dt>
            <dd class="figure">{height}</dd>
          </div>
        ))}
      </dl>
      {told.length < rows.length && <p>{upperFirst(settingWords(texts, figures, judged)?.place ?? "")}.</p>}
    </>
  );
}

interface UnjudgedProps {
  state: PageState;
  told: Told<BikesTold>;
  facts: BikeFacts | null;
}

function Unjudged({ state, told: { answer, fresh, pending }, facts }: UnjudgedProps) {
  const { texts, change } = usePage();
  // It is in the list, and was judged with the others.
  const hidden = fresh && facts !== null && answer?.assessed != null;
  return (
    <>
      {pending && <p class="soft">{texts.whatIf.busy}</p>}
      {hidden ? (
        <section class="sheet stack">
          <p>{texts.bike.hidden}</p>
          <button type="button" class="button wide" onClick={() => change(wantsCleared())}>
            {texts.wishes.showAll}
          </button>
        </section>
      ) : (
        facts !== null &&
        !pending && (
          <section class="sheet stack">
            <p>{missingWords(texts, state.rider)}</p>
            <ToRider rider={state.rider} />
          </section>
        )
      )}
      {facts !== null && <BikeFactsTable facts={facts} />}
    </>
  );
}
