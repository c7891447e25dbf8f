// With every verdict: the way of riding it was given for, and, where the leg was guessed, that it is a guess.
import { isGuess } from "../drawings/shown-window";
import type { JudgedRider } from "../engine/wire";
import { usePage } from "../page/page-context";

export function ForWhom({ rider }: { rider: JudgedRider | null }) {
  const { texts } = usePage();
  if (rider === null) return null;
  return (
    <>
      <p class="for-whom">{texts.riding.for[rider.stage]}.</p>
      {isGuess(rider) && (
        <p class="estimate">
          <strong>{texts.guess.caveat}</strong>
        </p>
      )}
    </>
  );
}
