// A screen that is drawn again only when what it shows has changed, and not at all while it is out of sight.
import { Component } from "preact";
import type { ComponentChildren } from "preact";

interface KeptScreenProps {
  seen: boolean;
  /** All that the screen is drawn from. */
  from: unknown[];
  children: () => ComponentChildren;
}

export class KeptScreen extends Component<KeptScreenProps> {
  /** What stands on the page; out of sight it may be older than the last props. */
  private drawnFrom: unknown[] = [];

  override shouldComponentUpdate({ seen, from }: KeptScreenProps): boolean {
    return seen && from.some((part, place) => part !== this.drawnFrom[place]);
  }

  override render({ from, children }: KeptScreenProps): ComponentChildren {
    this.drawnFrom = from;
    return children();
  }
}
