// The chart on screen: inside leg across, bikes down, by wheel size.
import { inside, scaleOver } from "../../drawings/height-scale";
import { TapeStrip } from "../../drawings/tape-strip";
import type { Stage, SuitsAnswer } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { ageWords, drawnEnds, groupsOf, legWords, openEnd, wheelName, wheelWords } from "./suits-rows";
import type { SuitsRow } from "./suits-rows";

interface SuitsChartProps {
  answer: SuitsAnswer;
  rows: SuitsRow[];
  stage: Stage;
}

export const usualLegs = { low: 300, high: 900 };

export function SuitsChart({ answer, rows, stage }: SuitsChartProps) {
  const { texts, figures } = usePage();
  const scale = scaleOver(
    rows.flatMap(({ legs }) => drawnEnds(legs)),
    usualLegs,
  );
  const place = (mm: number): number => inside(scale.percent(mm));
  return (
    <>
      <TapeStrip scale={scale} window={null} label={texts.rider.inseam} />
      {groupsOf(rows).map(({ wheel, rows }) => (
        <section key={wheel}>
          <h3>{wheelName(texts, figures, wheel)}</h3>
          {wheelWords(texts, figures, answer, stage, wheel).map((words) => (
            <p key={words}>{words}</p>
          ))}
          <ul class="suits-rows">
            {rows.map(({ bike: { id, name }, legs }) => {
              const [from, to] = drawnEnds(legs).map(place) as [number, number];
              const words = [legWords(texts, figures, legs.inseam_mm), ageWords(texts, legs.typical_years)];
              return (
                <li key={id}>
                  <p>
                    <strong>{id}</strong> {name !== id && name}
                    <span class="soft">{words.filter(Boolean).join(", ")}</span>
                  </p>
                  <div class="lane">
                    <span
                      class={`span-bar unjudged ${openEnd(legs)}`}
                      style={{ left: `${from}%`, width: `${to - from}%` }}
                    />
                  </div>
                </li>
              );
            })}
          </ul>
        </section>
      ))}
    </>
  );
}
