// What the page around is told, as events with plain data. Of the child it learns nothing but the saddle heights that suit.
import { bikeIn, closeUp } from "../engine/close-up";
import { draftQuestion } from "../engine/questions";
import { rackQuestion } from "../engine/rack-question";
import type { RefusalNote } from "../engine/refusal";
import type { AssessAnswer, JudgedBike } from "../engine/wire";
import type { Mounted } from "../page/mount-saddlerule";
import { worded } from "../parts/notes";
import { answerTo } from "../state/answers";
import type { Told as ToldAnswer } from "../state/answers";
import type { PageState } from "../state/page-state";

export type Told = "list" | "problem" | "verdict";

export function tellOutside(host: Element, what: Told, detail: object): void {
  host.dispatchEvent(new CustomEvent(`saddlerule-${what}`, { bubbles: true, composed: true, detail }));
}

/**
 * Tells whatever changes. Returns the way to stop.
 * @param lostFiles what files of the element's own did not come, a sentence each
 */
export function tellChanges(host: Element, mounted: Mounted, lostFiles: ReadonlySet<string>): () => void {
  const last: Partial<Record<Told, unknown>> = {};

  /** Once, as long as it is the same. */
  function tell(what: Told, mark: unknown, detail: object | null): void {
    if (detail === null || mark === last[what]) return;
    last[what] = mark;
    tellOutside(host, what, detail);
  }

  const follow = (state: PageState): void => {
    const { loaded, edition, refusal } = state.list;
    tell("list", edition, loaded && { title: loaded.list?.title ?? null, ...countsOf(loaded.counts) });
    const problem = refusal?.problem ?? brokenDown(state);
    const cause = problem?.figures.what;
    const told =
      typeof cause === "string" && lostFiles.has(cause)
        ? { code: "files_not_loaded", problem: cause }
        : problem && { code: problem.code, problem: inWords(problem, mounted) };
    tell("problem", problem, told);
    const verdict = verdictShown(state, host);
    tell("verdict", JSON.stringify(verdict), verdict);
  };
  return mounted.store.subscribe((state) => {
    const followNow = (): void => follow(mounted.store.read());
    // The sentence may be on its way yet.
    if (state.list.refusal === null || state.list.refusal.problem === last.problem) follow(state);
    else mounted.whole().then(followNow, followNow);
  });
}

function countsOf({ bikes, set_aside }: { bikes: number; set_aside: number }): object {
  return { bikes, set_aside };
}

function brokenDown(state: PageState): RefusalNote | null {
  const { refusal } = answerTo(state, rackQuestion);
  return refusal?.code === "internal" ? refusal : null;
}

function inWords(problem: RefusalNote, { tools }: Mounted): string {
  const { texts, figures } = tools();
  return worded(texts, figures, problem);
}

/**
 * The verdict on the bike that is looked at: the one that is open, the one that is taped, or the first of the rack. null: there
 * is none, or it is not about what is typed now.
 */
function verdictShown(state: PageState, host: Element): object | null {
  const { screen } = state;
  const rack = answerTo(state, rackQuestion);
  const bike = bikeShown(state, rack, host);
  if (!rack.fresh || rack.answer === null || bike === null) return null;
  const { window_mm: window } = rack.answer.rider;
  const { id, name, verdict, saddle_mm, fits_probability } = bike;
  const { low, target, high } = window;
  return {
    screen: "id" in screen ? "bike" : screen.name === "tape" ? "tape" : "rack",
    id,
    name,
    verdict,
    saddle_mm,
    window_mm: { low, target, high },
    fits_probability,
  };
}

function bikeShown(state: PageState, rack: ToldAnswer<AssessAnswer>, host: Element): JudgedBike | null {
  const { screen } = state;
  if ("id" in screen) {
    const { answer, fresh } = answerTo(state, closeUp);
    return fresh ? bikeIn(answer, screen.id) : null;
  }
  if (screen.name === "tape") {
    const { answer, fresh } = answerTo(state, draftQuestion);
    return fresh ? (answer?.judged ?? null) : null;
  }
  const onPage = host.shadowRoot?.querySelector(".screen.rack");
  const isSeen = onPage != null && onPage.getClientRects().length > 0;
  return isSeen && rack.from === 0 ? (rack.answer?.bikes[0] ?? null) : null;
}
