// Measuring bike after bike: large fields, what to measure drawn beside them, the next bike with one tap.
import { useEffect, useRef } from "preact/hooks";
import { isMeasure, MeasuringGuide } from "../../drawings/measuring-guide";
import type { TypedUnit } from "../../engine/narrowed";
import type { CheckEntryAnswer } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { Switch } from "../../parts/choices";
import { Fold } from "../../parts/fold";
import { ScreenHead } from "../../parts/screen-head";
import type { Told } from "../../state/answers";
import type { DeskState } from "../../state/list-desk";
import { draftDropped, fieldInHand, measuredIn } from "../../state/list-drafts";
import { EntryField } from "./entry-fields";
import { CheckSaid, ListWaits } from "./entry-form";
import { toNextField } from "./next-field";

const first = ["id", "saddle_lowest", "saddle_highest"];
const more = [
  "standover",
  "lever_reach",
  "bottom_bracket_height",
  "crank",
  "wheel",
  "mass_kg",
  "kind",
  "brakes",
  "price",
  "name",
];

export function Workshop({ desk, check }: { desk: DeskState; check: Told<CheckEntryAnswer> }) {
  const { texts, change, work } = usePage();
  const place = useRef<HTMLDivElement>(null);
  const { draft } = desk;
  const toFirst = (): void => {
    const fields = [...(place.current?.querySelectorAll<HTMLInputElement>("input[id]") ?? [])];
    (fields.find(({ value }) => value === "") ?? fields[0])?.focus();
  };
  useEffect(toFirst, []);
  if (draft === null) return null;
  const { cells, inHand, unit } = draft;
  const { answer: checked, fresh } = check;
  const measured = first.slice(1).some((field) => (cells[field] ?? "").trim() !== "");
  const field = (big: boolean) => (name: string) => (
    <EntryField key={name} draft={draft} checked={checked} field={name} units={unit} big={big} />
  );
  /** Measured from the floor, straight up. */
  const isHeight = (measured: string): boolean => measured.startsWith("saddle_");
  const measure = isMeasure(inHand) ? inHand : "saddle_lowest";
  const units: TypedUnit[] = ["cm", "in"];
  return (
    <>
      <ScreenHead
        title={texts.desk.workshop}
        aside={
          <Switch
            name="desk-unit"
            legend={texts.desk.unit}
            legendShown={false}
            small
            chosen={unit ?? "cm"}
            onChoose={(chosen) => change(measuredIn(chosen))}
            options={units.map((value) => ({ value, label: texts.units[value] }))}
          />
        }
      />
      <div
        ref={place}
        class="inset workshop"
        onKeyDown={toNextField}
        onFocusIn={({ target }) => {
          if (target instanceof Element && target.id.startsWith("desk-"))
            change(fieldInHand(target.id.slice("desk-".length)));
        }}
      >
        <figure>
          <MeasuringGuide inHand={measure} />
          <figcaption class="soft">
            {texts.desk.how[measure]} {isHeight(measure) && texts.measuringBike.how}
          </figcaption>
        </figure>
        <div class="stack">
          <ListWaits desk={desk} />
          {first.map(field(true))}
          {measured ? <CheckSaid desk={desk} checked={checked} /> : <p class="soft">{texts.desk.waiting}</p>}
          <p class="soft" role="status">
            {measured && fresh && checked?.problem === null && checked.slips.length === 0 && texts.desk.fine}
          </p>
          <Fold title={texts.desk.more} more={`(${texts.optional})`}>
            <div class="pair">{more.map(field(false))}</div>
          </Fold>
          <button
            type="button"
            class="button main wide onward-field"
            aria-disabled={!measured}
            onClick={() => {
              if (measured) void work.nextBike().then((taken) => taken && toFirst());
            }}
          >
            {texts.desk.next}
          </button>
          <button
            type="button"
            class="button wide"
            onClick={() => {
              if (measured) void work.keepDraft();
              else change(draftDropped());
            }}
          >
            {texts.desk.finish}
          </button>
        </div>
      </div>
    </>
  );
}
