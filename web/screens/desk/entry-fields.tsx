// The fields of one bike as somebody types them: each with its unit, and below it what the running check says.
import type { Cells, CheckEntryAnswer } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { Select } from "../../parts/choices";
import { TextField } from "../../parts/fields";
import { worded } from "../../parts/notes";
import type { Draft } from "../../state/list-desk";
import { lengthFields, typed } from "../../state/list-drafts";
import type { Texts } from "../../texts/texts";
import { longestText } from "../../state/limits";
import { SlipLine } from "./slip-line";

export type FieldName = keyof Texts["desk"]["fields"];

export const fieldGroups = {
  what: ["id", "name", "kind", "wheel"],
  heights: ["saddle_lowest", "saddle_highest", "standover", "bottom_bracket_height"],
  parts: ["mass_kg", "rider_mass_limit_kg", "crank", "seat_tube_angle_deg"],
  riding: ["brakes", "lever_reach", "gears", "chainring", "sprocket"],
  money: ["price", "colours", "condition", "available", "notes"],
} as const satisfies Record<string, readonly FieldName[]>;

const known: string[] = Object.values(fieldGroups).flat();

/** The columns of an entry that no bike has. */
export function otherFields(cells: Cells): string[] {
  return Object.keys(cells).filter((field) => !known.includes(field));
}

export function fieldName(texts: Texts, field: string): string {
  if (field === "measured_on") return texts.desk.measuredOn;
  return known.includes(field) ? texts.desk.fields[field as FieldName] : field;
}

/** With the unit of bare figures in it. */
export function fieldLabel(
  texts: Texts,
  field: string,
  unit: string | null,
  currency: string | null,
): string {
  const counted = lengthFields.includes(field) ? unit : field === "price" ? currency : null;
  return fieldName(texts, field) + (counted === null ? "" : ` (${counted})`);
}

export function fieldKind(field: string): "plain" | "figure" {
  return plainFields.includes(field) || !known.includes(field) ? "plain" : "figure";
}

/** Whether a problem's place, such as `bikes[3].brakes[0]`, is that field. */
export function isAbout({ where }: { where: string }, field: string): boolean {
  return where.split(/[.[]/).includes(field);
}

const plainFields = ["id", "name", "wheel", "colours", "condition", "notes"];

interface EntryFieldProps {
  draft: Draft;
  checked: CheckEntryAnswer | null;
  field: string;
  units: string | null;
  currency?: string | null;
  big?: boolean;
}

export function EntryField({ draft, checked, field, units, currency = null, big = false }: EntryFieldProps) {
  const { texts, figures, change } = usePage();
  const text = draft.cells[field] ?? "";
  const label = fieldLabel(texts, field, draft.unit ?? units, currency);
  const type = (typedText: string): void => change(typed({ [field]: typedText }));
  const choices = choicesOf(texts, field);
  const problem = checked?.problem ?? null;
  return (
    <>
      {choices === null ? (
        <TextField
          id={`desk-${field}`}
          label={label}
          text={text}
          kind={fieldKind(field)}
          big={big}
          longest={longestText}
          problem={problem !== null && isAbout(problem, field) ? worded(texts, figures, problem) : null}
          onType={type}
        />
      ) : (
        <Select label={label} options={withOther(choices, text)} chosen={text} onChoose={type} />
      )}
      {checked?.slips
        .filter((slip) => isAbout(slip, field))
        .map((slip) => (
          <SlipLine
            key={slip.code}
            slip={slip}
            onRepair={() => {
              for (const step of slip.changes) if ("set" in step) change(typed(step.set));
            }}
          />
        ))}
    </>
  );
}

interface Choice {
  value: string;
  label: string;
}

function choicesOf(texts: Texts, field: string): Choice[] | null {
  const none = { value: "", label: texts.desk.notSaid };
  const from = (names: Readonly<Record<string, string>>): Choice[] => [
    none,
    ...Object.entries(names).map(([value, label]) => ({ value, label })),
  ];
  switch (field) {
    case "kind":
      return from(texts.tape.kinds);
    case "brakes":
      return from(texts.desk.brakes);
    case "available":
      return from({ yes: texts.bike.yes, no: texts.bike.no });
    default:
      return null;
  }
}

/** What is in the file in other words stays as it is. */
function withOther(choices: Choice[], text: string): Choice[] {
  return choices.some(({ value }) => value === text) ? choices : [...choices, { value: text, label: text }];
}
