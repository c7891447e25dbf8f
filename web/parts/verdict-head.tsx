// A verdict in large: on the saddle's height, and beside it, in letters of the same size, that a check says stop.
import type { JudgedBike } from "../engine/wire";
import { usePage } from "../page/page-context";
import { CheckSign } from "./check-sign";
import { VerdictSign } from "./verdict-sign";

interface VerdictHeadProps {
  bike: Pick<JudgedBike, "verdict" | "stops">;
  /** Nobody measured the leg. */
  guess: boolean;
  large?: boolean;
}

export function VerdictHead({ bike: { verdict, stops }, guess, large = false }: VerdictHeadProps) {
  const { texts } = usePage();
  const size = large ? " large" : "";
  return (
    <span class="verdict-head">
      <span class={`verdict${size}`}>
        <VerdictSign verdict={verdict} />
        {texts.rack.verdicts[verdict]}
        {guess && <span class="guess-mark">{texts.guess.mark}</span>}
      </span>
      {stops > 0 && (
        <span class={`verdict warning${size}`}>
          <CheckSign state="stop" />
          {texts.choosing.stops({ number: stops })}
        </span>
      )}
    </span>
  );
}
