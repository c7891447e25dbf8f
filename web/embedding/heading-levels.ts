// Headings inside an element take their place among those of the page around: its title is a heading of the level that the
// page gives it, and the others are below.

export interface Headings {
  /** The title is of this level from now on, 1 to 3. */
  from: (level: number) => void;
  stop: () => void;
}

/** @param host has its shadow root */
export function headingsFrom(host: Element): Headings {
  const { shadowRoot: room } = host;
  let shift = 0;
  const settle = (): void => {
    for (const heading of room?.querySelectorAll("h1, h2, h3, h4") ?? []) {
      const level = String(Number(heading.tagName.slice(1)) + shift);
      if (heading.getAttribute("aria-level") !== level) heading.setAttribute("aria-level", level);
    }
  };
  const observer = new MutationObserver(settle);
  if (room !== null) observer.observe(room, { childList: true, subtree: true });
  return {
    from(level) {
      shift = level - 1;
      settle();
    },
    stop: () => observer.disconnect(),
  };
}
