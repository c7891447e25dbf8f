// How the engine came by the list it holds: told again to a fresh engine, it brings the same list back.
import type { EngineRequest } from "./wire-requests";
import type { EditRequest } from "./wire-lists";

/** A request that the engine granted, with the file that went beside it. */
export interface Step {
  request: EngineRequest;
  file: Uint8Array | undefined;
}

/** The history once `step` was granted. What does not touch the list leaves it as it was. */
export function historyWith(history: Step[], step: Step): Step[] {
  switch (step.request.do) {
    case "load":
    case "new_list":
      return [step];
    case "edit":
      return withEdit(history, step.request);
    case "merge":
      return [...history, step];
    default:
      return history;
  }
}

/** Edits that follow each other become one, so that many of them cost no more than a few. */
function withEdit(history: Step[], edit: EditRequest): Step[] {
  const last = history.at(-1);
  if (last?.request.do !== "edit") return [...history, { request: edit, file: undefined }];
  const request = { ...edit, changes: [...last.request.changes, ...edit.changes] };
  return [...history.slice(0, -1), { request, file: undefined }];
}
