// Something folded away under a line that says what it is.
import type { ComponentChildren } from "preact";

interface FoldProps {
  title: ComponentChildren;
  more?: string;
  open?: boolean;
  onFold?: (open: boolean) => void;
  children: ComponentChildren;
}

export function Fold({ title, more, open = false, onFold, children }: FoldProps) {
  return (
    <details class="fold" open={open} onToggle={(event) => onFold?.(event.currentTarget.open)}>
      <summary>
        <span>
          {title}
          {more !== undefined && <small> {more}</small>}
        </span>
      </summary>
      <div class="stack">{children}</div>
    </details>
  );
}
