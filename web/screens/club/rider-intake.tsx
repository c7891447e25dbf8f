// Riders come in: typed one after another, or a whole table pasted or opened.
import { useRef, useState } from "preact/hooks";
import { usePage } from "../../page/page-context";
import { Select } from "../../parts/choices";
import { TextField } from "../../parts/fields";
import { Fold } from "../../parts/fold";
import { Notes } from "../../parts/notes";
import type { Stage } from "../../engine/wire";
import { fileTable } from "../../engine/spreadsheet";
import { downloadTable } from "../../engine/list-saving";
import { answerTo } from "../../state/answers";
import { draftGiven, draftTyped, tableGiven, tableQuestion, tableRefused } from "../../state/club-steps";
import type { PageState } from "../../state/page-state";

const stages: Stage[] = ["gliding", "side_wheels", "starting", "riding"];

export function RiderIntake({ state }: { state: PageState }) {
  const { texts, change } = usePage();
  const { club, unit } = state;
  const words = texts.club;
  const form = useRef<HTMLFormElement>(null);
  return (
    <section class="sheet stack">
      <h3>{words.addRider}</h3>
      <form
        ref={form}
        class="stack club-draft"
        onSubmit={(event) => {
          event.preventDefault();
          change(draftGiven(unit));
          form.current?.querySelector("input")?.focus();
        }}
      >
        <TextField
          id="club-name"
          label={words.name}
          kind="plain"
          longest={60}
          text={club.draft.name}
          onType={(name) => change(draftTyped({ name }))}
        />
        <TextField
          id="club-inseam"
          label={`${texts.rider.inseam} (${texts.units[unit]})`}
          text={club.draft.inseam}
          whenEmpty={texts.rider.inseamExample[unit]}
          onType={(inseam) => change(draftTyped({ inseam }))}
        />
        <Select
          label={texts.rider.stage}
          options={[
            { value: "", label: texts.rider.notSaid },
            ...stages.map((stage) => ({ value: stage, label: texts.rider.stages[stage].title })),
          ]}
          chosen={club.draft.stage}
          onChoose={(stage) => change(draftTyped({ stage }))}
        />
        <TextField
          id="club-age"
          label={words.age}
          text={club.draft.age}
          onType={(age) => change(draftTyped({ age }))}
        />
        <button type="submit" class="button main wide">
          {words.add}
        </button>
      </form>
      <Fold title={words.pasteTitle}>
        <PasteTable state={state} />
      </Fold>
      <Said state={state} />
    </section>
  );
}

function PasteTable({ state }: { state: PageState }) {
  const { texts, change } = usePage();
  const { unit } = state;
  const [text, setText] = useState("");
  const { answer: table, fresh } = answerTo(state, tableQuestion);
  const words = texts.club;
  return (
    <>
      <p class="soft">{words.pasteWhy}</p>
      <label class="field">
        <span class="label">{words.paste}</span>
        <textarea
          rows={6}
          value={text}
          spellcheck={false}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </label>
      <button
        type="button"
        class="button wide"
        onClick={() => {
          if (text.trim() === "") return;
          change(tableGiven(text, unit));
          setText("");
        }}
      >
        {words.readTable}
      </button>
      <label class="button wide file-choice">
        <input
          type="file"
          accept=".csv,.tsv,.txt,.xlsx,text/csv,text/plain"
          onChange={(event) => {
            const { currentTarget: input } = event;
            void fileTable(input.files?.[0]).then((table) => {
              change(typeof table === "string" ? tableGiven(table, unit) : tableRefused(table.error));
              input.value = "";
            });
          }}
        />
        {words.openTable}
      </label>
      {table !== null && fresh && (
        <button
          type="button"
          class="button wide"
          onClick={() => downloadTable(`club-day-${state.today}.csv`, table.text)}
        >
          {words.saveTable}
        </button>
      )}
    </>
  );
}

/** What became of the last table. */
function Said({ state }: { state: PageState }) {
  const { texts } = usePage();
  const { added, problem, setAside, unknown } = state.club.said;
  if (added === 0 && problem === null && setAside.length === 0) return null;
  return (
    <div role="status" class="stack">
      {added > 0 && <p>{texts.club.added({ number: added })}</p>}
      {unknown.length > 0 && <p class="soft">{texts.club.unknownColumns({ names: unknown.join(", ") })}</p>}
      <Notes notes={problem === null ? setAside : [problem]} />
    </div>
  );
}
