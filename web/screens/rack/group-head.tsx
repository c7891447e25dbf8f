// Over the bikes of one verdict: it stays in sight while they are looked through, and folds them away.
import type { BikeGroup, Stage } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { VerdictSign } from "../../parts/verdict-sign";
import { wanted } from "../../state/screen-changes";

interface GroupHeadProps {
  group: BikeGroup;
  /** How the rider rides: bikes that do not suit that are of the other kind. */
  stage: Stage;
  /** The names of all groups that are folded. */
  folded: string[];
}

export const groupName = ({ verdict, suits_stage: suits }: BikeGroup): string =>
  suits ? verdict : `${verdict} other`;

export function GroupHead({ group, stage, folded }: GroupHeadProps) {
  const { change } = usePage();
  const name = groupName(group);
  const open = !folded.includes(name);
  return (
    <h3>
      <button
        type="button"
        class="group-head"
        aria-expanded={open}
        onClick={() =>
          change(wanted({ folded: open ? [...folded, name] : folded.filter((one) => one !== name) }))
        }
      >
        <GroupWords group={group} stage={stage} />
      </button>
    </h3>
  );
}

export function GroupWords({ group, stage }: Omit<GroupHeadProps, "folded">) {
  const { texts } = usePage();
  const other = stage === "gliding" ? "pedal" : "balance";
  return (
    <>
      <VerdictSign verdict={group.verdict} />
      <span>
        {texts.rack.verdicts[group.verdict]}
        {!group.suits_stage && ` (${texts.wishes.kinds[other]})`}
      </span>{" "}
      <small>{texts.list.bikes({ number: group.bikes })}</small>
    </>
  );
}
