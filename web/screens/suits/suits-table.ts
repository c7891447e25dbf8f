// The list turned round as a table for spreadsheets: a row a bike, lengths in millimetres, ages in years.
import type { Stage } from "../../engine/wire-answers";
import type { SuitsAnswer } from "../../engine/wire-suits";

export const everyStage: Stage[] = ["gliding", "side_wheels", "starting", "riding"];

/** With an apostrophe wherever a program that opens the table may see a formula begin. */
const guarded = (text: string): string => text.replace(/(^|[,;|\t\r\n])(?='*[=+\-@\t\r\n＝＋－＠])/g, "$1'");

/** Quoted as RFC 4180 has it. */
function cell(value: string | number | null | undefined): string {
  if (typeof value !== "string") return String(value ?? "");
  return `"${guarded(value).replaceAll('"', '""')}"`;
}

export function suitsTable({ bikes }: SuitsAnswer): string {
  const heads = ["id", "name", "wheel_in", "saddle_lowest_mm", "saddle_highest_mm"];
  for (const stage of everyStage)
    for (const what of ["from_mm", "to_mm", "age_from", "age_to"]) heads.push(`${stage}_${what}`);
  const rows = bikes.map(({ id, name, wheel_nominal_in: wheel, span_mm: span, stages }) => [
    id,
    name,
    wheel,
    span.lowest,
    span.highest,
    ...everyStage.flatMap((stage) => {
      const { inseam_mm: legs = [null, null], typical_years: years } = stages[stage] ?? {};
      return [...legs, ...(years ?? [null, null])];
    }),
  ]);
  // Spreadsheets take a table for UTF-8 only with a mark at its start.
  return `\ufeff${[heads.join(","), ...rows.map((row) => row.map(cell).join(","))].join("\r\n")}\r\n`;
}
