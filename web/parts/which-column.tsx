// What the columns of a table hold, asked where their headings do not say it. The headings with their first values are the choices.
import { useState } from "preact/hooks";
import { usePage } from "../page/page-context";
import type { TableSketch } from "../engine/wire";
import { Select } from "./choices";

const asked = ["id", "name", "saddle_lowest", "saddle_highest", "wheel", "mass_kg", "price"] as const;

export function WhichColumn({ table: { columns } }: { table: TableSketch }) {
  const { texts, openListAs } = usePage();
  const [places, setPlaces] = useState<Record<string, number>>(() =>
    Object.fromEntries(
      asked.map((field) => [field, columns.findIndex((column) => column.field === field) + 1]),
    ),
  );
  const choices = [
    { value: 0, label: texts.desk.notSaid },
    ...columns.map(({ heading, values }, place) => ({
      value: place + 1,
      // Spreadsheets call a column by its letter.
      label: `${heading || String.fromCharCode(65 + (place % 26))}${texts.colon}${values}`,
    })),
  ];
  return (
    <form
      class="stack"
      aria-label={texts.desk.whichColumn}
      onSubmit={(event) => {
        event.preventDefault();
        openListAs({
          // A field in none of them is said too: its heading may seem to say otherwise.
          columns: Object.fromEntries(
            asked.map((field) => [field, places[field] === 0 ? null : (places[field] ?? null)]),
          ),
        });
      }}
    >
      <p>
        {texts.desk.whichColumn} {texts.desk.columnsNeeded}
      </p>
      {asked.map((field) => (
        <Select
          key={field}
          label={texts.desk.fields[field]}
          options={choices}
          chosen={places[field] ?? 0}
          onChoose={(place) => setPlaces({ ...places, [field]: place })}
        />
      ))}
      <button type="submit" class="button main wide">
        {texts.desk.useColumns}
      </button>
    </form>
  );
}
