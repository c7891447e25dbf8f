// A list that is in the page itself: as <script type="application/json"> between an element's tags, or as the element's property.
import type { ListSource } from "../engine/list-opening";
import { refused } from "../engine/refusal";
import type { Refusal } from "../engine/refusal";
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

/** The list that a script of the page gave to the element itself. */
function givenTo(host: Element): string | null {
  const { list } = host as { list?: unknown };
  return typeof list === "object" && list !== null ? JSON.stringify(list) : null;
}

const unreadable = refused("inline_rewritten");

const advice = 'To be safe, put the list into a file and name its address: list="/bikes.json".';

export interface FollowInline {
  /** The element's property may be another one. */
  look: () => void;
  stop: () => void;
}

/** Opens it, and again when it is another one; `where` it is, is for the webmaster. The attribute `list` goes before what is between the tags. */
export function followInline(host: Element, open: (source: ListSource, where: string) => void): FollowInline {
  let last: string | null = null;
  const openBytes = (bytes: Uint8Array | Refusal, where: string): void =>
    open({ name: "inline.json", sample: false, named: true, bytes: () => Promise.resolve(bytes) }, where);
  const look = (): void => {
    const given = givenTo(host);
    if (given !== null) {
      if (given !== last) openBytes(new TextEncoder().encode(given), "that a script gave it");
      last = given;
      return;
    }
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
    openBytes(usable ? new TextEncoder().encode(text) : unreadable, "between the tags");
  };
  look();
  const observer = new MutationObserver(look);
  observer.observe(host, { childList: true, subtree: true, characterData: true });
  return { look, stop: () => observer.disconnect() };
}
