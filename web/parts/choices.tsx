// One of a few: as a switch for short words, as cards for whole sentences, as a list for many.
import type { ComponentChildren, JSX } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";

export interface Option<Value> {
  value: Value;
  label: ComponentChildren;
}

interface ChoiceProps<Value> {
  /** Tells the radio buttons of one choice from those of another. */
  name: string;
  legend: string;
  options: Option<NoInfer<Value>>[];
  /** null: none is chosen yet, where null is none of the values. */
  chosen: Value | null;
  onChoose: (value: Value) => void;
}

/** Chromium holds on to a button that leaves the page in its group, and to the whole screen with it: it leaves the group first. */
export function Radio(
  input: Pick<JSX.IntrinsicElements["input"], "name" | "value" | "checked" | "onChange" | "onClick">,
) {
  const place = useRef<HTMLInputElement>(null);
  // At once: a screen may be left before an effect has run.
  useLayoutEffect(() => {
    const button = place.current;
    return () => button?.removeAttribute("name");
  }, []);
  return <input ref={place} type="radio" {...input} />;
}

function Radios<Value>({ name, options, chosen, onChoose }: Omit<ChoiceProps<Value>, "legend">) {
  return (
    <>
      {options.map(({ value, label }) => (
        <label key={String(value)}>
          <Radio
            name={name}
            value={String(value)}
            checked={value === chosen}
            onChange={() => onChoose(value)}
          />
          {label}
        </label>
      ))}
    </>
  );
}

export function Switch<Value>({
  legend,
  legendShown = true,
  small = false,
  ...choice
}: ChoiceProps<Value> & { legendShown?: boolean; small?: boolean }) {
  return (
    <fieldset>
      <legend class={legendShown ? "" : "aloud"}>{legend}</legend>
      <div class={small ? "switch small" : "switch"}>
        <Radios {...choice} />
      </div>
    </fieldset>
  );
}

export function CardChoice<Value>({ legend, ...choice }: ChoiceProps<Value>) {
  return (
    <fieldset>
      <legend>
        <h3>{legend}</h3>
      </legend>
      <div class="card-choice">
        <Radios {...choice} />
      </div>
    </fieldset>
  );
}

interface SelectProps<Value> {
  label: string;
  options: { value: NoInfer<Value>; label: string }[];
  chosen: Value;
  onChoose: (value: Value) => void;
}

export function Select<Value>({ label, options, chosen, onChoose }: SelectProps<Value>) {
  const place = options.findIndex((option) => option.value === chosen);
  return (
    <label class="field">
      <span class="label">{label}</span>
      <select
        value={String(place)}
        onChange={(event) => {
          const option = options[Number(event.currentTarget.value)];
          if (option !== undefined) onChoose(option.value);
        }}
      >
        {options.map((option, number) => (
          <option key={number} value={String(number)} selected={number === place}>
            {option.label}
          </option>
        ))}
      </select>
    </label>
  );
}
