// What is told about bikes side by side: a row for each fact, and whether it differs.
import type { BikeFacts, Check, CheckState, JudgedBike, Verdict } from "../../engine/wire";
import type { Figures } from "../../figures/format-figures";
import { byCode } from "../../texts/texts";
import type { Texts } from "../../texts/texts";
import { factRows } from "../bike/bike-facts";
import { cautionWords, lastingWords, settingWords } from "../rack/verdict-words";

export interface Cell {
  /** null: not known. */
  text: string | null;
  verdict?: Verdict;
  /** "1 warning", as large as the verdict. */
  stops?: string;
  check?: CheckState;
}

export interface FactRow {
  name: string;
  cells: Cell[];
}

export interface BikeBeside {
  judged: JudgedBike;
  /** null: it is in no list. */
  facts: BikeFacts | null;
}

export function besideRows(texts: Texts, figures: Figures, bikes: BikeBeside[]): FactRow[] {
  const { beside } = texts;
  const row = (name: string, cellOf: (bike: BikeBeside) => Cell): FactRow => ({
    name,
    cells: bikes.map(cellOf),
  });
  const told = (name: string, say: (bike: JudgedBike) => string | null): FactRow =>
    row(name, ({ judged }) => ({ text: say(judged) }));
  const facts = bikes.map((bike) => factRows(texts, figures, factsOf(bike)));
  const checks = bikes.flatMap(({ judged }) => judged.checks ?? []);
  return [
    row(beside.verdict, ({ judged: { verdict, stops } }) => ({
      text: texts.rack.verdicts[verdict],
      verdict,
      ...(stops > 0 && { stops: texts.choosing.stops({ number: stops }) }),
    })),
    told(
      beside.setting,
      (bike) => settingWords(texts, figures, bike)?.height ?? cautionWords(texts, figures, bike),
    ),
    told(beside.lasting, (bike) => lastingWords(texts, figures, bike, { cost: false })),
    told(beside.cost, ({ cost_per_month: cost, currency }) =>
      cost === null ? null : figures.money(cost, currency),
    ),
    ...(facts[0] ?? []).map(([name], place) => ({
      name,
      cells: facts.map((rows) => ({ text: rows[place]?.[1] ?? null })),
    })),
    ...[...new Set(checks.map(({ what }) => what))].map((what) =>
      row(texts.beside.check({ name: byCode(texts.checks.names, what) ?? what }), ({ judged }) =>
        checkCell(texts, judged.checks, what),
      ),
    ),
  ].filter(({ cells }) => cells.some(({ text }) => text !== null));
}

function checkCell(texts: Texts, checks: Check[] = [], what: string): Cell {
  const state = checks.find((check) => check.what === what)?.state ?? "unknown";
  return state === "unknown" ? { text: null } : { text: texts.checks.states[state], check: state };
}

/** A taped bike has the facts that were taped. */
function factsOf({ judged, facts }: BikeBeside): Partial<BikeFacts> {
  const { span_mm, price, currency, mass_kg } = judged;
  return (
    facts ?? {
      saddle_lowest_mm: span_mm.lowest,
      saddle_highest_mm: span_mm.highest,
      price,
      currency,
      mass_kg,
    }
  );
}

export function differs({ cells }: FactRow): boolean {
  const [first] = cells;
  return first !== undefined && cells.some(({ text, stops }) => text !== first.text || stops !== first.stops);
}
