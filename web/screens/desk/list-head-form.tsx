// What a list says of itself: its title, the day, the unit of its bare figures, its currency.
import { useState } from "preact/hooks";
import { usePage } from "../../page/page-context";
import { Select } from "../../parts/choices";
import { TextField } from "../../parts/fields";
import { worded } from "../../parts/notes";
import { ScreenHead } from "../../parts/screen-head";
import { headNote } from "../../state/list-desk";
import type { DeskState } from "../../state/list-desk";
import { viewed } from "../../state/list-steps";

export function ListHeadForm({ desk }: { desk: DeskState }) {
  const { texts, figures, change, work } = usePage();
  const list = desk.page?.answer.list ?? null;
  const [head, setHead] = useState({
    title: list?.title ?? "",
    measured_on: list?.measured_on ?? "",
    units: list?.units ?? "",
    currency: list?.currency ?? "",
  });
  const note = (name: keyof typeof head): string | null => {
    const said = headNote(desk, name);
    return said === null ? null : worded(texts, figures, said);
  };
  const field = (name: "title" | "measured_on" | "currency", label: string) => (
    <TextField
      id={`head-${name}`}
      label={label}
      kind="plain"
      text={head[name]}
      problem={note(name)}
      onType={(text) => {
        setHead({ ...head, [name]: text });
      }}
    />
  );
  const units = [
    { value: "cm", label: texts.unitNames.cm },
    { value: "in", label: texts.unitNames.in },
    { value: "mm", label: texts.desk.mm },
    { value: "", label: texts.desk.noUnits },
  ];
  return (
    <>
      <ScreenHead title={texts.desk.head} />
      <div class="inset stack">
        {field("title", texts.desk.headTitle)}
        {field("measured_on", texts.desk.measuredOn)}
        <Select
          label={texts.desk.units}
          options={units}
          chosen={head.units}
          onChoose={(value) => {
            setHead({ ...head, units: value });
          }}
        />
        {field("currency", texts.desk.currency)}
        <div class="buttons">
          <button
            type="button"
            class="button main"
            onClick={() => {
              const said = Object.entries(head).map(([name, text]) => [name, text.trim() || null] as const);
              void work.setHead(Object.fromEntries(said));
            }}
          >
            {texts.desk.keep}
          </button>
          <button type="button" class="button" onClick={() => change(viewed("entries"))}>
            {texts.desk.drop}
          </button>
        </div>
      </div>
    </>
  );
}
