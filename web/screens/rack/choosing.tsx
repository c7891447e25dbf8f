// Choosing among bikes: what speaks for one that no other beats, and why another is not put forward.
import type { JudgedBike, NamedBike } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { byCode } from "../../texts/texts";
import type { Texts } from "../../texts/texts";

/** How much asks for a second look before it is tried. */
function doubtWords(texts: Texts, { verdict, looks }: JudgedBike): string | null {
  const tried = verdict === "fits_now" || verdict === "close_call";
  return tried && looks > 0 ? texts.choosing.looks({ number: looks }) : null;
}

/** What must be known of a bike before it is tried, in few words. */
export function askingWords(texts: Texts, bike: JudgedBike): string[] {
  return [
    bike.stops > 0 ? texts.choosing.stops({ number: bike.stops }) : null,
    doubtWords(texts, bike),
    bike.not_offered?.code === "not_available" ? texts.choosing.notOffered.not_available : null,
  ].filter((words) => words !== null);
}

/** Why a bike is worth a look; or, in one sentence, why it is not put forward; and how much asks for a second look. */
export function Choosing({ bike, beatenBy }: { bike: JudgedBike; beatenBy: NamedBike | null }) {
  const { texts } = usePage();
  const { worthALook, worth, notOffered } = texts.choosing;
  const { standing } = bike;
  const reasons = standing?.code === "unbeaten" ? standing.worth.map(({ code }) => worth[code]) : [];
  const doubt = doubtWords(texts, bike);
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
