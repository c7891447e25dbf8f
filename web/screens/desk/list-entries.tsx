// The entries of the list in hand: searched, shown by their state, each with what is wrong or odd about it.
import { useCallback, useEffect, useRef } from "preact/hooks";
import type { ListedEntry, ListRowsAnswer, ListShow } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { Switch } from "../../parts/choices";
import { TextField } from "../../parts/fields";
import { LongList } from "../../parts/long-list";
import { worded } from "../../parts/notes";
import type { DeskState } from "../../state/list-desk";
import { entriesNeared, shown, sought } from "../../state/list-steps";
import { fieldLabel } from "./entry-fields";
import { MendCell } from "./mend-cell";
import { SlipLine } from "./slip-line";

const shows: ListShow[] = ["all", "bikes", "set_aside", "slips"];

export function ListEntries({ desk }: { desk: DeskState }) {
  const { texts, change } = usePage();
  const near = useCallback((first: number, end: number) => change(entriesNeared(first, end)), [change]);
  const place = useRef<HTMLElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  const mended = useRef(0);
  const { page } = desk;
  // The next one to be mended takes the focus: the same bike where it has another fault, or one further on.
  useEffect(() => {
    if (mended.current === 0 || page === null) return;
    const { shown: inView, set_aside: left } = page.answer.counts;
    const cells = [...(place.current?.querySelectorAll<HTMLElement>("[data-mend]") ?? [])];
    const next = cells.find(({ dataset }) => Number(dataset.mend) >= mended.current) ?? cells[0];
    // Far off in the whole list: those left out come together.
    if (next === undefined && left > 0 && inView > left) {
      change(shown("set_aside"));
      return;
    }
    mended.current = 0;
    (next?.querySelector<HTMLElement>("input, button") ?? title.current)?.focus();
  }, [page, change]);
  if (page === null) return null;
  const { answer, from } = page;
  const { counts, entries } = answer;
  if (counts.entries === 0) return <p class="soft">{texts.desk.noEntries}</p>;
  const sizes = {
    all: counts.entries,
    bikes: counts.bikes,
    set_aside: counts.set_aside,
    slips: counts.slips,
  };
  return (
    <section ref={place} class="stack" aria-label={texts.desk.entries}>
      <h3 ref={title} class="entries-title" tabIndex={-1}>
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
        {(entry) =>
          entry === null ? (
            <div class="entry-room" />
          ) : (
            <EntryRow
              entry={entry}
              list={answer.list}
              onMend={() => {
                mended.current = entry.number;
              }}
            />
          )
        }
      </LongList>
    </section>
  );
}

interface EntryRowProps {
  entry: ListedEntry;
  list: ListRowsAnswer["list"];
  onMend: () => void;
}

function EntryRow({ entry, list, onMend }: EntryRowProps) {
  const { texts, figures, work } = usePage();
  const {
    number,
    id,
    problem,
    to_mend: toMend,
    slips,
    saddle_lowest_mm: lowest,
    saddle_highest_mm: highest,
  } = entry;
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
        <div data-mend={number}>
          <p>
            <em class="tag">{texts.desk.setAside}</em> {toMend === null && worded(texts, figures, problem)}
          </p>
          {toMend === null ? (
            <button
              type="button"
              class="button"
              aria-label={`${texts.desk.mend}: ${name}`}
              onClick={() => void work.openEntry(number)}
            >
              {texts.desk.mend}
            </button>
          ) : (
            <MendCell
              key={toMend.field + toMend.text}
              number={number}
              name={name}
              cell={toMend}
              problem={worded(texts, figures, problem)}
              label={fieldLabel(texts, toMend.field, list?.units ?? null, list?.currency ?? null)}
              onMend={onMend}
            />
          )}
        </div>
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
