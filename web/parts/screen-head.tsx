// The head of a screen: its title, which takes the focus when the screen comes up, and a line below.
import type { ComponentChildren } from "preact";

interface ScreenHeadProps {
  title: string;
  aside?: ComponentChildren;
  children?: ComponentChildren;
}

export function ScreenHead({ title, aside, children }: ScreenHeadProps) {
  return (
    <header class="screen-head">
      <div class="title-row">
        <h2 class="screen-title" tabIndex={-1}>
          {title}
        </h2>
        {aside}
      </div>
      {children}
    </header>
  );
}
