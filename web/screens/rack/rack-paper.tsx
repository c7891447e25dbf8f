// The rack on paper: one table with a line for each bike, its head with the scale on every sheet.
import type { HeightScale } from "../../drawings/height-scale";
import { isGuess, shownWindow } from "../../drawings/shown-window";
import type { ShownWindow } from "../../drawings/shown-window";
import { spanWords, WindowBand } from "../../drawings/span-bar";
import type { BikeGroup, Stage } from "../../engine/wire";
import { tapeMarks } from "../../figures/lengths";
import { rackQuestion } from "../../engine/rack-question";
import { usePage } from "../../page/page-context";
import { riderName } from "../../parts/rider-switch";
import { TagNumber } from "../../parts/tag-number";
import { lastAnswer } from "../../state/answers";
import type { PageState } from "../../state/page-state";
import type { RackBike, RackBikes } from "./rack-bikes";
import { placesTold } from "./rack-printing";
import type { Places } from "./rack-printing";
import { BikeSpan } from "./bike-span";
import { askingWords } from "./choosing";
import { groupName, GroupWords } from "./group-head";
import { briefWords, settingFigure } from "./verdict-words";

interface PaperTableProps {
  bikes: RackBikes;
  /** Which of them are shown. */
  places: Places;
  /** Empty before there is a rider. */
  groups: BikeGroup[];
  stage: Stage | null;
  scale: HeightScale;
  window: ShownWindow | null;
}

export function PaperTable({ bikes, places, groups, stage, scale, window }: PaperTableProps) {
  const { texts } = usePage();
  let end = 0;
  const parts =
    groups.length === 0
      ? [{ ...places, group: null }]
      : groups.map((group) => {
          const first = Math.max(end, places.first);
          end += group.bikes;
          return { first, end: Math.min(end, places.end), group };
        });
  return (
    <table class="paper-table paper-only figure">
      <thead>
        <tr>
          <th scope="col">{texts.rack.title}</th>
          <th scope="col" class="on-scale">
            <ScaleFigures scale={scale} />
          </th>
          <th scope="col">{texts.beside.setting}</th>
          <th scope="col">{texts.beside.lasting}</th>
          <th scope="col">{texts.desk.fields.price}</th>
        </tr>
      </thead>
      {parts.map(({ first, end, group }) => (
        <tbody key={group && groupName(group)}>
          {group !== null && stage !== null && first < end && (
            <tr class="paper-group">
              <th colSpan={5} scope="rowgroup">
                <GroupWords group={group} stage={stage} />
              </th>
            </tr>
          )}
          {Array.from({ length: Math.max(0, end - first) }, (_, place) => {
            const bike = bikes.at(first + place);
            return bike && <PaperRow key={bike.id} bike={bike} scale={scale} window={window} />;
          })}
        </tbody>
      ))}
    </table>
  );
}

/** The numbered marks of the scale alone: a head that comes again on every sheet loses the drawings in it. */
function ScaleFigures({ scale }: { scale: HeightScale }) {
  const { figures } = usePage();
  const { low, high } = scale;
  return (
    <div class="lane">
      {tapeMarks(low, high, figures.unit, 7).map(
        ({ mm, figure }) =>
          figure !== null &&
          scale.percent(mm) < 90 && (
            <span key={mm} class="paper-mark" style={{ left: `${scale.percent(mm)}%` }}>
              {figure}
            </span>
          ),
      )}
    </div>
  );
}

function PaperRow({
  bike,
  scale,
  window,
}: {
  bike: RackBike;
  scale: HeightScale;
  window: ShownWindow | null;
}) {
  const { texts, figures } = usePage();
  const { judged } = bike;
  const asking = judged === null ? [] : askingWords(texts, judged);
  return (
    <tr>
      <th scope="row">
        <TagNumber bike={bike} /> <span class="bike-name">{bike.name || bike.id}</span>
        {bike.wheelInches !== null && <small>{texts.rack.wheel({ nominal: bike.wheelInches })}</small>}
        {asking.length > 0 && <small>{asking.join(". ")}</small>}
      </th>
      <td class="on-scale">
        {window !== null && <WindowBand scale={scale} window={window} />}
        <BikeSpan bike={bike} scale={scale} window={window} />
      </td>
      <td>{judged === null ? spanWords(texts, figures, bike.span) : settingFigure(figures, judged)}</td>
      <td>{judged !== null && briefWords(texts, figures, judged).join(" ")}</td>
      <td>{bike.price !== null && figures.money(bike.price, bike.currency)}</td>
    </tr>
  );
}

/** For whom the bikes were judged, and which are on the paper. */
export function PaperHead({ state, bikes }: { state: PageState; bikes: RackBikes }) {
  const { texts, figures } = usePage();
  const { rider, waiting, today } = state;
  const named = waiting.length > 0 || rider.name.trim() !== "";
  const { answer } = lastAnswer(state, rackQuestion);
  const judged = answer?.rider ?? null;
  const window = shownWindow(judged);
  const leg = judged === null || isGuess(judged) ? null : judged.inseam_mm.mean;
  const title = state.list.loaded?.list?.title ?? null;
  const hidden = answer?.left_out_counts.bikes ?? 0;
  const { first, end } = placesTold(bikes, state);
  const told = end - first;
  return (
    <div class="paper-only">
      <p>
        {named && `${riderName(texts, rider)}. `}
        {title !== null && `${title}. `}
        {texts.card.madeOn({ day: figures.day(today) })}.{" "}
        {leg !== null && `${texts.rider.inseam}${texts.colon}${figures.length(leg)}. `}
        {window !== null &&
          `${texts.window.title}${texts.colon}${texts.window.range({
            low: figures.bareLength(window.low),
            high: figures.length(window.high),
          })}.`}
      </p>
      {hidden > 0 && <p>{texts.wishes.hidden({ number: hidden })}.</p>}
      {told < bikes.length && <p>{texts.rack.paperPart({ told, all: bikes.length })}</p>}
    </div>
  );
}
