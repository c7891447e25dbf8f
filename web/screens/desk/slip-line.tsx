// What looks like a slip, and the button that repairs it.
import type { Slip } from "../../engine/wire-lists";
import { usePage } from "../../page/page-context";
import { worded } from "../../parts/notes";
import { byCode } from "../../texts/texts";

export function SlipLine({ slip, onRepair }: { slip: Slip; onRepair: () => void }) {
  const { texts } = usePage();
  return (
    <div class="slip">
      <p>{worded(texts, slip)}</p>
      {slip.changes.length > 0 && (
        <button type="button" class="button" onClick={onRepair}>
          {byCode(texts.desk.repair, slip.code, slip.figures) ?? texts.desk.repairOther}
        </button>
      )}
    </div>
  );
}
