// The one script that a club pastes into its page, built as saddlerule-fit.js. It makes <saddlerule-fit> known and is no
// larger than that takes: all else is loaded from beside it once an element comes near the screen.
//
// It is written as a plain script, and works as a module too: editors of content management systems take attributes away,
// and a module without its type="module" would be an error of syntax.
import { app } from "element-app-file";

const name = "saddlerule-fit";

/** What element-app.ts gives. */
interface App {
  start: (host: HTMLElement) => Running;
}

export interface Running {
  /** An attribute is another one now. */
  changed: () => void;
  /** The element is gone from the page. */
  end: () => void;
}

/**
 * What the document itself says. An element of the page named like a property of the document, such as an image called
 * currentScript, hides that property, and markup may be a stranger's: a comment, say.
 */
function ofDocument<Name extends "currentScript" | "scripts">(property: Name): Document[Name] {
  const own = Object.getOwnPropertyDescriptor(Document.prototype, property);
  return own?.get?.call(document) as Document[Name];
}

/** Where this script came from. A module does not know, and looks for its own name among the page's scripts. */
function ownAddress(): string {
  const running = ofDocument("currentScript");
  if (running instanceof HTMLScriptElement && running.src !== "") return running.src;
  for (const script of Array.from(ofDocument("scripts")))
    if (script instanceof HTMLScriptElement && script.src.includes(name)) return script.src;
  return location.href;
}

const beside = ownAddress();

let loading: Promise<App> | null = null;

function load(): Promise<App> {
  loading ??= (import(new URL(app, beside).href) as Promise<App>).catch((failure: unknown) => {
    loading = null;
    throw failure;
  });
  return loading;
}

/** Begins while somebody still scrolls there. */
const near = new IntersectionObserver(
  (seen) => {
    for (const { isIntersecting, target } of seen)
      if (isIntersecting && target instanceof SaddleruleFit) target.begin();
  },
  { rootMargin: "600px 0px" },
);

/** Until Saddlerule is in it, an element shows what the page wrote between its tags, and is there to be scrolled to. */
function waitingRoom(host: HTMLElement): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(":host { display: block !important; min-height: 1px }");
  const room = host.attachShadow({ mode: "open" });
  room.adoptedStyleSheets = [sheet];
  room.append(document.createElement("slot"));
}

class SaddleruleFit extends HTMLElement {
  static observedAttributes = ["list", "language", "units", "currency", "view", "heading-level"];
  /** Tells one version from another. */
  static files = app;

  #running: Promise<Running> | null = null;
  #leaving: ReturnType<typeof setTimeout> | undefined;

  connectedCallback(): void {
    clearTimeout(this.#leaving);
    if (this.shadowRoot === null) waitingRoom(this);
    if (this.#running !== null) return;
    // Somebody scanned the tag on a bike, and waits for what is here.
    if (/[#&]bike=/.test(location.hash)) this.begin();
    else near.observe(this);
  }

  /** Moved within the page it is there again before the task is over, and goes on as it was. */
  disconnectedCallback(): void {
    near.unobserve(this);
    this.#leaving = setTimeout(() => {
      if (!this.isConnected) this.#end();
    });
  }

  /** In another document, style sheets of this one do not hold. */
  adoptedCallback(): void {
    this.#end();
    if (this.isConnected) near.observe(this);
  }

  attributeChangedCallback(): void {
    void this.#running?.then(
      (running) => running.changed(),
      () => undefined,
    );
  }

  begin(): void {
    near.unobserve(this);
    if (this.#running !== null) return;
    this.#running = load().then((given) => given.start(this));
    this.#running.catch((failure: unknown) => {
      this.#running = null;
      const problem = `${name}: its files could not be loaded from beside ${beside} (${String(failure)}).`;
      console.warn(problem);
      const detail = { code: "files_not_loaded", problem };
      this.dispatchEvent(new CustomEvent("saddlerule-problem", { bubbles: true, composed: true, detail }));
    });
  }

  #end(): void {
    void this.#running?.then(
      (running) => running.end(),
      () => undefined,
    );
    this.#running = null;
  }
}

const known = customElements.get(name) as { files?: string } | undefined;
if (known === undefined) customElements.define(name, SaddleruleFit);
else if (known.files !== app)
  console.warn(`${name}: another version of it is on this page already; the one from ${beside} is left out.`);
