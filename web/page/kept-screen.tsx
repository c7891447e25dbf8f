// A screen that is drawn again only when something that it was drawn from has changed, and not at all while it is out of sight.
import { Component } from "preact";
import type { ComponentChildren } from "preact";
import type { PageState } from "../state/page-state";

interface KeptScreenProps {
  seen: boolean;
  state: PageState;
  children: (state: PageState) => ComponentChildren;
}

export class KeptScreen extends Component<KeptScreenProps> {
  /** The parts of the state that were looked at for what is on the page. */
  private drawnFrom = new Map<keyof PageState, unknown>();

  override shouldComponentUpdate({ seen, state }: KeptScreenProps): boolean {
    return seen && [...this.drawnFrom].some(([name, part]) => part !== state[name]);
  }

  override render({ state, children }: KeptScreenProps): ComponentChildren {
    const drawnFrom = new Map<keyof PageState, unknown>();
    this.drawnFrom = drawnFrom;
    return children(
      new Proxy(state, {
        get(from, name: keyof PageState) {
          drawnFrom.set(name, from[name]);
          return from[name];
        },
      }),
    );
  }
}
