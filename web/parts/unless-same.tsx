// A part of the page that is drawn again only when something was put into it that was not there before.
import { Component } from "preact";
import type { ComponentChildren, FunctionComponent } from "preact";

export function unlessSame<Props extends object>(Part: FunctionComponent<Props>): new () => Component<Props> {
  return class extends Component<Props> {
    override shouldComponentUpdate(next: Readonly<Props>): boolean {
      const { props } = this;
      return (Object.keys(next) as (keyof Props)[]).some((name) => next[name] !== props[name]);
    }

    override render(props: Readonly<Props>): ComponentChildren {
      return <Part {...props} />;
    }
  };
}
