// A screen of parts that may have to be loaded first: until then its title and an empty place, or that it did not come.
import type { ComponentChildren } from "preact";
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { ScreenHead } from "../parts/screen-head";
import { focusTitle } from "./focus";
import type { LaterParts } from "./later";
import { usePage } from "./page-context";

interface LaterScreenProps {
  title: string;
  children: (parts: LaterParts) => ComponentChildren;
}

export function LaterScreen({ title, children }: LaterScreenProps) {
  const { texts, later } = usePage();
  const [attempt, setAttempt] = useState(1);
  const [lastFailed, setLastFailed] = useState(0);
  const [, setHere] = useState(false);
  const awaited = useRef<HTMLDivElement>(null);
  /** Where the title that waited had the focus, the one that came takes it. */
  const focusIn = useRef<Element | null>(null);
  const parts = later.now();

  useLayoutEffect(() => {
    if (later.now() !== null) return;
    let isShown = true;
    later.load().then(
      () => {
        if (!isShown) return;
        if (awaited.current?.querySelector(":focus") != null)
          focusIn.current = screensAround(awaited.current);
        setHere(true);
      },
      () => {
        if (isShown) setLastFailed(attempt);
      },
    );
    return () => {
      isShown = false;
    };
  }, [later, attempt]);

  useLayoutEffect(() => {
    if (parts === null || focusIn.current === null) return;
    focusTitle(focusIn.current);
    focusIn.current = null;
  }, [parts]);

  if (parts !== null) return <>{children(parts)}</>;
  const hasFailed = lastFailed === attempt;
  return (
    <div ref={awaited} class="awaited" aria-busy={!hasFailed}>
      <ScreenHead title={title} />
      <div class="inset" role="alert">
        {hasFailed && (
          <section class="sheet stack refused">
            <p>{texts.problems.wording.internal}</p>
            <button
              type="button"
              class="button"
              onClick={({ currentTarget }) => {
                // The button goes.
                focusTitle(screensAround(currentTarget));
                setAttempt(attempt + 1);
              }}
            >
              {texts.list.tryAgain}
            </button>
          </section>
        )}
      </div>
    </div>
  );
}

function screensAround(element: Element): Element {
  return element.closest(".screens") ?? element;
}
