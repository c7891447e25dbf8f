// The state of a check as a small sign, told apart by shape alone.
import type { CheckState } from "../engine/wire";

const shapes: Record<CheckState, { outline: string; mark: string }> = {
  ok: { outline: "M12 2.5a9.5 9.5 0 1 0 .1 0Z", mark: "M7.5 12.5l3 3 6-7" },
  look: { outline: "M12 3l10 18H2Z", mark: "M12 9.5v5.5M12 18v.3" },
  stop: { outline: "M8 2.5h8L21.5 8v8L16 21.5H8L2.5 16V8Z", mark: "M7.5 12h9" },
  unknown: {
    outline: "M12 2.5a9.5 9.5 0 1 0 .1 0Z",
    mark: "M9 9.5a3 3 0 1 1 4.2 2.7q-1.2.6-1.2 2M12 17.3v.3",
  },
};

export function CheckSign({ state }: { state: CheckState }) {
  const { outline, mark } = shapes[state];
  return (
    <svg class={`sign check-sign ${state}`} viewBox="0 0 24 24" aria-hidden="true">
      <path class="check-outline" d={outline} />
      <path class="check-mark" d={mark} />
    </svg>
  );
}
