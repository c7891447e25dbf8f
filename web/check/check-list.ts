// Whether there is a list at an address, and what the engine reads in it.
import { openEngine } from "../../wasm-bindings/engine-client.js";
import { causeOf } from "../embedding/tell-refusal";
import { addressSource } from "../engine/list-address";
import { isRefusal } from "../engine/refusal";
import type { RefusalNote } from "../engine/refusal";
import { textsIn } from "../texts/texts";
import { good, note, wrong } from "./findings";
import type { Finding } from "./findings";

interface Loaded {
  list: { title: string | null; bikes: number };
  set_aside: unknown[];
}

const bikes = (count: number): string => (count === 1 ? "1 bike" : `${count} bikes`);

export async function checkList(
  address: URL,
  compiled: () => Promise<WebAssembly.Module>,
): Promise<Finding[]> {
  const refused = (refusal: RefusalNote): Finding[] => [
    wrong(
      `The list ${address.href} cannot be read: ${causeOf(textsIn("en", "en-GB"), refusal)} (${refusal.code})`,
    ),
  ];
  const bytes = await addressSource(address).bytes(() => undefined, new AbortController().signal);
  if (!(bytes instanceof Uint8Array)) return refused(bytes.error);
  const engine = await openEngine(await compiled());
  const answer = engine.ask({ do: "load" }, bytes) as object;
  if (isRefusal(answer)) return refused(answer.error);
  const { list, set_aside: aside } = answer as Loaded;
  const named = list.title === null ? "" : `, called “${list.title}”`;
  return [
    good(`The list ${address.href} has ${bikes(list.bikes)}${named}.`),
    ...(aside.length === 0
      ? []
      : [note(`${aside.length} of its entries cannot be read; the screen “List” says why.`)]),
    ...(await staysAsked(address)),
  ];
}

/** Lists that hosts let be cached for days are renewed late in a page; the site asks anew all the same. */
async function staysAsked(address: URL): Promise<Finding[]> {
  const response = await fetch(address, { cache: "no-store", credentials: "omit" });
  await response.body?.cancel();
  const [, seconds] = /max-age=(\d+)/.exec(response.headers.get("cache-control") ?? "") ?? [];
  if (Number(seconds ?? 0) <= 3600) return [];
  return [
    note(
      `Browsers may hold the list for ${Math.round(Number(seconds) / 3600)} hours before they ask for a newer one.`,
    ),
  ];
}
