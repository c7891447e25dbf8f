// What <saddlerule-fit> loads once it is near the screen: Saddlerule for any number of elements, which share one engine.
import { engine, laterWords, thread, words } from "element-files";
import { engineOpener } from "../engine/engine-opening";
import { compiledFrom } from "../engine/inflating";
import { addressSource } from "../engine/list-address";
import type { ListSource } from "../engine/list-opening";
import { laterLoaded } from "../page/later-loading";
import type { LoadedParts } from "../page/later-loading";
import { mountSaddlerule } from "../page/mount-saddlerule";
import { followHistory } from "../page/screen-history";
import { scriptAddress } from "../page/trusted-scripts";
import type { OtherLanguage } from "../texts/languages";
import { tellChanges, tellOutside } from "./element-events";
import type { Running } from "./define-element";
import { giveParts } from "./element-parts";
import { followSettings } from "./follow-settings";
import { headingsFrom } from "./heading-levels";
import { mindHost } from "./in-its-host";
import { followInline } from "./inline-list";
import { printAlone } from "./print-alone";
import { tagAddresses } from "./tag-address";
import { misunderstoodWords, readSettings } from "./settings";
import type { Misunderstood } from "./settings";
import { tellRefusal } from "./tell-refusal";
import { tellWebmaster } from "./tell-webmaster";

/** A cache may still say what was so before the files were replaced. */
async function fetched(address: string): Promise<Response> {
  const asked = (cache: RequestCache): Promise<Response> =>
    fetch(address, { cache }).catch((failure: unknown) => {
      throw lost(`its file ${address} does not come: ${String(failure)}.`);
    });
  const first = await asked("default");
  const response = first.ok ? first : await asked("reload");
  if (!response.ok) throw lost(`its file ${address} is not there: the server said ${response.status}.`);
  return response;
}

const causes = new Set<string>();

/** Readers are told that something went wrong, and the webmaster what. */
function lost(cause: string): Error {
  causes.add(cause);
  tellWebmaster(cause);
  return new Error(cause);
}

/** So small a file, a bundler may have put into the script. */
function workerAddress(): string {
  if (!thread.startsWith("data:")) return thread;
  const text = atob(thread.slice(thread.indexOf(",") + 1));
  return URL.createObjectURL(new Blob([text], { type: "text/javascript" }));
}

let engineAhead: Promise<Response> | undefined;

/** The one on its way, unless it is of another version, was used up, or did not come. */
async function engineFile(): Promise<Response> {
  const ahead = await engineAhead?.catch(() => undefined);
  return ahead?.ok === true && ahead.url === engine && !ahead.bodyUsed ? ahead : fetched(engine);
}

const engines = engineOpener({
  compiled: async () => {
    const { body } = await engineFile();
    if (body === null) throw lost(`its file ${engine} is empty.`);
    return compiledFrom(body).catch((failure: unknown) => {
      throw lost(`its file ${engine} does not run: ${String(failure)}.`);
    });
  },
  // A page that has this script from another origin has the engine on the page itself.
  startWorker: () => new Worker(scriptAddress(workerAddress())),
});

const spoken = new Map<string, Promise<string>>();

const wordsFrom =
  (addresses: Record<OtherLanguage, string>) =>
  (language: OtherLanguage): Promise<string> => {
    const address = addresses[language];
    const known = spoken.get(address) ?? fetched(address).then((response) => response.text());
    spoken.set(address, known);
    known.catch(() => spoken.delete(address));
    return known;
  };

giveParts();

const usualHeading = 2;

/** @param loadLater gives what element-later.ts has */
export function startWith(
  host: HTMLElement,
  loadLater: () => Promise<LoadedParts>,
  ahead?: Promise<Response>,
): Running {
  engineAhead ??= ahead;
  const told = new Set<string>();
  const misunderstood = ({ name, value, expected }: Misunderstood): void => {
    if (told.has(`${name} ${value}`)) return;
    told.add(`${name} ${value}`);
    const problem = misunderstoodWords({ name, value, expected });
    tellWebmaster(`<saddlerule-fit> ${problem}`);
    tellOutside(host, "problem", {
      code: "attribute_not_understood",
      problem,
      attribute: name,
      value,
      expected,
    });
  };
  // A tag on a bike leads to the page around, and says in its address which bike it is on.
  const given = (name: string): string | null =>
    name === "bike" ? new URLSearchParams(location.hash.slice(1)).get(name) : host.getAttribute(name);
  const listAt = (list: string): ListSource => addressSource(new URL(list, document.baseURI));

  /** The page was opened before its files were replaced, or there is no network now. */
  const tellLost = (failure: unknown): never => {
    const cause = `a part of it does not come: ${String(failure)}.`;
    tellOutside(host, "problem", { code: "files_not_loaded", problem: cause });
    throw lost(cause);
  };

  const settings = readSettings(given, misunderstood);
  const fallback = host.shadowRoot?.querySelector("slot");
  const mounted = mountSaddlerule(host, {
    engines,
    packedWords: wordsFrom(words),
    later: laterLoaded(
      () => loadLater().catch(tellLost),
      (language) => wordsFrom(laterWords)(language).catch(tellLost),
    ),
    settings,
    // What is kept in a browser belongs to the whole website, whose other pages could read it.
    samples: [],
    tagAddresses: tagAddresses([]),
    print: () => printAlone(host),
    // The first time it is drawn.
    onLanguage: () => fallback?.remove(),
  });
  const stopTelling = tellChanges(host, mounted, causes);
  const stopMinding = mindHost(host);
  const headings = headingsFrom(host);
  const setHeadings = (): void => {
    const value = given("heading-level")?.trim() ?? null;
    const level = value === null || /^[1-3]$/.test(value) ? Number(value ?? usualHeading) : null;
    if (level === null) misunderstood({ name: "heading-level", value: value ?? "", expected: "1, 2 or 3" });
    headings.from(level ?? usualHeading);
  };
  const setScheme = (): void => {
    // A page says with this property of CSS whether it has a dark look.
    const isDarkAtTimes = getComputedStyle(host).colorScheme.includes("dark");
    host.shadowRoot?.querySelector(".room")?.classList.toggle("light", !isDarkAtTimes);
  };
  let stopHistory: (() => void) | null = null;
  const setHistory = (): void => {
    // The history belongs to the page around, and is left alone unless that page says so.
    if (host.hasAttribute("browser-back")) {
      stopHistory ??= followHistory(mounted.store, { name: nameOf(host) });
    } else {
      stopHistory?.();
      stopHistory = null;
    }
  };
  setHeadings();
  setScheme();
  setHistory();
  const follow = followSettings(mounted, settings, listAt);
  if (settings.bike !== null) host.scrollIntoView();
  const inline = followInline(
    host,
    (source, where) => void mounted.openList(source).then(() => tellRefusal(mounted, where)),
  );
  const followAddress = (): void => follow(readSettings(given, misunderstood));
  addEventListener("hashchange", followAddress);
  return {
    changed() {
      followAddress();
      inline.look();
      setHeadings();
      setScheme();
      setHistory();
    },
    end() {
      removeEventListener("hashchange", followAddress);
      stopHistory?.();
      inline.stop();
      stopTelling();
      stopMinding();
      headings.stop();
      mounted.unmount();
      if (fallback != null) host.shadowRoot?.append(fallback);
    },
  };
}

/** The same when the page is loaded anew. */
function nameOf(host: HTMLElement): string {
  return host.id || String([...document.querySelectorAll(host.localName)].indexOf(host));
}
