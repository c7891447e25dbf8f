// The one faulty cell of a bike that was left out, mended where it is in the list.
import { useState } from "preact/hooks";
import type { ListedEntry } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { TextField } from "../../parts/fields";
import { longestText } from "../../state/limits";
import { fieldKind } from "./entry-fields";

interface MendCellProps {
  number: number;
  name: string;
  cell: NonNullable<ListedEntry["to_mend"]>;
  problem: string;
  label: string;
  onMend: () => void;
}

export function MendCell({ number, name, cell, problem, label, onMend }: MendCellProps) {
  const { texts, work } = usePage();
  const [text, setText] = useState(cell.text);
  return (
    <form
      class="slip mend"
      onSubmit={(event) => {
        event.preventDefault();
        onMend();
        void work.edit([{ set: { [cell.field]: text }, number }], { what: "changed", name, toMend: true });
      }}
    >
      <TextField
        id={`mend-${number}`}
        label={label}
        kind={fieldKind(cell.field)}
        longest={longestText}
        text={text}
        problem={problem}
        onType={setText}
      />
      <button type="submit" class="button" aria-label={`${texts.desk.mend}: ${name}`}>
        {texts.desk.mend}
      </button>
      <button type="button" class="plain-link" onClick={() => void work.openEntry(number)}>
        {texts.desk.entryTitle({ name })}
      </button>
    </form>
  );
}
