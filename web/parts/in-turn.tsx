// Parts of a long screen that are drawn one after another, a frame each, so that whatever is pressed meanwhile is answered at once.
import { Fragment } from "preact";
import type { ComponentChild } from "preact";
import { useEffect, useState } from "preact/hooks";

export function InTurn({ children }: { children: ComponentChild[] }) {
  const [shown, show] = useState(1);
  // Runs once what is shown has been painted.
  useEffect(() => {
    if (shown < children.length) show(shown + 1);
  }, [shown, children.length]);
  return <Fragment>{children.slice(0, shown)}</Fragment>;
}
