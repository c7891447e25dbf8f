// The parts that a page around may style with ::part(): each is called like the class that it has inside.
import { options } from "preact";

const parts = ["head", "navigation", "screen", "sheet", "row", "button", "main"];

/** From now on, whatever is drawn bears its part. Once for a page. */
export function giveParts(): void {
  options.vnode = ({ type, props }) => {
    const given = props as { class?: unknown; part?: string };
    if (typeof type !== "string" || typeof given.class !== "string") return;
    const part = given.class.split(" ").filter((name) => parts.includes(name));
    if (part.length > 0) given.part = part.join(" ");
  };
}
