// Opening a list of bikes: its bytes go to the engine, and what the engine made of it to the state.
import { afterPaint } from "./after-paint";
import { listOpened, listOpening, listRefused } from "../state/list-changes";
import type { PageState } from "../state/page-state";
import type { Store } from "../state/store";
import type { Engine } from "./engine-door";
import { isRefusal } from "./wire-answers";
import type { ListAnswer } from "./wire-answers";

export interface ListSource {
  name: string;
  sample: boolean;
  bytes: () => Promise<Uint8Array>;
}

export function fileSource(file: File): ListSource {
  return {
    name: file.name,
    sample: false,
    bytes: async () => new Uint8Array(await file.arrayBuffer()),
  };
}

export async function openList(store: Store<PageState>, engine: Engine, source: ListSource): Promise<void> {
  store.change(listOpening());
  // Reading a long list takes the page a moment: it says so first.
  await afterPaint();
  const bytes = await source.bytes().catch(() => null);
  if (bytes === null) {
    store.change(listRefused(source.name, unreadable));
    return;
  }
  const loaded = await engine.ask({ do: "load" }, bytes);
  const list = isRefusal(loaded) ? loaded : await engine.ask({ do: "list" });
  store.change(
    isRefusal(list) ? listRefused(source.name, list) : listOpened(list as ListAnswer, source.sample),
  );
}

/** The device would not give the file: moved, or taken away, since it was chosen. */
const unreadable = {
  error: {
    code: "file_not_given",
    where: "",
    problem: "the device could not read the file",
    expected: "a file that is still where it was",
    figures: {},
  },
};
