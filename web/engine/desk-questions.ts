// What the work on a list keeps asking: the entries near the screen, the check of what is typed, the list as it would be saved.
import { sentCells } from "../state/list-drafts";
import { entriesTold, onDesk } from "../state/list-steps";
import type { PageState } from "../state/page-state";
import type { Question } from "./questions";
import { isRefusal } from "./wire-answers";
import type { CheckEntryAnswer, ListRowsAnswer, SaveAnswer, SaveRequest } from "./wire-lists";

const entries: Question = {
  engine: "rack",
  pose: ({ screen, list, desk: { inHand, view, rows, show, find } }) =>
    screen.name === "list" && view === "entries" && inHand !== 0
      ? { request: { do: "list", rows, show, find }, edition: list.edition, from: rows.from }
      : null,
  receive: (answer, { from = 0 }) =>
    isRefusal(answer) ? (state) => state : entriesTold(answer as ListRowsAnswer, from),
};

const check: Question = {
  engine: "rack",
  pose: ({ desk: { draft, page }, list }) =>
    draft === null
      ? null
      : {
          request: {
            do: "check_entry",
            cells: sentCells(draft, page?.answer.list?.units ?? null),
            ...(draft.number === null ? {} : { number: draft.number }),
          },
          edition: list.edition,
        },
  receive: (answer) =>
    onDesk(({ draft }) =>
      draft === null
        ? {}
        : { draft: { ...draft, checked: isRefusal(answer) ? null : (answer as CheckEntryAnswer) } },
    ),
};

function saveRequest({ desk: { save } }: PageState): SaveRequest {
  const only = save.only === "all" ? {} : { only: save.only };
  return save.form === "json"
    ? { do: "save", form: "json", ...only }
    : {
        do: "save",
        form: "csv",
        separator: save.separator,
        decimal: save.separator === ";" ? "," : ".",
        ...only,
      };
}

const saved: Question = {
  engine: "rack",
  pose: (state) =>
    state.screen.name === "list" && state.desk.view === "save"
      ? { request: saveRequest(state), edition: state.list.edition }
      : null,
  receive: (answer) =>
    onDesk(({ save }) => ({ save: { ...save, answer: isRefusal(answer) ? null : (answer as SaveAnswer) } })),
};

export const deskQuestions: Question[] = [entries, check, saved];
