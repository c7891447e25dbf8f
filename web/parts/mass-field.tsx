// A weight, in the unit that goes with the reader's lengths.
import { TextField } from "./fields";
import { usePage } from "../page/page-context";
import { massKept, massSent, massShown, massUnitBeside } from "../state/typed-mass";

interface MassFieldProps {
  id: string;
  label: (figures: { unit: string }) => string;
  hint?: string;
  /** As it is kept. */
  text: string;
  problem?: string | null;
  asked?: boolean;
  onType: (text: string) => void;
}

export function MassField({ id, label, hint, text, problem = null, asked = false, onType }: MassFieldProps) {
  const { texts, figures } = usePage();
  const unit = massUnitBeside(figures.unit);
  return (
    <TextField
      id={id}
      label={label({ unit: figures.massUnit })}
      hint={hint}
      text={massShown(text, unit)}
      problem={text.trim() !== "" && massSent(text) === null ? texts.wishes.notANumber : problem}
      asked={asked}
      onType={(typed) => onType(massKept(typed, unit))}
    />
  );
}
