// What may not be here yet: it says that it is on its way, or that it did not come, with the way to try again.
import type { JSX } from "preact";
import { useEffect } from "preact/hooks";
import { ScreenHead } from "../parts/screen-head";
import type { ListState, PageState } from "../state/page-state";
import type { Later, LaterParts } from "./later-loading";
import { usePage } from "./page-context";

export function LaterScreen({ state }: { state: PageState }) {
  const { texts } = usePage();
  const { parts, lost } = useLater();
  if (parts !== null) return <parts.LaterScreen state={state} />;
  return (
    <>
      <ScreenHead title={lost ? texts.later.lost : texts.later.coming} />
      <div class="inset">
        <TryAgain />
      </div>
    </>
  );
}

/** What is inside something that is folded away at first. */
export function Inside({ children }: { children: (parts: LaterParts) => JSX.Element }) {
  const { texts } = usePage();
  const { parts, lost } = useLater();
  if (parts !== null) return children(parts);
  return (
    <>
      <p role="status">{lost ? texts.later.lost : texts.later.coming}</p>
      <TryAgain />
    </>
  );
}

/** What is wrong with a list, on a screen that is here. */
export function ListRefused({ list }: { list: ListState }) {
  return list.refusal === null ? null : <RefusedNow list={list} />;
}

function RefusedNow({ list }: { list: ListState }) {
  const { texts } = usePage();
  const { parts } = useLater();
  if (parts !== null) return <parts.ListRefused list={list} />;
  return (
    <section class="sheet stack" role="alert">
      <p>{texts.list.refused({ fileName: list.refusal?.fileName ?? "" })}</p>
      <TryAgain />
    </section>
  );
}

/** Asks for the rest where it is not here. What did not come is asked for again once somebody says so, or comes anew. */
function useLater(): Later {
  const { later } = usePage();
  const { fetch } = later;
  useEffect(fetch, [fetch]);
  return later;
}

function TryAgain() {
  const { texts, later } = usePage();
  if (!later.lost) return null;
  return (
    <section class="stack" role="alert">
      <p>{texts.later.lostWhy}</p>
      <button type="button" class="button main" onClick={later.fetch}>
        {texts.list.tryAgain}
      </button>
    </section>
  );
}
