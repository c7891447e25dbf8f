// A list that is in the page itself, as <script type="application/json"> between an element's tags.
import type { ListSource } from "../engine/list-opening";

function textIn(host: Element): string | null {
  const script = host.querySelector(":scope > script[type='application/json']");
  return script === null || host.hasAttribute("list") ? null : script.textContent;
}

/** Opens it, and again when it is another one; the attribute `list` goes before it. Returns the way to stop. */
export function followInline(host: Element, open: (source: ListSource) => void): () => void {
  let last: string | null = null;
  const look = (): void => {
    const text = textIn(host);
    if (text === null || text === last) return;
    last = text;
    const bytes = new TextEncoder().encode(text);
    open({ name: "inline.json", sample: false, named: true, bytes: () => Promise.resolve(bytes) });
  };
  look();
  const observer = new MutationObserver(look);
  observer.observe(host, { childList: true, subtree: true, characterData: true });
  return () => observer.disconnect();
}
