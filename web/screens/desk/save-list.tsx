// Saving the list in hand: as which form, what would be left out, into which file.
import { usePage } from "../../page/page-context";
import { Select, Switch } from "../../parts/choices";
import { worded } from "../../parts/notes";
import { ScreenHead } from "../../parts/screen-head";
import type { SaveAnswer } from "../../engine/wire";
import type { Told } from "../../state/answers";
import type { DeskState } from "../../state/list-desk";
import { saveWished } from "../../state/list-steps";
import { byCode } from "../../texts/texts";
import { BackToList } from "./back-to-list";

const forms = ["json", "csv", "page"] as const;
const whole = ["all", "set_aside"] as const;

export function SaveList({ desk, saved }: { desk: DeskState; saved: Told<SaveAnswer> }) {
  const { texts, change, work } = usePage();
  const { save } = desk;
  const answer = saved.fresh ? saved.answer : null;
  const setAside = desk.page?.answer.counts.set_aside ?? 0;
  const file = work.sameFile(desk);
  return (
    <>
      <BackToList />
      <ScreenHead title={texts.desk.saveTitle} />
      <div class="inset stack">
        <Switch
          name="save-form"
          legend={texts.desk.form}
          chosen={save.form}
          onChoose={(form) => change(saveWished({ form }))}
          options={forms
            .filter((value) => value !== "page" || work.savesPage)
            .map((value) => ({ value, label: texts.desk.forms[value] }))}
        />
        {save.form === "page" && <p>{texts.desk.pageHint}</p>}
        {save.form === "csv" && (
          <Select
            label={texts.desk.separator}
            chosen={save.separator}
            onChoose={(separator) => change(saveWished({ separator }))}
            options={[
              { value: ",", label: texts.desk.separators.comma },
              { value: ";", label: texts.desk.separators.semicolon },
              { value: "tab", label: texts.desk.separators.tab },
            ]}
          />
        )}
        {setAside > 0 && (
          <Select
            label={texts.desk.only}
            chosen={save.only}
            onChoose={(only) => change(saveWished({ only }))}
            options={whole.map((value) => ({
              value,
              label: byCode(texts.desk.onlys, value, { count: setAside }) ?? value,
            }))}
          />
        )}
        <div role="status">
          {answer !== null && <LeftOut answer={answer} />}
          {save.savedAs !== null && <p class="sheet">{texts.desk.saved({ file: save.savedAs })}</p>}
        </div>
        {save.failed && (
          <p class="problem at-once" role="alert">
            {texts.desk.saveFailed}
          </p>
        )}
        {file !== null && (
          <button
            type="button"
            class="button main wide"
            aria-disabled={answer === null}
            onClick={() => void work.saveAgain()}
          >
            {texts.desk.saveInto({ file })}
          </button>
        )}
        <button
          type="button"
          class={file === null ? "button main wide" : "button wide"}
          aria-disabled={answer === null}
          onClick={() => void work.saveAsNew()}
        >
          {file === null ? texts.desk.save : texts.desk.saveNew}
        </button>
      </div>
    </>
  );
}

function LeftOut({ answer }: { answer: SaveAnswer }) {
  const { texts, figures } = usePage();
  const { left_out: out, entries } = answer;
  if (out.length === 0) return null;
  return (
    <section class="sheet stack">
      <p>{texts.desk.leftOut({ count: out.length, all: entries + out.length })}</p>
      <ul class="notes">
        {out.slice(0, 20).map((entry) => (
          <li key={entry.number}>
            {entry.name ?? entry.id ?? texts.list.setAsideName({ number: entry.number })}:{" "}
            {worded(texts, figures, entry)}
          </li>
        ))}
      </ul>
    </section>
  );
}
