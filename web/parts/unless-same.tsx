// A part of the page that is drawn again only when something was put into it that was not there before.
import type { Component, ComponentChildren } from "preact";

export function unlessSame<Props extends object>(Part: (props: Props) => ComponentChildren) {
  return function (this: Component<Props>, props: Props): ComponentChildren {
    this.shouldComponentUpdate = (next) =>
      (Object.keys(next) as (keyof Props)[]).some((name) => next[name] !== props[name]);
    return Part(props);
  };
}
