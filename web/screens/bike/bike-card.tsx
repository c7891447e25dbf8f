// The card for the fridge: how high the saddle is, when to move it, what to look at; to print, or to send as text.
import { useState } from "preact/hooks";
import { BikesOnTape } from "../../drawings/bikes-on-tape";
import { Mark } from "../../drawings/signs";
import { bikeIn, closeUp } from "../../engine/close-up";
import { download } from "../../engine/list-saving";
import { usePage } from "../../page/page-context";
import { Cautions } from "../../parts/cautions";
import { TextField, TickField } from "../../parts/fields";
import { InventedMark } from "../../parts/invented-mark";
import { riderName } from "../../parts/rider-switch";
import { ScreenHead } from "../../parts/screen-head";
import { missingWords } from "../../parts/what-is-missing";
import { ShareText } from "../../parts/share-text";
import { answerTo } from "../../state/answers";
import { VerdictHead } from "../../parts/verdict-head";
import { longestName } from "../../state/limits";
import type { PageState } from "../../state/page-state";
import { riderSaid } from "../../state/rider-changes";
import { went } from "../../state/screen-changes";
import { BackToRack } from "./back-to-rack";
import { cardText, cardWords } from "./card-words";
import { MoveList } from "./move-list";
import { saddleCalendar } from "./saddle-calendar";

export function BikeCard({ state, id }: { state: PageState; id: string }) {
  const { texts, figures, change, print } = usePage();
  const [named, setNamed] = useState(false);
  const { rider, today } = state;
  const { answer, fresh, pending } = answerTo(state, closeUp);
  // A card is not even drawn in grey: on paper it outlives every mark.
  const judged = fresh ? bikeIn(answer, id) : null;
  if (judged === null) {
    return (
      <>
        <BackToRack />
        <ScreenHead title={texts.card.title}>
          <p role="status">{pending ? texts.whatIf.busy : missingWords(texts, rider)}</p>
        </ScreenHead>
      </>
    );
  }
  const judgedRider = answer?.assessed?.rider ?? null;
  const words = cardWords(texts, figures, judged, judgedRider, {
    rider: named ? riderName(texts, rider) : null,
    today,
  });
  return (
    <>
      <button type="button" class="plain-link back" onClick={() => change(went({ name: "bike", id }))}>
        <span aria-hidden="true">← </span>
        {judged.name}
      </button>
      <ScreenHead title={texts.card.open} />
      <div class="inset stack">
        <div class="card-wishes stack">
          <TickField label={texts.card.withName} ticked={named} onTick={setNamed} />
          {named && state.waiting.length === 0 && (
            <TextField
              id="card-name"
              label={texts.family.name}
              text={rider.name}
              kind="plain"
              longest={longestName}
              onType={(name) => change(riderSaid({ name }))}
            />
          )}
          <div class="buttons">
            <button type="button" class="button main" onClick={print}>
              {texts.card.print}
            </button>
            <ShareText title={texts.card.title} text={cardText(texts, words)} />
            {words.moves.length > 0 && (
              <button
                type="button"
                class="button"
                onClick={() => {
                  const of = { bike: judged, rider: rider.key, today };
                  download("saddle-dates.ics", saddleCalendar(texts, figures, of));
                }}
              >
                {texts.card.calendar}
              </button>
            )}
          </div>
        </div>
        <article class="sheet fridge-card stack" aria-label={texts.card.title}>
          <p class="title-row soft">
            <span class="card-mark">
              <Mark /> {texts.card.title}
            </span>
            {words.madeOn}
          </p>
          <InventedMark state={state} taped={judged.taped} />
          <h3>
            {words.rider !== null && `${words.rider}${texts.colon}`}
            {words.bike}
          </h3>
          <p>
            <VerdictHead bike={judged} guess={words.caveat !== null} large />
          </p>
          {words.warnings.map((warning) => (
            <p key={warning} class="warning-why">
              {warning}
            </p>
          ))}
          {words.forWhom !== null && <p>{words.forWhom}</p>}
          {words.caveat !== null && (
            <p class="estimate">
              <strong>{words.caveat}</strong>
            </p>
          )}
          {words.setting !== null && (
            <p>
              <strong class={words.caveat === null ? "card-setting figure" : "figure"}>
                {words.setting.height}
              </strong>{" "}
              {words.setting.place !== null && `${words.setting.place}.`}
            </p>
          )}
          <BikesOnTape bikes={[judged]} rider={judgedRider} />
          {words.sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          {words.moves.length > 0 && (
            <section>
              <h4>{texts.growth.raises}</h4>
              <p class="soft">{texts.moves.again}</p>
              <MoveList moves={words.moves} columns />
            </section>
          )}
          <CardLines title={texts.card.doubts} lines={words.doubts} />
          <Cautions />
        </article>
      </div>
    </>
  );
}

function CardLines({ title, lines }: { title: string; lines: string[] }) {
  if (lines.length === 0) return null;
  return (
    <section>
      <h4>{title}</h4>
      <ul class="raises figure">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
