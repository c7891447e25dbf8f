// What an element minds in a page that nobody here wrote: where its navigation is in sight, and that nobody else takes what is typed into
// it.

import { around } from "./around";

const typedInto = "input, textarea, select";

/** A page's shortcuts guard against fields by the target of a key, which from outside is the element and no field. */
function keepKey(event: Event): void {
  const { key, ctrlKey, metaKey, altKey } = event as KeyboardEvent;
  const [target] = event.composedPath();
  const isTyping = target instanceof Element && target.matches(typedInto);
  if (isTyping && key.length === 1 && !ctrlKey && !metaKey && !altKey) event.stopPropagation();
}

/** What sticks to an edge inside something that clips and does not scroll is at that edge, wherever the screen is. */
function sticksOutOfSight(host: Element): boolean {
  for (let at = around(host); at !== null && at !== document.documentElement; at = around(at)) {
    const { overflowY } = getComputedStyle(at);
    if (overflowY === "visible" || overflowY === "clip") continue;
    // The screen itself scrolls in its place.
    const ofScreen =
      at.localName === "body" && getComputedStyle(document.documentElement).overflowY === "visible";
    if (!ofScreen) return overflowY === "hidden" || at.scrollHeight <= at.clientHeight;
  }
  return false;
}

/** Returns the way to stop. */
export function mindHost(host: HTMLElement): () => void {
  const room = host.shadowRoot?.querySelector(".room");
  const look = (): void => {
    room?.classList.toggle("clipped", sticksOutOfSight(host));
  };
  const observer = new ResizeObserver(look);
  observer.observe(host);
  const kinds = ["keydown", "keypress", "keyup"];
  for (const kind of kinds) room?.addEventListener(kind, keepKey);
  return () => {
    observer.disconnect();
    for (const kind of kinds) room?.removeEventListener(kind, keepKey);
  };
}
