// What the work on a list keeps asking: the entries near the screen, the check of what is typed, the list as it would be saved.
import type { Question } from "../state/answers";
import { sentCells } from "../state/list-drafts";
import { entriesTold } from "../state/list-steps";
import type { PageState } from "../state/page-state";
import type { CheckEntryAnswer, ListRowsAnswer, SaveAnswer, SaveRequest } from "./wire";

const entries: Question<ListRowsAnswer> = {
  name: "entries",
  engine: "rack",
  pose: ({ screen, list, desk: { inHand, view, rows, show, find } }) =>
    screen.name === "list" && view === "entries" && inHand !== 0
      ? { request: { do: "list", show, find }, edition: list.edition, rows }
      : null,
  // Every step on the list tells its entries too: they have a place of their own.
  receive: (answer, { rows }) => entriesTold(answer, rows?.from ?? 0),
};

export const checkQuestion: Question<CheckEntryAnswer> = {
  name: "check",
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
          // The list changes with every bike that comes into it, and the next one begins.
          subject: `${list.edition} ${draft.number}`,
        },
};

function saveRequest({ desk: { save } }: PageState): SaveRequest {
  const only = save.only === "all" ? {} : { only: save.only };
  return save.form !== "csv"
    ? { do: "save", form: "json", ...only }
    : {
        do: "save",
        form: "csv",
        separator: save.separator,
        decimal: save.separator === ";" ? "," : ".",
        ...only,
      };
}

export const savedQuestion: Question<SaveAnswer> = {
  name: "saved",
  engine: "rack",
  pose: (state) =>
    state.screen.name === "list" && state.desk.view === "save"
      ? { request: saveRequest(state), edition: state.list.edition }
      : null,
};

export const deskQuestions = [entries, checkQuestion, savedQuestion];
