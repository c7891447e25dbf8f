// How long one bike lasts: the picture, the same in words, the days to raise the saddle, and what it all rests on.
import { GrowthPicture } from "../../drawings/growth-picture";
import { spanWords } from "../../drawings/span-bar";
import type { DateRange, ForecastAnswer, JudgedBike, Raise } from "../../engine/wire-answers";
import type { Figures } from "../../figures/format-figures";
import { usePage } from "../../page/page-context";
import { Fold } from "../../parts/fold";
import type { Texts } from "../../texts/texts";

interface BikeGrowthProps {
  judged: JudgedBike;
  forecast: ForecastAnswer | null;
}

export function BikeGrowth({ judged, forecast }: BikeGrowthProps) {
  const { texts, figures } = usePage();
  const sentences = growthSentences(texts, figures, judged, forecast);
  const drawn = [texts.growth.drawing, `${spanWords(texts, figures, judged.span_mm)}.`, ...sentences];
  return (
    <section class="sheet stack">
      <h3>{texts.growth.title}</h3>
      {forecast !== null && (
        <>
          <GrowthPicture forecast={forecast} bike={judged} label={drawn.join(" ")} />
          <ul class="drawing-key">
            <li class="key-rider">{texts.growth.keyNeed}</li>
            <li class="key-bike">{texts.growth.keyBike}</li>
          </ul>
        </>
      )}
      <ul class="stack">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <Raises raises={judged.raise ?? []} />
      {forecast !== null && (
        <Fold title={texts.growth.table}>
          <ForecastTable forecast={forecast} />
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

/** The picture's facts in sentences. */
export function growthSentences(
  texts: Texts,
  figures: Figures,
  { verdict, fits_from: from, outgrown, span_mm: span }: JudgedBike,
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

  if (span.highest === null) sentences.push(growth.highestUnknown);
  else if (outgrown !== null) sentences.push(dated(outgrown, growth.outgrown) ?? growth.notOutgrown);

  if (forecast?.less_certain_for_young_child === true) sentences.push(growth.lessCertain);
  const next = forecast?.stages[1];
  if (next !== undefined) sentences.push(growth.stageMoves({ month: figures.month(next.from) }));
  return sentences;
}

function rangeWords(texts: Texts, figures: Figures, { p10, p90 }: DateRange): string | null {
  if (p10 === null && p90 === null) return null;
  const [from, to] = [p10 && figures.month(p10), p90 && figures.month(p90)];
  return from === to ? texts.growth.withinMonth : texts.growth.somewhere({ from, to });
}

const raisesShown = 4;

function Raises({ raises }: { raises: Raise[] }) {
  const { texts } = usePage();
  if (raises.length === 0) return null;
  const later = raises.slice(raisesShown);
  return (
    <div class="stack">
      <h4>{texts.growth.raises}</h4>
      <RaiseLines raises={raises.slice(0, raisesShown)} />
      {later.length > 0 && (
        <Fold title={texts.growth.raiseMore({ number: later.length })}>
          <RaiseLines raises={later} />
        </Fold>
      )}
    </div>
  );
}

function RaiseLines({ raises }: { raises: Raise[] }) {
  const { texts, figures } = usePage();
  return (
    <ol class="raises figure">
      {raises.map(({ on, saddle_mm }) => (
        <li key={saddle_mm}>
          {texts.growth.raiseOn({ day: figures.day(on), height: figures.length(saddle_mm) })}
        </li>
      ))}
    </ol>
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
