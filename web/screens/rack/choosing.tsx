// Choosing among bikes: what speaks for one that no other beats, and why another is not put forward.
import type { JudgedBike, NamedBike } from "../../engine/wire-answers";
import { usePage } from "../../page/page-context";

/** Why a bike is worth a look, in a few words each; or, in one sentence, why it is not put forward. */
export function Choosing({ bike, beatenBy }: { bike: JudgedBike; beatenBy: NamedBike | null }) {
  const { texts } = usePage();
  const { worthALook, worth, stops, looks, notOffered } = texts.choosing;
  const { standing } = bike;
  const good =
    bike.not_offered === null && standing?.code === "unbeaten"
      ? [worthALook, ...standing.worth.map(({ code, why }) => worth[code] ?? why)]
      : [];
  const tried = bike.verdict === "fits_now" || bike.verdict === "close_call";
  const doubts = [
    tried && bike.stops > 0 ? stops(bike.stops) : null,
    tried && bike.looks > 0 ? looks(bike.looks) : null,
  ].filter((words) => words !== null);
  const reason =
    bike.not_offered === null ? null : (notOffered[bike.not_offered.code]?.(beatenBy?.name ?? null) ?? null);
  return (
    <>
      {reason !== null && <p class="soft">{reason}</p>}
      {good.length + doubts.length > 0 && (
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
      )}
    </>
  );
}
