// A list that could not be opened: why, or what has to be said first; what can be done about it, and what is still open.
import type { SetAside } from "../engine/wire";
import { usePage } from "../page/page-context";
import type { ListState } from "../state/page-state";
import { Fold } from "./fold";
import { LongList } from "./long-list";
import { worded } from "./notes";
import { WhichColumn } from "./which-column";

const listUnits = ["cm", "mm", "in"] as const;

export function ListRefused({ list }: { list: ListState }) {
  const { texts, figures, openListAs } = usePage();
  const { refusal, loaded } = list;
  if (refusal === null) return null;
  const unitUnknown = refusal.problem.code === "table_without_units";
  const { table, fileName } = refusal;
  const asks = unitUnknown || table !== undefined;
  const stillOpen =
    loaded === null
      ? texts.list.keptNone
      : texts.list.keptOld({ title: loaded.list?.title ?? texts.list.untitled });
  return (
    <section class={asks ? "sheet stack" : "sheet stack refused"} role="alert">
      <p>
        <strong>{(asks ? texts.desk.question : texts.list.refused)({ fileName })}</strong>
      </p>
      {!asks && <p>{worded(texts, figures, refusal.problem)}</p>}
      {table !== undefined && !unitUnknown && <WhichColumn table={table} />}
      {unitUnknown && (
        <>
          <p>{texts.desk.whichUnit}</p>
          <div class="buttons">
            {listUnits.map((unit) => (
              <button
                key={unit}
                type="button"
                class="button"
                onClick={() => openListAs({ tableUnits: unit })}
              >
                {texts.units[unit]}
              </button>
            ))}
          </div>
        </>
      )}
      {["file_no_usable_bike", "file_bikes_empty"].includes(refusal.problem.code) && (
        <button type="button" class="button" onClick={() => openListAs({ toMend: true })}>
          {texts.desk.openToMend}
        </button>
      )}
      {refusal.problem.code === "file_not_utf8" && (
        <>
          <button type="button" class="button" onClick={() => openListAs({ encoding: "windows-1252" })}>
            {texts.desk.asWindows}
          </button>
          <p class="soft">{texts.desk.asWindowsWhy}</p>
        </>
      )}
      {refusal.problem.code.startsWith("address_") && refusal.problem.code !== "address_offline" && (
        <button type="button" class="button" onClick={() => openListAs({})}>
          {texts.list.tryAgain}
        </button>
      )}
      <p>{stillOpen}</p>
      {/* All of them for want of the unit: once it is said, nothing is wrong with them. */}
      {!unitUnknown && <SetAsideEntries entries={refusal.setAside} />}
    </section>
  );
}

/** All entries of a file in which none could be used. */
function SetAsideEntries({ entries }: { entries: SetAside[] }) {
  const { texts, figures } = usePage();
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
            <p>{worded(texts, figures, entry)}</p>
            <Fold title={texts.list.asWritten}>
              <pre tabIndex={0}>{entry.source}</pre>
            </Fold>
          </div>
        )
      }
    </LongList>
  );
}
