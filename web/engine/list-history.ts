// How the engine came by the list it holds: told again to a fresh engine, it brings the same list back.
import type { EditRequest, EntryChange } from "./wire";
import type { Asked } from "./worker-messages";

/** A request that the engine granted, with the file that went beside it. */
export interface Step {
  request: Asked;
  file: Uint8Array | undefined;
}

/** The history once `step` was granted. What does not touch the list leaves it as it was. */
export function historyWith(history: Step[], step: Step): Step[] {
  const { request } = step;
  if (Array.isArray(request)) return history;
  switch (request.do) {
    case "load":
    case "new_list":
      return [step];
    case "edit":
      return withEdit(history, request);
    case "merge":
      return [...history, step];
    default:
      return history;
  }
}

/** A file, and the edits that made the list of it. */
export interface EditedFile {
  bytes: Uint8Array;
  encoding?: "windows-1252";
  edits: EntryChange[][];
}

/** null: the list came by in another way, such as a merge. */
export function editedFile([load, ...later]: Step[]): EditedFile | null {
  if (load?.file === undefined || Array.isArray(load.request) || load.request.do !== "load") return null;
  const { encoding, table_units } = load.request;
  const edits = later.flatMap(({ request }) =>
    !Array.isArray(request) && request.do === "edit" ? [request.changes] : [],
  );
  if (table_units !== undefined || edits.length < later.length) return null;
  return { bytes: load.file, ...(encoding && { encoding }), edits };
}

/** Edits that follow each other become one, so that many of them cost no more than a few. Repairs are the first of theirs. */
function withEdit(history: Step[], edit: EditRequest): Step[] {
  const last = history.at(-1);
  const before =
    last !== undefined && !Array.isArray(last.request) && last.request.do === "edit" ? last.request : null;
  if (before === null || edit.changes.some((change) => "repair_all" in change))
    return [...history, { request: edit, file: undefined }];
  const request = { ...edit, changes: [...before.changes, ...edit.changes] };
  return [...history.slice(0, -1), { request, file: undefined }];
}
