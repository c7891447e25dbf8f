// What looks like a slip, and the button that repairs it.
import type { Slip } from "../../engine/wire";
import { problemFigures } from "../../figures/problem-figures";
import { usePage } from "../../page/page-context";
import { worded } from "../../parts/notes";
import { byCode } from "../../texts/texts";

export function SlipLine({ slip, onRepair }: { slip: Slip; onRepair: () => void }) {
  const { texts, figures } = usePage();
  return (
    <div class="slip">
      <p>{worded(texts, figures, slip)}</p>
      {slip.changes.length > 0 && (
        <button type="button" class="button" onClick={onRepair}>
          {byCode(texts.desk.repair, slip.code, problemFigures(texts, figures, slip)) ??
            texts.desk.repairOther}
        </button>
      )}
    </div>
  );
}
