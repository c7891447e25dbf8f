// Windows of a list, cut from answers about the whole of it.
import { isRefusal } from "./wire-answers";
import type { BikeFacts, ListAnswer } from "./wire-answers";
import type { ListedEntry, ListRowsAnswer, ListWindow } from "./wire-lists";
import type { EngineRequest } from "./wire-requests";
import type { Asked } from "./worker-messages";

type Ask = (request: Asked, file?: Uint8Array, onProgress?: (done: number, total: number) => void) => object;

export function withRows(ask: Ask): Ask {
  const one = (
    request: EngineRequest,
    file?: Uint8Array,
    onProgress?: (done: number, total: number) => void,
  ): object => {
    if (request.do === "load" || request.do === "list") {
      const { rows, show = "all" } = request;
      if (rows === undefined) return ask(request, file, onProgress);
      if (request.do === "load") {
        const loaded = ask({ do: "load" }, file, onProgress);
        if (isRefusal(loaded)) return loaded;
      }
      return windowOf(ask({ do: "list" }) as ListAnswer, { rows, show });
    }
    if (request.do === "entry") {
      const { bikes } = ask({ do: "list" }) as ListAnswer;
      const bike = bikes.find((bike) => "id" in request && bike.id === request.id);
      const unknown = { code: "unknown_bike", where: "", problem: "", expected: "", figures: {} };
      return bike === undefined ? { error: unknown } : { bike };
    }
    if (request.do === "assess") {
      const answer = ask(request, file);
      if (isRefusal(answer) || !("bikes" in answer)) return answer;
      for (const { standing } of (
        answer as { bikes: { standing: { beaten_by?: string; beaten_by_name?: string } | null }[] }
      ).bikes) {
        if (standing?.beaten_by === undefined) continue;
        names ??= new Map((ask({ do: "list" }) as ListAnswer).bikes.map((bike) => [bike.id, bike.name]));
        standing.beaten_by_name = names.get(standing.beaten_by) ?? standing.beaten_by;
      }
      return answer;
    }
    return ask(request, file);
  };
  let names: Map<string, string> | null = null;
  return (request, file, onProgress) => {
    if (!Array.isArray(request) && request.do === "load") names = null;
    return Array.isArray(request) ? request.map((each) => one(each)) : one(request, file, onProgress);
  };
}

function entryOf(bike: BikeFacts, number: number): ListedEntry {
  return { ...bike, number, problem: null, slips: [] };
}

function counted<Value>(values: (Value | null)[]): Map<Value, number> {
  const counts = new Map<Value, number>();
  for (const value of values) if (value !== null) counts.set(value, (counts.get(value) ?? 0) + 1);
  return counts;
}

function windowOf(whole: ListAnswer, { rows, show = "all" }: ListWindow): ListRowsAnswer {
  const { bikes, set_aside, notes, list } = whole;
  const usable = bikes.map((bike, place) => entryOf(bike, place + 1));
  const aside = set_aside.map((entry): ListedEntry => ({
    number: entry.number,
    id: entry.id,
    name: entry.name,
    kind: null,
    wheel: null,
    saddle_lowest_mm: null,
    saddle_highest_mm: null,
    price: null,
    currency: null,
    mass_kg: null,
    problem: entry,
    slips: [],
  }));
  const shown =
    show === "bikes" ? usable : show === "set_aside" ? aside : show === "slips" ? [] : [...usable, ...aside];
  const ends = bikes
    .flatMap((bike) => [bike.saddle_lowest_mm, bike.saddle_highest_mm])
    .filter((end) => end !== null);
  const end = (of: (a: number, b: number) => number): number | null =>
    ends.length === 0 ? null : ends.reduce((a, b) => of(a, b));
  return {
    list: list && { ...list, entries: bikes.length + set_aside.length, form: "json" },
    counts: {
      entries: bikes.length + set_aside.length,
      bikes: bikes.length,
      set_aside: set_aside.length,
      slips: 0,
      shown: shown.length,
    },
    offers: {
      wheels: [...counted(bikes.map((bike) => bike.wheel?.nominal_in ?? null))].map(
        ([nominal_in, count]) => ({ nominal_in, count }),
      ),
      colours: [...counted(bikes.flatMap((bike) => bike.colours))].map(([colour, count]) => ({
        colour,
        count,
      })),
    },
    heights_mm: { lowest: end(Math.min), highest: end(Math.max) },
    notes,
    entries: shown.slice(rows.from, rows.from + rows.count),
    slip_kinds: [],
  };
}
