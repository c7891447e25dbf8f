// Over the bikes of one verdict: it stays in sight while they are looked through.
import type { BikeGroup, Stage } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { VerdictSign } from "../../parts/verdict-sign";

export function GroupHead({ group: { verdict, suits_stage: suits, bikes }, stage }: GroupHeadProps) {
  const { texts } = usePage();
  const other = stage === "gliding" ? "pedal" : "balance";
  return (
    <h3 class="group-head">
      <VerdictSign verdict={verdict} />
      <span>
        {texts.rack.verdicts[verdict]}
        {!suits && ` (${texts.wishes.kinds[other]})`}
      </span>{" "}
      <small>{texts.list.bikes({ number: bikes })}</small>
    </h3>
  );
}

interface GroupHeadProps {
  group: BikeGroup;
  /** How the rider rides: bikes that do not suit that are of the other kind. */
  stage: Stage;
}
