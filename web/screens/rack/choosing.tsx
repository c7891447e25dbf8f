// Choosing among bikes: what speaks for one that no other beats, and why another is not put forward.
import type { JudgedBike, NamedBike } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { byCode } from "../../texts/texts";

/** Why a bike is worth a look; or, in one sentence, why it is not put forward; and how much asks for a second look. */
export function Choosing({ bike, beatenBy }: { bike: JudgedBike; beatenBy: NamedBike | null }) {
  const { texts } = usePage();
  const { worthALook, worth, looks, notOffered } = texts.choosing;
  const { standing } = bike;
  const reasons = standing?.code === "unbeaten" ? standing.worth.map(({ code }) => worth[code]) : [];
  const tried = bike.verdict === "fits_now" || bike.verdict === "close_call";
  const doubt = tried && bike.looks > 0 ? looks({ number: bike.looks }) : null;
  const held =
    bike.not_offered === null
      ? undefined
      : byCode(notOffered, bike.not_offered.code, { better: beatenBy?.name ?? null });
  return (
    <>
      {reasons.length > 0 && (
        <p class="worth">
          <strong>{worthALook}</strong> {reasons.join(", ")}
        </p>
      )}
      {held !== undefined && <p class="soft">{held}</p>}
      {doubt !== null && (
        <p class="doubts">
          <span>{doubt}</span>
        </p>
      )}
    </>
  );
}
