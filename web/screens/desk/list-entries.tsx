// The entries of the list in hand: searched, shown by their state, each with what is wrong or odd about it.
import { useCallback } from "preact/hooks";
import type { ListedEntry, ListShow } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { Switch } from "../../parts/choices";
import { TextField } from "../../parts/fields";
import { LongList } from "../../parts/long-list";
import { worded } from "../../parts/notes";
import type { DeskState } from "../../state/list-desk";
import { entriesNeared, shown, sought } from "../../state/list-steps";
import { SlipLine } from "./slip-line";

const shows: ListShow[] = ["all", "bikes", "set_aside", "slips"];

export function ListEntries({ desk }: { desk: DeskState }) {
  const { texts, change } = usePage();
  const near = useCallback((first: number, end: number) => change(entriesNeared(first, end)), [change]);
  if (desk.page === null) return null;
  const { answer, from } = desk.page;
  const { counts, entries } = answer;
  if (counts.entries === 0) return <p class="soft">{texts.desk.noEntries}</p>;
  const sizes = {
    all: counts.entries,
    bikes: counts.bikes,
    set_aside: counts.set_aside,
    slips: counts.slips,
  };
  return (
    <section class="stack" aria-label={texts.desk.entries}>
      <h3 class="entries-title" tabIndex={-1}>
        {texts.desk.entries}
      </h3>
      <TextField
        id="desk-find"
        label={texts.desk.find}
        kind="plain"
        text={desk.find}
        onType={(text) => change(sought(text))}
      />
      <Switch
        name="desk-show"
        legend={texts.desk.showing}
        legendShown={false}
        chosen={desk.show}
        onChoose={(show) => change(shown(show))}
        options={shows
          .filter((show) => show === "all" || show === desk.show || sizes[show] > 0)
          .map((show) => ({ value: show, label: texts.desk.show[show]({ count: sizes[show] }) }))}
      />
      {counts.shown === 0 && <p class="soft">{texts.desk.nothingShown}</p>}
      <LongList
        label={texts.desk.entries}
        length={counts.shown}
        itemAt={(place) => entries[place - from] ?? null}
        keyOf={({ number }) => String(number)}
        onNear={near}
      >
        {(entry) => (entry === null ? <div class="entry-room" /> : <EntryRow entry={entry} />)}
      </LongList>
    </section>
  );
}

function EntryRow({ entry }: { entry: ListedEntry }) {
  const { texts, figures, work } = usePage();
  const { number, id, problem, slips, saddle_lowest_mm: lowest, saddle_highest_mm: highest } = entry;
  const name = entry.name ?? id ?? texts.list.setAsideName({ number });
  const length = (mm: number | null): string | null => (mm === null ? null : figures.length(mm));
  return (
    <article class="entry" aria-label={name}>
      <button
        type="button"
        class="entry-name"
        data-entry={number}
        onClick={() => void work.openEntry(number)}
      >
        <strong>{name}</strong>
        {problem === null && (
          <span>
            {id !== null && id !== name && `${id} · `}
            {entry.wheel?.nominal_in != null &&
              `${texts.rack.wheel({ nominal: figures.number(entry.wheel.nominal_in) })} · `}
            {texts.rack.bar({ lowest: length(lowest), highest: length(highest) })}
          </span>
        )}
      </button>
      {problem !== null && (
        <>
          <p>
            <em class="tag">{texts.desk.setAside}</em> {worded(texts, figures, problem)}
          </p>
          <button
            type="button"
            class="button"
            aria-label={`${texts.desk.mend}: ${name}`}
            onClick={() => void work.openEntry(number)}
          >
            {texts.desk.mend}
          </button>
        </>
      )}
      {slips.map((slip) => (
        <SlipLine
          key={slip.code + slip.where}
          slip={slip}
          onRepair={() => void work.edit(slip.changes, { what: "repaired", name })}
        />
      ))}
    </article>
  );
}
