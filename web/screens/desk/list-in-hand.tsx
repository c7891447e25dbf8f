// The list in hand: what it is, what is odd about it, and what can be done with it.
import { usePage } from "../../page/page-context";
import { Fold } from "../../parts/fold";
import { ListAge } from "../../parts/list-age";
import { Notes } from "../../parts/notes";
import { WhichColumn } from "../../parts/which-column";
import { isUnsaved, listInHand } from "../../state/list-desk";
import type { PageState } from "../../state/page-state";
import { closingAsked, shown, viewed } from "../../state/list-steps";
import { went } from "../../state/screen-changes";
import type { ListRowsAnswer } from "../../engine/wire";
import { listName } from "./open-lists";

export function ListInHand({ state }: { state: PageState }) {
  const { texts, figures, change, work } = usePage();
  const { desk } = state;
  const list = listInHand(desk);
  if (list === null || desk.page === null) return null;
  const { answer } = desk.page;
  const { counts, notes } = answer;
  const measuredOn = answer.list?.measured_on ?? null;
  return (
    <section class="sheet stack">
      {list.sample && <p class="sample-mark">{texts.list.sampleMark}</p>}
      <h3>{listName(texts, list)}</h3>
      <p>
        {texts.list.bikes({ number: counts.bikes })}
        {measuredOn !== null && `. ${texts.list.measuredOn({ day: figures.day(measuredOn) })}`}
        {isUnsaved(list) && <em class="tag">{texts.desk.unsaved}</em>}
      </p>
      <ListAge state={state} />
      <button type="button" class="button wide" onClick={() => change(went({ name: "rack" }))}>
        {texts.list.toRack}
      </button>
      <button type="button" class="button wide" onClick={() => change(went({ name: "club" }))}>
        {texts.club.open}
      </button>
      <button type="button" class="button wide" onClick={() => change(went({ name: "years" }))}>
        {texts.years.open}
      </button>
      <button type="button" class="button wide" onClick={() => change(went({ name: "suits" }))}>
        {texts.suits.title}
      </button>
      {counts.set_aside === 0 ? (
        counts.bikes > 0 && <p class="soft">{texts.list.noneSetAside}</p>
      ) : (
        <div class="title-row">
          <h4>{texts.list.setAside({ number: counts.set_aside })}</h4>
          <button
            type="button"
            class="plain-link"
            aria-label={`${texts.desk.showThem}: ${texts.list.setAside({ number: counts.set_aside })}`}
            onClick={(event) => {
              change(shown("set_aside"));
              toEntries(event.currentTarget);
            }}
          >
            {texts.desk.showThem}
          </button>
        </div>
      )}
      <LikelySlips answer={answer} />
      {notes.length > 0 && (
        <Fold title={texts.list.notes}>
          <Notes notes={notes} />
        </Fold>
      )}
      {state.list.table !== undefined && (
        <Fold title={texts.desk.whichColumn}>
          <WhichColumn table={state.list.table} />
        </Fold>
      )}
      <div class="buttons">
        <button type="button" class="button" onClick={() => void work.measure()}>
          {texts.desk.measure}
        </button>
        <button type="button" class="button" onClick={() => void work.addEntry()}>
          {texts.desk.add}
        </button>
        <button type="button" class="button" onClick={() => change(viewed("save"))}>
          {texts.desk.save}
        </button>
      </div>
      <div class="links">
        <button type="button" class="plain-link" onClick={() => change(viewed("head"))}>
          {texts.desk.head}
        </button>
        <button type="button" class="plain-link" onClick={() => change(viewed("merge"))}>
          {texts.desk.merge}
        </button>
        {desk.open.length === 1 && (
          <button
            type="button"
            class="plain-link"
            onClick={() => {
              if (isUnsaved(list)) change(closingAsked(list.key));
              else void work.close(list.key);
            }}
          >
            {texts.desk.closeThis}
          </button>
        )}
      </div>
    </section>
  );
}

/** To the entries further down the screen. */
function toEntries(from: HTMLElement): void {
  const title = from.closest(".screen")?.querySelector<HTMLElement>(".entries-title");
  title?.scrollIntoView();
  title?.focus({ preventScroll: true });
}

/** Kinds of slips, each to be repaired at once. */
function LikelySlips({ answer }: { answer: ListRowsAnswer }) {
  const { texts, change, work } = usePage();
  const { slip_kinds: kinds } = answer;
  if (kinds.length === 0) return null;
  return (
    <section class="stack" aria-label={texts.desk.slips}>
      <div class="title-row">
        <h4>{texts.desk.slips}</h4>
        <button
          type="button"
          class="plain-link"
          aria-label={`${texts.desk.showThem}: ${texts.desk.slips}`}
          onClick={(event) => {
            change(shown("slips"));
            toEntries(event.currentTarget);
          }}
        >
          {texts.desk.showThem}
        </button>
      </div>
      <p class="soft">{texts.desk.slipsWhy}</p>
      <ul class="slip-kinds">
        {kinds.map(({ code, count }) => (
          <li key={code}>
            {texts.desk.slipKinds[code]({ count })}
            {code in texts.desk.repair && (
              <button
                type="button"
                class="button"
                onClick={() => void work.edit([{ repair_all: code }], { what: "repaired", count })}
              >
                {texts.desk.repairAll({ count })}
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
