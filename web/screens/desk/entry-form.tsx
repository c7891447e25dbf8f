// One entry, field by field, with what the running check says of it.
import type { CheckEntryAnswer } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { Fold } from "../../parts/fold";
import { worded } from "../../parts/notes";
import { ScreenHead } from "../../parts/screen-head";
import type { Told } from "../../state/answers";
import type { DeskState } from "../../state/list-desk";
import { draftDropped } from "../../state/list-drafts";
import type { Texts } from "../../texts/texts";
import { EntryField, fieldGroups, isAbout, otherFields } from "./entry-fields";
import { toNextField } from "./next-field";

export function EntryForm({ desk, check }: { desk: DeskState; check: Told<CheckEntryAnswer> }) {
  const { texts, change, work } = usePage();
  const { draft, page } = desk;
  if (draft === null) return null;
  const { number, source } = draft;
  const name = draft.name ?? texts.list.setAsideName({ number: number ?? 0 });
  const units = page?.answer.list?.units ?? null;
  const field = (name: string) => (
    <EntryField
      key={name}
      draft={draft}
      checked={check.answer}
      field={name}
      units={units}
      currency={page?.answer.list?.currency ?? null}
    />
  );
  const others = otherFields(draft.cells);
  return (
    <>
      <ScreenHead title={number === null ? texts.desk.entryNew : texts.desk.entryTitle({ name })} />
      <div class="inset stack" onKeyDown={toNextField}>
        <ListWaits desk={desk} />
        <CheckSaid desk={desk} checked={check.answer} />
        {Object.entries(fieldGroups).map(([group, fields]) => (
          <fieldset key={group} class="sheet stack">
            <legend class="aloud">{texts.desk.groups[group as keyof Texts["desk"]["groups"]]}</legend>
            <h3 aria-hidden="true">{texts.desk.groups[group as keyof Texts["desk"]["groups"]]}</h3>
            <div class="pair">{fields.map(field)}</div>
          </fieldset>
        ))}
        {others.length > 0 && (
          <section class="sheet stack">
            <h3>{texts.desk.otherFields}</h3>
            <div class="pair">{others.map(field)}</div>
          </section>
        )}
        {source !== null && (
          <Fold title={texts.list.asWritten}>
            <pre tabIndex={0}>{source}</pre>
          </Fold>
        )}
        <div class="buttons at-hand">
          <button type="button" class="button main onward-field" onClick={() => void work.keepDraft()}>
            {texts.desk.keep}
          </button>
          <button type="button" class="button" onClick={() => change(draftDropped())}>
            {number === null ? texts.desk.dropNew : texts.desk.drop}
          </button>
        </div>
        {number !== null && (
          <div class="buttons">
            <button type="button" class="button" onClick={() => void work.copyEntry(number, name)}>
              {texts.desk.copy}
            </button>
            <button type="button" class="button" onClick={() => void work.removeEntry(number, name)}>
              {texts.desk.remove}
            </button>
          </div>
        )}
      </div>
    </>
  );
}

/** The list that comes next; nothing of what is typed is lost to it. */
export function ListWaits({ desk: { waits } }: { desk: DeskState }) {
  const { texts } = usePage();
  return <p role="status">{waits !== null && texts.desk.waits({ name: waits })}</p>;
}

/** What a bike lacks to be one. */
const unfinishedCodes = new Set(["bike_without_name", "bike_without_saddle"]);

/** What follows from the check, and a problem that belongs to no field of the form. */
export function CheckSaid({ desk, checked }: { desk: DeskState; checked: CheckEntryAnswer | null }) {
  const { texts, figures } = usePage();
  const problem = checked?.problem ?? null;
  const fields = [...Object.values(fieldGroups).flat(), ...otherFields(desk.draft?.cells ?? {})];
  // Nobody is told off for what is still to be typed.
  const unfinished = desk.draft?.number === null && problem !== null && unfinishedCodes.has(problem.code);
  return (
    <div role="status">
      {unfinished && <p class="soft">{texts.desk.waiting}</p>}
      {problem !== null && !unfinished && (
        <p class="problem">
          {!fields.some((field) => isAbout(problem, field)) && worded(texts, figures, problem)}{" "}
          {texts.desk.aside}
        </p>
      )}
    </div>
  );
}
