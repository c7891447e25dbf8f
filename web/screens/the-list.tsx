// The list: open a file of bikes, see what was read, and what was set aside and why.
import type { SetAside } from "../engine/wire-answers";
import { usePage } from "../page/page-context";
import { Fold } from "../parts/fold";
import { ListChooser, SampleChooser } from "../parts/list-choosers";
import { LongList } from "../parts/long-list";
import { Notes, worded } from "../parts/notes";
import { ScreenHead } from "../parts/screen-head";
import type { ListState, PageState } from "../state/page-state";
import { went } from "../state/screen-changes";

export function TheList({ state }: { state: PageState }) {
  const { texts } = usePage();
  const { list } = state;
  return (
    <>
      <ScreenHead title={texts.list.title}>
        <p>{texts.list.lead}</p>
      </ScreenHead>
      <div class="inset stack">
        <Refused list={list} />
        <Opened list={list} />
        <ListChooser list={list} />
        <div class="ending">
          <SampleChooser />
        </div>
      </div>
    </>
  );
}

function Refused({ list }: { list: ListState }) {
  const { texts } = usePage();
  const { refusal, loaded } = list;
  if (refusal === null) return null;
  const stillOpen =
    loaded === null
      ? texts.list.keptNone
      : texts.list.keptOld({ title: loaded.list?.title ?? texts.list.untitled });
  return (
    <section class="sheet stack refused" role="alert">
      <p>
        <strong>{texts.list.refused({ fileName: refusal.fileName })}</strong>
      </p>
      <p>{worded(texts, refusal.problem)}</p>
      <p>{stillOpen}</p>
      <SetAsideEntries entries={refusal.setAside} />
    </section>
  );
}

function Opened({ list }: { list: ListState }) {
  const { texts, figures, change } = usePage();
  const { loaded, sample } = list;
  if (loaded?.list == null) return null;
  const { title, measured_on, bikes } = loaded.list;
  return (
    <section class="sheet stack">
      {sample && <p class="sample-mark">{texts.list.sampleMark}</p>}
      <h3>{title ?? texts.list.untitled}</h3>
      <p>
        {texts.list.bikes({ number: bikes })}
        {measured_on !== null && `. ${texts.list.measuredOn({ day: figures.day(measured_on) })}`}
      </p>
      <button type="button" class="button wide" onClick={() => change(went({ name: "rack" }))}>
        {texts.list.toRack}
      </button>
      {loaded.notes.length > 0 && (
        <Fold title={texts.list.notes}>
          <Notes notes={loaded.notes} />
        </Fold>
      )}
      {loaded.set_aside.length === 0 ? (
        <p class="soft">{texts.list.noneSetAside}</p>
      ) : (
        <>
          <h4>{texts.list.setAside({ number: loaded.set_aside.length })}</h4>
          <p class="soft">{texts.list.setAsideWhy}</p>
          <SetAsideEntries entries={loaded.set_aside} />
        </>
      )}
    </section>
  );
}

function SetAsideEntries({ entries }: { entries: SetAside[] }) {
  const { texts } = usePage();
  if (entries.length === 0) return null;
  return (
    <LongList
      label={texts.list.setAside({ number: entries.length })}
      length={entries.length}
      itemAt={(place) => entries[place] ?? null}
      keyOf={(entry) => String(entry.number)}
    >
      {(entry) =>
        entry !== null && (
          <div class="set-aside">
            <p>
              <strong>{entry.name ?? entry.id ?? texts.list.setAsideName({ number: entry.number })}</strong>
            </p>
            <p>{worded(texts, entry)}</p>
            <Fold title={texts.list.asWritten}>
              <pre tabIndex={0}>{entry.source}</pre>
            </Fold>
          </div>
        )
      }
    </LongList>
  );
}
