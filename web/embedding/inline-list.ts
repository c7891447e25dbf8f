// A list that is in the page itself, as <script type="application/json"> between an element's tags.
import type { ListSource } from "../engine/list-opening";
import { refused } from "../engine/refusal";
import { listIn, mended } from "./inline-text";
import { tellWebmaster } from "./tell-webmaster";

interface Written {
  text: string;
  /** What was done to the script itself. */
  done: string[];
}

/** The script that has a list in it, wherever an editor left it and whatever it took from it; or the list without one. */
function writtenIn(host: Element): Written | null {
  if (host.hasAttribute("list")) return null;
  const script =
    host.querySelector("script[type='application/json']") ?? host.querySelector("script:not([src])");
  if (script?.textContent) return { text: script.textContent, done: [] };
  const text = listIn(host.textContent);
  return text === null ? null : { text, done: ["took its <script> away"] };
}

const unreadable = refused("inline_rewritten");

const advice = 'To be safe, put the list into a file and name its address: list="/bikes.json".';

/** Opens it, and again when it is another one; the attribute `list` goes before it. Returns the way to stop. */
export function followInline(host: Element, open: (source: ListSource) => void): () => void {
  let last: string | null = null;
  const look = (): void => {
    const written = writtenIn(host);
    if (written === null || written.text === last) return;
    last = written.text;
    const { text, done, usable } = mended(written.text);
    const all = [...written.done, ...done];
    if (all.length > 0)
      tellWebmaster(
        `about the list between the tags, the editor of this website ${all.join(", and ")}. ` +
          `${usable ? "It was read all the same." : "It cannot be read any more."} ${advice}`,
      );
    const bytes = usable ? new TextEncoder().encode(text) : unreadable;
    open({ name: "inline.json", sample: false, named: true, bytes: () => Promise.resolve(bytes) });
  };
  look();
  const observer = new MutationObserver(look);
  observer.observe(host, { childList: true, subtree: true, characterData: true });
  return () => observer.disconnect();
}
