// One bike on the rack: seen as a span first, then told in words.
import type { HeightScale } from "../../drawings/height-scale";
import { SpanBar } from "../../drawings/span-bar";
import { usePage } from "../../page/page-context";
import { unlessSame } from "../../parts/unless-same";
import { VerdictHead } from "../../parts/verdict-head";
import { bikePicked } from "../../state/picking";
import { went } from "../../state/screen-changes";
import { Choosing } from "./choosing";
import { beatenBy } from "./rack-bikes";
import type { RackBike } from "./rack-bikes";
import { VerdictLine } from "./verdict-line";
import { lastingWords } from "./verdict-words";

interface RackRowProps {
  bike: RackBike;
  picked: boolean;
  /** Another one may be picked. */
  pickable: boolean;
  scale: HeightScale;
  /** Nobody measured the leg. */
  guess: boolean;
}

export const RackRow = unlessSame(function RackRow({ bike, picked, pickable, scale, guess }: RackRowProps) {
  const { texts, figures, change } = usePage();
  const { judged } = bike;
  const lasting = judged === null ? null : lastingWords(texts, figures, judged);
  const price = bike.price === null ? null : figures.money(bike.price, bike.currency);
  return (
    <article class="row">
      <p class="row-head">
        {judged !== null && <VerdictHead bike={judged} guess={guess} />}
        <span class="row-facts figure">
          {bike.taped && <span>{texts.rack.taped}</span>}
          {bike.wheelInches !== null && <span>{texts.rack.wheel({ nominal: bike.wheelInches })}</span>}
          {price !== null && <span>{price}</span>}
        </span>
      </p>
      <div class="row-title">
        <h3>
          <button
            type="button"
            class="row-name"
            data-bike={bike.id}
            onClick={() => change(went({ name: "bike", id: bike.id }))}
          >
            {bike.name}
          </button>
        </h3>
        {judged !== null && (
          <label class="row-pick">
            <input
              type="checkbox"
              aria-label={texts.beside.pick({ bike: bike.name })}
              checked={picked}
              disabled={!picked && !pickable}
              onChange={(event) => change(bikePicked(bike.id, event.currentTarget.checked))}
            />
          </label>
        )}
      </div>
      <SpanBar
        scale={scale}
        span={bike.span}
        verdict={judged?.verdict ?? null}
        saddle={guess ? null : (judged?.saddle_mm ?? null)}
      />
      {judged !== null && <VerdictLine bike={judged} />}
      {lasting !== null && <p class="soft">{lasting}</p>}
      {judged !== null && <Choosing bike={judged} beatenBy={beatenBy(judged)} />}
    </article>
  );
});

/** Where a bike will stand that the engine is still being asked about. */
export function RowRoom() {
  return <div class="row row-room" aria-hidden="true" />;
}
