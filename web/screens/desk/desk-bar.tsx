// What was done last, and the way to take it back: at hand on every screen of the list, by Ctrl+Z as well.
import { useEffect, useRef } from "preact/hooks";
import { usePage } from "../../page/page-context";
import { worded } from "../../parts/notes";
import { isTyped, listInHand } from "../../state/list-desk";
import { byCode } from "../../texts/texts";
import type { DeskState } from "../../state/list-desk";

export function DeskBar({ desk }: { desk: DeskState }) {
  const { texts, figures, work } = usePage();
  const { said, refused } = desk;
  const list = listInHand(desk);
  const words =
    said &&
    byCode(texts.desk.done, said.done.what, { name: said.done.name ?? null, count: said.done.count ?? 1 });
  const left = desk.page?.answer.counts.set_aside ?? 0;
  const { draft } = desk;
  const isBusy = (draft?.number ?? null) !== null && draft !== null && isTyped(draft);
  const canStep = list !== null && list.undo.length + list.redo.length > 0;
  const bar = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const root = bar.current?.getRootNode();
    const onKey = (event: Event): void => {
      const { key, ctrlKey, metaKey, altKey, shiftKey, target } = event as KeyboardEvent;
      const isStep = (ctrlKey || metaKey) && !altKey && /^[zy]$/i.test(key);
      // In a field the browser takes back what was typed there. On other screens the bar is out of sight.
      const inField =
        target instanceof HTMLElement && target.matches("input:not([type=radio],[type=checkbox]), textarea");
      if (!isStep || inField || isBusy || !bar.current?.offsetParent) return;
      event.preventDefault();
      const back = !shiftKey && key !== "y";
      if ((back ? list?.undo : list?.redo)?.length) void work.step(back);
    };
    root?.addEventListener("keydown", onKey);
    return () => root?.removeEventListener("keydown", onKey);
  }, [list, isBusy, work]);
  return (
    <>
      <div ref={bar} class={canStep ? "desk-bar" : ""}>
        <p role="status">
          {words != null && (said?.back ? texts.desk.back({ done: words }) : words)}
          {said?.done.toMend && ` ${texts.list.setAside({ number: left })}.`}
        </p>
        {canStep && (
          <>
            <Step way="undo" steps={isBusy ? 0 : list.undo.length} onStep={() => void work.step(true)} />
            <Step way="redo" steps={isBusy ? 0 : list.redo.length} onStep={() => void work.step(false)} />
          </>
        )}
      </div>
      {refused !== null && (
        <p class="sheet refused" role="alert">
          {worded(texts, figures, refused)}
        </p>
      )}
    </>
  );
}

/** Stays where it is when there is nothing more to step over, so that the focus stays too. */
function Step({ way, steps, onStep }: { way: "undo" | "redo"; steps: number; onStep: () => void }) {
  const { texts } = usePage();
  return (
    <button
      type="button"
      class={`plain-link ${way}`}
      aria-disabled={steps === 0}
      onClick={() => {
        if (steps > 0) onStep();
      }}
    >
      {texts.desk[way]}
    </button>
  );
}
