// The chart on paper, and as a file: a drawing by itself, which fits on one page and needs no style from outside.
import { scaleOver } from "../../drawings/height-scale";
import type { Stage, SuitsAnswer } from "../../engine/wire";
import { tapeMarks } from "../../figures/lengths";
import { usePage } from "../../page/page-context";
import { usualLegs } from "./suits-chart";
import {
  ageWords,
  bikeWords,
  drawnEnds,
  groupsOf,
  legWords,
  openEnd,
  wheelName,
  wheelWords,
} from "./suits-rows";
import type { SuitsRow } from "./suits-rows";

interface SuitsPaperProps {
  answer: SuitsAnswer;
  rows: SuitsRow[];
  stage: Stage;
  title: string | null;
}

const width = 760;
/** Where the lanes begin and end. */
const left = 240;
const right = 480;
const head = 74;
const rowHeight = 17;
const groupHeight = 40;

const shortened = (text: string, most: number): string =>
  text.length > most ? `${text.slice(0, most - 1)}…` : text;

export function SuitsPaper({ answer, rows, stage, title }: SuitsPaperProps) {
  const { texts, figures } = usePage();
  const scale = scaleOver(
    rows.flatMap(({ legs }) => drawnEnds(legs)),
    usualLegs,
  );
  const at = (mm: number): number => left + (scale.percent(mm) / 100) * (right - left);
  const groups = groupsOf(rows);
  const told = groups.map(({ wheel }) => wheelWords(texts, figures, answer, stage, wheel).join(" "));
  const heightOf = (words: string | undefined): number => (words === "" ? groupHeight - 15 : groupHeight);
  const bottom = head + rows.length * rowHeight + told.reduce((sum, words) => sum + heightOf(words), 0);
  let y = head;
  return (
    <svg
      class="suits-paper"
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${width} ${bottom + 30}`}
      font-family="sans-serif"
      font-size="11"
      fill="#1b2327"
    >
      <rect width={width} height={bottom + 30} fill="#ffffff" />
      <text y="18" font-size="16" font-weight="700">
        {[texts.suits.title, title].filter(Boolean).join(texts.colon)}
      </text>
      <text y="36">{texts.riding.for[stage]}</text>
      <text x={left} y={head - 22} font-weight="700">
        {texts.rider.inseam} ({texts.units[figures.unit]})
      </text>
      {tapeMarks(scale.low, scale.high, figures.unit, 12).map(
        ({ mm, figure }) =>
          figure !== null && (
            <g key={mm}>
              <path d={`M${at(mm)} ${head}V${bottom}`} stroke="#c5cac6" />
              <text x={at(mm)} y={head - 6} text-anchor="middle">
                {figure}
              </text>
            </g>
          ),
      )}
      {groups.map(({ wheel, rows }, place) => {
        const top = y;
        y += heightOf(told[place]);
        return (
          <g key={wheel}>
            <path d={`M0 ${top + 4}H${width}`} stroke="#6d787c" />
            <text y={top + 19} font-size="13" font-weight="700">
              {wheelName(texts, figures, wheel)}
            </text>
            <text y={top + 34} stroke="#ffffff" stroke-width="3" paint-order="stroke">
              {told[place]}
            </text>
            {rows.map(({ bike, legs }) => {
              const [from, to] = drawnEnds(legs).map(at) as [number, number];
              const line = y + 12;
              y += rowHeight;
              return (
                <g key={bike.id}>
                  <text y={line}>{shortened(bikeWords(bike), 38)}</text>
                  <rect
                    x={from}
                    y={line - 10}
                    width={Math.max(to - from, 2)}
                    height="12"
                    fill="#f5c52b"
                    stroke="#1b2327"
                    stroke-dasharray={openEnd(legs) === "" ? undefined : "3 2"}
                  />
                  <text x={right + 10} y={line}>
                    {[legWords(texts, figures, legs.inseam_mm), ageWords(texts, legs.typical_years)]
                      .filter(Boolean)
                      .join(", ")}
                  </text>
                </g>
              );
            })}
          </g>
        );
      })}
      <text y={bottom + 20}>{texts.suits.rough}</text>
    </svg>
  );
}
