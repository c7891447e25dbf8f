// What speaks for a bike beside the fit, and what asks for a second look, in a few words each.
import type { JudgedBike } from "../../engine/wire-answers";
import { usePage } from "../../page/page-context";

export function Worths({ bike }: { bike: JudgedBike }) {
  const { texts } = usePage();
  if (bike.verdict !== "fits_now" && bike.verdict !== "close_call") return null;
  const { worth, stops, looks } = texts.verdict;
  const good = (bike.standing?.worth ?? [])
    .map(({ code }) => worth[code])
    .filter((words) => words !== undefined);
  const doubts = [
    bike.stops > 0 ? stops(bike.stops) : null,
    bike.looks > 0 ? looks(bike.looks) : null,
  ].filter((words) => words !== null);
  if (good.length + doubts.length === 0) return null;
  return (
    <ul class="worths">
      {good.map((words) => (
        <li key={words} class="good">
          {words}
        </li>
      ))}
      {doubts.map((words) => (
        <li key={words}>{words}</li>
      ))}
    </ul>
  );
}
