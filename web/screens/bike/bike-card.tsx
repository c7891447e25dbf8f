// The card for the fridge: where the saddle stands, when to raise it, what to look at; to print, or to send as text.
import { useState } from "preact/hooks";
import { BikesOnTape } from "../../drawings/bikes-on-tape";
import { Mark } from "../../drawings/signs";
import { bikeIn, closeUp } from "../../engine/close-up";
import { usePage } from "../../page/page-context";
import { Cautions } from "../../parts/cautions";
import { TextField, TickField } from "../../parts/fields";
import { InventedMark } from "../../parts/invented-mark";
import { riderName } from "../../parts/rider-switch";
import { ScreenHead } from "../../parts/screen-head";
import { ShareText } from "../../parts/share-text";
import { VerdictSign } from "../../parts/verdict-sign";
import { answerTo } from "../../state/answers";
import type { PageState } from "../../state/page-state";
import { riderSaid } from "../../state/rider-changes";
import { went } from "../../state/screen-changes";
import { BackToRack } from "./back-to-rack";
import { cardText, cardWords } from "./card-words";

export function BikeCard({ state, id }: { state: PageState; id: string }) {
  const { texts, figures, change } = usePage();
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
          <p role="status">{pending ? texts.whatIf.busy : texts.rack.noReading}</p>
        </ScreenHead>
      </>
    );
  }
  const words = cardWords(texts, figures, judged, { rider: named ? riderName(texts, rider) : null, today });
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
              longest={40}
              onType={(name) => change(riderSaid({ name }))}
            />
          )}
          <div class="buttons">
            <button type="button" class="button main" onClick={() => print()}>
              {texts.card.print}
            </button>
            <ShareText title={texts.card.title} text={cardText(texts, words)} />
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
          <p class="verdict">
            <VerdictSign verdict={judged.verdict} />
            {words.verdict}
          </p>
          {words.setting !== null && (
            <p>
              <strong class="card-setting figure">{words.setting.height}</strong> {words.setting.place}.
            </p>
          )}
          <BikesOnTape bikes={[judged]} window={answer?.assessed?.rider.window_mm ?? null} />
          {words.sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <CardLines title={texts.growth.raises} lines={words.raises} dates />
          <CardLines title={texts.card.doubts} lines={words.doubts} />
          <Cautions />
        </article>
      </div>
    </>
  );
}

function CardLines({ title, lines, dates = false }: { title: string; lines: string[]; dates?: boolean }) {
  if (lines.length === 0) return null;
  return (
    <section>
      <h4>{title}</h4>
      <ul class={dates ? "raises figure dates" : "raises figure"}>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
