// Printing the rack: every bike has to be told about first, and afterwards only those on screen again.
import type { PageState } from "./page-state";
import type { RowsRequest } from "../engine/narrowed";
import type { Change } from "./store";

export interface Printing {
  /** The page is to print by itself once every bike is there; otherwise the browser is printing already. */
  asked: boolean;
  /** What was told about before. */
  rows: RowsRequest;
}

const everyRow: RowsRequest = { from: 0, count: 1_000_000 };

export function printingBegun(asked: boolean): Change<PageState> {
  return (state) => {
    const { rows, printing, screen } = state;
    if (printing !== null || screen.name !== "rack") return state;
    return { ...state, printing: { asked, rows }, rows: asked ? everyRow : rows };
  };
}

export function printingOver(): Change<PageState> {
  return (state) => {
    const { printing } = state;
    return printing === null ? state : { ...state, printing: null, rows: printing.rows };
  };
}
