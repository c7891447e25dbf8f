// Something folded away under a line that says what it is.
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

interface FoldProps {
  title: ComponentChildren;
  more?: string;
  open?: boolean;
  onFold?: (open: boolean) => void;
  children: ComponentChildren;
}

/** What is inside is drawn when it is wanted first: a screen with many folds is there sooner. */
export function Fold({ title, more, open = false, onFold, children }: FoldProps) {
  const [wanted, setWanted] = useState(open);
  return (
    <details
      class="fold"
      open={open}
      onToggle={({ currentTarget }) => {
        setWanted(true);
        onFold?.(currentTarget.open);
      }}
    >
      {/* The press comes before the unfolding, so that nothing is unfolded empty. */}
      <summary onClick={() => setWanted(true)}>
        <span>
          {title}
          {more !== undefined && <small> {more}</small>}
        </span>
      </summary>
      <div class="stack">{(wanted || open) && children}</div>
    </details>
  );
}
