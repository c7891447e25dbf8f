// One bike of the rack: a line with what decides, or, where more is wanted, all that speaks for it and against it.
import type { HeightScale } from "../../drawings/height-scale";
import type { ShownWindow } from "../../drawings/shown-window";
import type { JudgedBike } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { TagNumber } from "../../parts/tag-number";
import { unlessSame } from "../../parts/unless-same";
import { VerdictHead } from "../../parts/verdict-head";
import { bikePicked } from "../../state/picking";
import { went } from "../../state/screen-changes";
import { BikeSpan } from "./bike-span";
import { Choosing } from "./choosing";
import { beatenBy } from "./rack-bikes";
import type { RackBike } from "./rack-bikes";
import { VerdictLine } from "./verdict-line";
import { briefSetting, briefWords, lastingWords } from "./verdict-words";

interface RackRowProps {
  bike: RackBike;
  picked: boolean;
  /** The family has it. */
  owned: boolean;
  /** Another one may be picked. */
  pickable: boolean;
  scale: HeightScale;
  window: ShownWindow | null;
  /** In sentences. */
  detail: boolean;
}

export const RackRow = unlessSame(function RackRow(props: RackRowProps) {
  const { bike, picked, owned, pickable, scale, window, detail } = props;
  const { texts, figures, change } = usePage();
  const { judged } = bike;
  const guess = window?.target === null;
  const price = bike.price === null ? null : figures.money(bike.price, bike.currency);
  // Under the heading of its group, where there are groups.
  const Heading = judged === null ? "h3" : "h4";
  return (
    <article class={detail ? "row in-detail" : "row"}>
      {(judged !== null || bike.taped || owned) && (
        <p class="row-head">
          {judged !== null && <VerdictHead bike={judged} guess={guess} />}
          {judged !== null && <TagNumber bike={bike} />}
          {bike.taped && <span>{texts.rack.taped}</span>}
          {owned && <span>{texts.years.standings.owned}</span>}
        </p>
      )}
      <div class="row-title">
        {judged === null && <TagNumber bike={bike} />}
        <Heading>
          <button
            type="button"
            class="row-name"
            data-bike={bike.id}
            onClick={() => change(went({ name: "bike", id: bike.id }))}
          >
            {bike.name || bike.id}
          </button>
        </Heading>
        <span class="row-facts figure">
          {(detail || judged === null) && bike.wheelInches !== null && (
            <span>{texts.rack.wheel({ nominal: bike.wheelInches })}</span>
          )}
          {price !== null && <strong>{price}</strong>}
        </span>
      </div>
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
      <BikeSpan bike={bike} scale={scale} window={window} />
      {judged !== null && (detail ? <RowDetail bike={judged} /> : <RowBrief bike={judged} />)}
    </article>
  );
});

function RowBrief({ bike }: { bike: JudgedBike }) {
  const { texts, figures } = usePage();
  const setting = briefSetting(texts, figures, bike);
  return (
    <p class="row-brief figure">
      {setting !== null && <strong>{setting}</strong>}
      {briefWords(texts, figures, bike).map((words) => (
        <span key={words}>{words}</span>
      ))}
    </p>
  );
}

function RowDetail({ bike }: { bike: JudgedBike }) {
  const { texts, figures } = usePage();
  const lasting = lastingWords(texts, figures, bike);
  return (
    <div class="row-detail">
      <VerdictLine bike={bike} />
      {lasting !== null && <p class="soft">{lasting}</p>}
      <Choosing bike={bike} beatenBy={beatenBy(bike)} />
    </div>
  );
}

/** Where a bike will be that the engine is still being asked about. */
export function RowRoom() {
  return <div class="row row-room" aria-hidden="true" />;
}
