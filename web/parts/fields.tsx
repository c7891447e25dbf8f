// Fields for what is typed. Text stays as typed; what is wrong with it is said below, by the engine.
import { useEffect, useRef } from "preact/hooks";
import { Select } from "./choices";
import { usePage } from "../page/page-context";
import type { MonthEntry } from "../state/page-state";
import { longestTyped } from "../state/limits";
import { plainNumber } from "../state/request-building";

interface TextFieldProps {
  /** Unique within the page. */
  id: string;
  label: string;
  /** The label is read aloud only. */
  labelHidden?: boolean;
  text: string;
  onType: (text: string) => void;
  /** Stands in the field as long as nothing else does. */
  whenEmpty?: string;
  hint?: string | undefined;
  problem?: string | null;
  /** A figure, typed on the keyboard that has digits and the slash of fractions. */
  kind?: "figure" | "plain";
  longest?: number;
  big?: boolean;
  /** Takes the focus when it comes up: somebody asked for it. */
  asked?: boolean;
}

export function TextField({
  id,
  label,
  labelHidden = false,
  text,
  onType,
  whenEmpty,
  hint,
  problem = null,
  kind = "figure",
  longest = longestTyped,
  big = false,
  asked = false,
}: TextFieldProps) {
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (asked) input.current?.focus();
  }, [asked]);
  const problemId = `${id}-problem`;
  return (
    <div class={big ? "typed" : "field"}>
      <label class={labelHidden ? "aloud" : "label"} for={id}>
        {label}
        {hint !== undefined && <span class="hint">{hint}</span>}
      </label>
      <input
        ref={input}
        id={id}
        type="text"
        autoComplete="off"
        spellcheck={false}
        maxLength={longest}
        {...(kind === "figure" ? { inputMode: "decimal" as const } : {})}
        {...(whenEmpty === undefined ? {} : { placeholder: whenEmpty })}
        value={text}
        aria-invalid={problem !== null}
        {...(problem === null ? {} : { "aria-describedby": problemId })}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      {big && <span class="blade" aria-hidden="true" />}
      {problem !== null && <Problem id={problemId} text={problem} />}
    </div>
  );
}

/** A plain number, such as of money, or none. */
export function NumberField(field: Pick<TextFieldProps, "id" | "label" | "text" | "onType">) {
  const { texts } = usePage();
  const reads = field.text.trim() === "" || plainNumber(field.text) !== null;
  return <TextField {...field} problem={reads ? null : texts.wishes.notANumber} />;
}

function Problem({ id, text }: { id: string; text: string }) {
  return (
    <p class="problem" id={id}>
      {text}
    </p>
  );
}

interface MonthFieldProps {
  legend: string;
  hint?: string;
  chosen: MonthEntry;
  /** The years to choose from, in the order of the list. */
  years: string[];
  onChoose: (month: MonthEntry) => void;
}

const months = Array.from({ length: 12 }, (_, place) => place + 1);

/** Month and year from two lists: every browser has those. */
export function MonthField({ legend, hint, chosen, years, onChoose }: MonthFieldProps) {
  const { texts, figures } = usePage();
  const open = { value: "", label: texts.rider.notSaid };
  const monthOptions = months.map((month) => ({
    value: String(month).padStart(2, "0"),
    label: figures.monthName(month),
  }));
  return (
    <fieldset class="stack">
      <legend>{legend}</legend>
      {hint !== undefined && <p class="soft">{hint}</p>}
      <div class="pair">
        <Select
          label={texts.rider.month}
          options={[open, ...monthOptions]}
          chosen={chosen.month}
          onChoose={(month) => onChoose({ ...chosen, month })}
        />
        <Select
          label={texts.rider.year}
          options={[open, ...years.map((year) => ({ value: year, label: year }))]}
          chosen={chosen.year}
          onChoose={(year) => onChoose({ ...chosen, year })}
        />
      </div>
    </fieldset>
  );
}

export function TickField({
  label,
  ticked,
  onTick,
}: {
  label: string;
  ticked: boolean;
  onTick: (on: boolean) => void;
}) {
  return (
    <label class="tick-choice">
      <input type="checkbox" checked={ticked} onChange={(event) => onTick(event.currentTarget.checked)} />
      {label}
    </label>
  );
}
