// Tags for the bikes, on sheets to cut: the mark, the saddle's range on a piece of tape, whom the bike fits, and a code that opens
// the page at that bike, or carries it as a text.
import { scaleBetween } from "../../drawings/height-scale";
import { spanWords } from "../../drawings/span-bar";
import { matrixCode } from "../../drawings/matrix-code";
import { TapeStrip } from "../../drawings/tape-strip";
import type { SuitsBike } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import type { Texts } from "../../texts/texts";
import { paperRoom } from "./paper-size";
import type { Paper } from "./paper-size";
import { everyStage, legWords } from "./suits-rows";

/** In millimetres. */
export interface TagSize {
  width: number;
  height: number;
}

export const middleTag: TagSize = { width: 90, height: 60 };
export const tagSizes = [{ width: 60, height: 45 }, middleTag, { width: 95, height: 85 }];

/** As many to a sheet as there is room for. */
function tagSheets(bikes: SuitsBike[], paper: Paper, { width, height }: TagSize): SuitsBike[][] {
  const room = paperRoom[paper];
  const number = Math.floor(room.width / width) * Math.floor(room.height / height);
  const sheets: SuitsBike[][] = [];
  for (let from = 0; from < bikes.length; from += number) sheets.push(bikes.slice(from, from + number));
  return sheets;
}

interface BikeTagsProps {
  bikes: SuitsBike[];
  paper: Paper;
  size: TagSize;
  /** The list comes with the page's address, so that codes can lead there; else they carry the bike as a text. */
  addressed: boolean;
  /** One sheet to try the printer with. */
  trial: boolean;
}

export function BikeTags({ bikes, paper, size, addressed, trial }: BikeTagsProps) {
  const { texts } = usePage();
  const sheets = tagSheets(bikes, paper, size);
  const [first] = bikes;
  return (
    <>
      <div class="stack on-screen">
        <p>{texts.suits.tags({ number: bikes.length, sheets: sheets.length })}</p>
        <p>{addressed ? texts.suits.codes : texts.suits.codesAsText}</p>
        {first && <BikeTag bike={first} size={size} addressed={addressed} />}
      </div>
      {(trial ? sheets.slice(0, 1) : sheets).map((tags, number) => (
        <div key={number} class="tag-sheet paper-only">
          {trial && <CheckTag size={size} />}
          {(trial ? tags.slice(1) : tags).map((bike) => (
            <BikeTag key={bike.id} bike={bike} size={size} addressed={addressed} />
          ))}
        </div>
      ))}
    </>
  );
}

const checkLength = 50;

/** In the place of the first tag: a line that shows whether the printer scales. */
function CheckTag({ size: { width, height } }: { size: TagSize }) {
  const { texts } = usePage();
  return (
    <article
      class="bike-tag"
      style={{ "--wide": `${width}mm`, "--high": `${height}mm`, "--letters": "11pt" }}
    >
      <p>{texts.suits.check({ length: `${checkLength} mm` })}</p>
      <svg style={{ inlineSize: `${checkLength}mm` }} viewBox={`0 0 ${checkLength} 4`}>
        <path class="strip-check" d={`M0 2H${checkLength}M0.15 0v4M${checkLength - 0.15} 0v4`} />
      </svg>
      <p>{texts.suits.trialHow}</p>
    </article>
  );
}

/** One line that people read, and that the engine reads in every language of the page. */
function bikeAsText(
  texts: Texts,
  saddle: string,
  { id, wheel_nominal_in: nominal, stages }: SuitsBike,
): string {
  const wheel = nominal === null ? null : texts.rack.wheel({ nominal });
  const kind = stages.gliding && Object.keys(stages).length === 1 ? texts.tape.kinds.balance : null;
  return texts.suits.bikeAsText({ id, saddle, wheel, kind });
}

interface BikeTagProps {
  bike: SuitsBike;
  size: TagSize;
  addressed: boolean;
}

function BikeTag({ bike, size: { width, height }, addressed }: BikeTagProps) {
  const { texts, figures, tagAddresses } = usePage();
  const { id, name, span_mm: span, stages } = bike;
  const room = { "--wide": `${width}mm`, "--high": `${height}mm`, "--letters": `${height / 6.5}pt` };
  const saddle = spanWords(texts, figures, span);
  const address = addressed ? (tagAddresses?.(id) ?? null) : null;
  const code = matrixCode(address ?? bikeAsText(texts, saddle, bike));
  return (
    <article class="bike-tag" style={room}>
      <p class="tag-name">
        <strong>{id}</strong> {name !== id && name}
      </p>
      <p>{saddle}</p>
      {span.lowest !== null && span.highest !== null && (
        <TapeStrip scale={scaleBetween(span.lowest, span.highest)} window={null} label={saddle} />
      )}
      <div class="tag-foot">
        <dl>
          <dt>{texts.rider.inseam}</dt>
          {everyStage.map((stage) => {
            const legs = stages[stage];
            return (
              legs && (
                <dd key={stage}>
                  {texts.suits.ways[stage]} <b>{legWords(texts, figures, legs.inseam_mm)}</b>
                </dd>
              )
            );
          })}
        </dl>
        {code !== null && (
          <p class="tag-code">
            <svg
              viewBox={`-4 -4 ${code.size + 8} ${code.size + 8}`}
              style={{ inlineSize: `${height * 0.42}mm` }}
              aria-hidden="true"
            >
              <path d={code.path} />
            </svg>
            {address === null ? texts.suits.scanText : texts.suits.scan}
          </p>
        )}
      </div>
    </article>
  );
}
