// How long one bike lasts: the picture, the same in words, the steps of the saddle, and what it all rests on.
import { useState } from "preact/hooks";
import { CentileChart } from "../../drawings/centile-chart";
import { GrowthPicture } from "../../drawings/growth-picture";
import { monthsDrawn } from "../../drawings/growth-scale";
import { spanWords } from "../../drawings/span-bar";
import { isGuess } from "../../drawings/shown-window";
import type {
  Centiles,
  DateRange,
  ForecastAnswer,
  JudgedBike,
  JudgedRider,
  Population,
} from "../../engine/wire";
import type { Figures } from "../../figures/format-figures";
import { usePage } from "../../page/page-context";
import { Fold } from "../../parts/fold";
import { MonthSlider } from "../../parts/month-slider";
import type { Texts } from "../../texts/texts";
import { fitsAfter, pauseWords, rangeWords as rangeOf } from "../rack/verdict-words";
import { MoveList } from "./move-list";
import { countMoves, saddleMoves, someMoves } from "./saddle-moves";
import type { SaddleMoves } from "./saddle-moves";

interface BikeGrowthProps {
  judged: JudgedBike;
  /** For whom it was judged. */
  rider: JudgedRider | null;
  forecast: ForecastAnswer | null;
}

export function BikeGrowth({ judged, rider, forecast }: BikeGrowthProps) {
  const { texts, figures } = usePage();
  const sentences = growthSentences(texts, figures, judged, forecast);
  const drawn = [texts.growth.drawing, `${spanWords(texts, figures, judged.span_mm)}.`, ...sentences];
  return (
    <section class="sheet stack">
      <h3>{texts.growth.title}</h3>
      {forecast !== null && (
        <>
          <LookAhead judged={judged} forecast={forecast} label={drawn.join(" ")} />
          <ul class="drawing-key">
            <li class="key-rider">{texts.growth.keyNeed}</li>
            <li class="key-bike">{texts.growth.keyBike}</li>
            {judged.pauses.length > 0 && <li class="key-pause">{texts.pauses.key}</li>}
          </ul>
        </>
      )}
      <ul class="stack">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {rider !== null && isGuess(rider) && judged.saddle_mm !== null && <p>{texts.guess.moves}</p>}
      <Moves moves={saddleMoves(texts, figures, judged, rider)} />
      {forecast !== null && (
        <Fold title={texts.growth.table}>
          <ForecastTable forecast={forecast} />
        </Fold>
      )}
      {forecast?.centiles && (
        <Fold title={texts.growth.among.title}>
          <AmongChildren centiles={forecast.centiles} population={forecast.population} />
        </Fold>
      )}
      <Fold title={texts.growth.about}>
        {texts.growth.explanation.map((paragraph) => (
          <p key={paragraph}>{paragraph}</p>
        ))}
      </Fold>
    </section>
  );
}

interface AmongChildrenProps {
  centiles: Centiles;
  population: Population;
}

/** For those who like to look: the child's own readings among other children's legs. */
function AmongChildren({ centiles, population }: AmongChildrenProps) {
  const { texts, figures } = usePage();
  const { among } = texts.growth;
  return (
    <>
      <p>{texts.window.estimatedFrom[population]}</p>
      <CentileChart centiles={centiles} label={among.drawing} />
      <p class="soft">{among.key}</p>
      <ul class="stack">
        {centiles.readings.map(({ on, share_shorter: shorter }) => (
          <li key={on}>
            {among.says({
              day: figures.day(on),
              // Nobody is told that all children have shorter legs, or none.
              share: figures.share(Math.min(0.99, Math.max(0.01, shorter))),
            })}
          </li>
        ))}
      </ul>
      <p>{among.caution}</p>
    </>
  );
}

interface LookAheadProps {
  judged: JudgedBike;
  forecast: ForecastAnswer;
  label: string;
}

/** The picture with a line in it, which a finger or a key moves from month to month, and what holds in that month. */
function LookAhead({ judged, forecast, label }: LookAheadProps) {
  const { texts, figures } = usePage();
  const months = monthsDrawn(forecast, judged);
  const [chosen, look] = useState(0);
  const lookedAt = Math.min(chosen, months.length - 1);
  const { on, fits_probability: chance = null } = months[lookedAt] ?? forecast.today;
  // On the day a stage begins, the window of the new one.
  const window = forecast.windows.filter((ahead) => ahead.on === on).at(-1);
  const says =
    window === undefined
      ? ""
      : texts.growth.lookSays({
          month: lookedAt === 0 ? null : figures.month(on),
          range: rangeOf(texts, figures, { low: window.low.p50, high: window.high.p50 }),
          chance: chance === null ? null : figures.share(chance),
        });
  return (
    <>
      <GrowthPicture forecast={forecast} bike={judged} label={label} lookedAt={lookedAt} onLook={look} />
      <MonthSlider
        class="growth-look"
        label={texts.growth.look}
        months={lookedAt}
        most={months.length - 1}
        says={says}
        onLook={look}
      />
    </>
  );
}

/** The picture's facts in sentences. */
export function growthSentences(
  texts: Texts,
  figures: Figures,
  { verdict, fits_from: from, outgrown, span_mm: span, pauses }: JudgedBike,
  forecast: ForecastAnswer | null,
): string[] {
  const { growth } = texts;
  if (verdict === "outgrown") return [growth.alreadyOutgrown];
  const sentences: string[] = [];
  const dated = (
    dates: DateRange,
    say: (figures: { month: string; range: string | null }) => string,
  ): string | null =>
    dates.p50 === null
      ? null
      : say({ month: figures.month(dates.p50), range: rangeWords(texts, figures, dates) });

  if (verdict === "too_tall" && from !== null)
    sentences.push(dated(from, growth.fitsFrom) ?? growth.neverFits);
  else if (verdict === "fits_now") sentences.push(growth.fitsAlready);

  for (const pause of pauses) {
    sentences.push(pauseWords(texts, figures, pause));
    if (fitsAfter(pause, { outgrown })) sentences.push(texts.pauses.again({ until: null }));
  }

  if (span.highest === null) sentences.push(growth.highestUnknown);
  else if (outgrown !== null) sentences.push(dated(outgrown, growth.outgrown) ?? growth.notOutgrown);

  if (forecast?.less_certain_for_young_child === true) sentences.push(growth.lessCertain);
  const next = forecast?.stages[1];
  if (next !== undefined) {
    const says = next.stage === "starting" ? texts.moves.chartWheelsOff : growth.stageMoves;
    sentences.push(says({ month: figures.month(next.from) }));
  }
  return sentences;
}

function rangeWords(texts: Texts, figures: Figures, { p10, p90 }: DateRange): string | null {
  if (p10 === null && p90 === null) return null;
  const [from, to] = [p10 && figures.month(p10), p90 && figures.month(p90)];
  return from === to ? texts.growth.withinMonth : texts.growth.somewhere({ from, to });
}

const movesShown = 4;

function Moves({ moves }: { moves: SaddleMoves[] }) {
  const { texts } = usePage();
  if (moves.length === 0) return null;
  const more = countMoves(moves) - movesShown;
  return (
    <div class="stack">
      <h4>{texts.growth.raises}</h4>
      <p class="soft">{texts.moves.again}</p>
      <MoveList moves={someMoves(moves, 0, movesShown)} />
      {more > 0 && (
        <Fold title={texts.growth.raiseMore({ number: more })}>
          <MoveList moves={someMoves(moves, movesShown)} />
        </Fold>
      )}
    </div>
  );
}

const tableEvery = 6;

function ForecastTable({ forecast }: { forecast: ForecastAnswer }) {
  const { texts, figures } = usePage();
  const months = [forecast.today, ...forecast.months].filter((_, place) => place % tableEvery === 0);
  return (
    <table class="figure">
      <caption>{texts.growth.tableCaption({ unit: texts.units[figures.unit] })}</caption>
      <thead>
        <tr>
          <th scope="col">{texts.growth.tableWhen}</th>
          <th scope="col">{texts.growth.tableLow}</th>
          <th scope="col">{texts.growth.tableMiddle}</th>
          <th scope="col">{texts.growth.tableHigh}</th>
        </tr>
      </thead>
      <tbody>
        {months.map((month) => (
          <tr key={month.on}>
            <th scope="row">{figures.shortMonth(month.on)}</th>
            <td>{figures.bareLength(month.p10)}</td>
            <td>{figures.bareLength(month.p50)}</td>
            <td>{figures.bareLength(month.p90)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
