// Filters as chips: each says how many bikes it leaves, before it is chosen and after.
import type { ComponentChildren } from "preact";
import { usePage } from "../page/page-context";
import { Radio } from "./choices";

interface ChipProps {
  label: string;
  /** How many bikes it leaves. */
  bikes: number;
}

interface ChipFaceProps extends ChipProps {
  /** Takes a filter away, and so is never marked as one. */
  none?: boolean;
  children: ComponentChildren;
}

function Chip({ label, bikes, none = false, children }: ChipFaceProps) {
  const { texts, figures } = usePage();
  return (
    <label class={`chip ${none ? "none" : ""} ${bikes === 0 ? "empty" : ""}`}>
      {children}
      <span>{label}</span>{" "}
      <b class="told figure" aria-hidden="true">
        {figures.number(bikes)}
      </b>
      <span class="aloud">{texts.list.bikes({ number: bikes })}</span>
    </label>
  );
}

interface ChipChoiceProps<Value> {
  /** Tells the radio buttons of one choice from those of another. */
  name: string;
  legend: string;
  legendShown?: boolean;
  /** What takes the filter away, and how many bikes are left then. */
  none: NoInfer<Value>;
  any: number;
  chips: (ChipProps & { value: NoInfer<Value> })[];
  chosen: Value;
  onChoose: (value: Value) => void;
  children?: ComponentChildren;
}

/** One of a few. A second press on the one that is chosen takes it away again. */
export function ChipChoice<Value>(choice: ChipChoiceProps<Value>) {
  const { name, legend, legendShown = true, none, any, chips, chosen, onChoose, children } = choice;
  const { texts } = usePage();
  return (
    <fieldset>
      <legend class={legendShown ? "" : "aloud"}>{legend}</legend>
      <div class="chips">
        {[{ value: none, label: texts.wishes.any, bikes: any }, ...chips].map(({ value, ...chip }) => (
          <Chip key={String(value)} none={value === none} {...chip}>
            <Radio
              name={name}
              value={String(value)}
              checked={value === chosen}
              onChange={() => onChoose(value)}
              onClick={({ detail: presses }) => {
                // Not by the keyboard, where Space on what is chosen does nothing in any group of radio buttons.
                if (presses > 0 && value === chosen) onChoose(none);
              }}
            />
          </Chip>
        ))}
        {children}
      </div>
    </fieldset>
  );
}

interface ChipTickProps extends ChipProps {
  ticked: boolean;
  onTick: (on: boolean) => void;
}

export function ChipTick({ ticked, onTick, ...chip }: ChipTickProps) {
  return (
    <div class="chips">
      <Chip {...chip}>
        <input type="checkbox" checked={ticked} onChange={(event) => onTick(event.currentTarget.checked)} />
      </Chip>
    </div>
  );
}
