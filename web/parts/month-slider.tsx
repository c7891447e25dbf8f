// A slider of months from now, with a sentence about the month that it is at.
interface MonthSliderProps {
  /** What it is for. */
  label: string;
  months: number;
  most: number;
  says: string;
  onLook: (months: number) => void;
  class?: string;
}

export function MonthSlider({ label, months, most, says, onLook, class: more = "" }: MonthSliderProps) {
  return (
    <div class={`month-slider ${more}`}>
      <input
        type="range"
        min="0"
        max={most}
        value={months}
        aria-label={label}
        aria-valuetext={says}
        onInput={(event) => onLook(event.currentTarget.valueAsNumber)}
      />
      <p>{says}</p>
    </div>
  );
}
