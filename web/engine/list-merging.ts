// Another list, open or from a file, beside the one in hand: compared by the engine, and taken in as wished.
import { listsCompared, mergeDropped, mergeRequest } from "../state/list-merging";
import { deskRefused, viewed } from "../state/list-steps";
import type { DeskAsking } from "./desk-asking";
import { encodingOf } from "./list-shelf";
import type { FileBytes, ListShelf } from "./list-shelf";
import { unreadable } from "./list-opening";
import type { ListSource } from "./list-opening";
import type { CompareAnswer } from "./wire";

export interface ListMerging {
  compareList: (key: number, name: string) => Promise<void>;
  compareFile: (source: ListSource) => Promise<void>;
  merge: () => Promise<void>;
}

export function listMerging(
  { desk, change, asked, stepped, inTurn }: DeskAsking,
  shelf: Pick<ListShelf, "fileOf">,
): ListMerging {
  let beside: FileBytes | null = null;

  async function compare(name: string, other: FileBytes | null): Promise<void> {
    if (other === null) return;
    const answer = await asked<CompareAnswer>({ do: "compare", ...encodingOf(other) }, other.bytes);
    if (answer === null) return;
    beside = other;
    change(listsCompared(name, answer));
  }

  return {
    compareList: inTurn((key: number, name: string) => compare(name, shelf.fileOf(key))),
    compareFile: inTurn(async (source: ListSource) => {
      const bytes = await source.bytes(() => undefined, new AbortController().signal).catch(() => unreadable);
      if (bytes instanceof Uint8Array) await compare(source.name, { bytes });
      else change(deskRefused(bytes.error));
    }),
    merge: inTurn(async () => {
      const { merge } = desk();
      if (merge === null || beside === null) return;
      const request = { ...mergeRequest(merge), ...encodingOf(beside) };
      if (!(await stepped(request, { what: "merged", name: merge.name }, beside.bytes))) return;
      change(mergeDropped());
      change(viewed("entries"));
    }),
  };
}
