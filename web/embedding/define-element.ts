// <saddlerule-fit> as a page knows it before any of Saddlerule is there: what it shows until then, when it begins, and when it ends.
// All else is loaded once an element comes near the screen.

/** What element-entry.ts gives. */
export interface App {
  /** @param engineAhead the file of the engine, where it is on its way already */
  start: (host: HTMLElement, engineAhead?: Promise<Response>) => Running;
}

export interface Running {
  /** An attribute is another one now. */
  changed: () => void;
  /** The element is gone from the page. */
  end: () => void;
}

export interface Files {
  /** Tells one version from another. */
  version: string;
  /** Where they were looked for, for whoever wrote the page. */
  from: () => string;
  load: () => Promise<App>;
}

const name = "saddlerule-fit";

/** So many pixels below the screen, an element is near it. */
const ahead = 600;
const onOrOff = "browser-back";

/** Attributes, by what they are called as properties. */
const attributes = Object.entries({
  list: "list",
  language: "language",
  units: "units",
  currency: "currency",
  view: "view",
  headingLevel: "heading-level",
  browserBack: onOrOff,
});

/** Until Saddlerule is in it, an element shows what the page wrote between its tags, and is there to be scrolled to. */
function waitingRoom(host: HTMLElement): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(":host { display: block !important; min-height: 1px }");
  const room = host.attachShadow({ mode: "open" });
  const slot = document.createElement("slot");
  room.adoptedStyleSheets = [sheet];
  room.append(slot);
  // Editors that take a <script> away leave the list that was in it, for readers to see.
  const hideList = (): void => {
    slot.hidden = Array.from(host.childNodes).some(
      ({ nodeName, textContent }) => nodeName !== "SCRIPT" && /^\s*\{/.test(textContent ?? ""),
    );
  };
  slot.addEventListener("slotchange", hideList);
  hideList();
}

/** On a server, which has no elements, nothing happens. */
export function defineElement({ version, from, load }: Files): void {
  if (!("customElements" in globalThis)) return;
  const known = customElements.get(name) as { version?: string } | undefined;
  if (known !== undefined) {
    if (known.version !== version)
      console.warn(
        `${name}: another version of it is on this page already; the one from ${from()} is left out.`,
      );
    return;
  }

  let loading: Promise<App> | null = null;
  const loadOnce = (): Promise<App> => {
    loading ??= load().catch((failure: unknown) => {
      loading = null;
      throw failure;
    });
    return loading;
  };

  /** Begins while somebody still scrolls there. */
  const near = new IntersectionObserver(
    (seen) => {
      for (const { isIntersecting, target } of seen)
        if (isIntersecting && target instanceof SaddleruleFit) target.begin();
    },
    { rootMargin: `${ahead}px 0px` },
  );

  class SaddleruleFit extends HTMLElement {
    static observedAttributes = attributes.map(([, attribute]) => attribute);
    static version = version;

    #running: Promise<Running> | null = null;
    #leaving: ReturnType<typeof setTimeout> | undefined;
    #list: object | null = null;

    /** What the last event of each kind said, for a script that came too late to hear it. */
    told: Record<string, object> = {};

    constructor() {
      super();
      for (const what of ["list", "problem", "verdict"])
        this.addEventListener(`saddlerule-${what}`, (event) => {
          this.told[what] = (event as CustomEvent<object>).detail;
        });
    }

    /** Its address, or the list itself, which no attribute can hold. */
    get list(): string | object | null {
      return this.#list ?? this.getAttribute("list");
    }

    set list(list: string | object | null | undefined) {
      this.#list = typeof list === "object" ? list : null;
      if (typeof list === "string") this.setAttribute("list", list);
      else this.removeAttribute("list");
      if (this.#list !== null) this.attributeChangedCallback();
    }

    connectedCallback(): void {
      clearTimeout(this.#leaving);
      if (this.shadowRoot === null) {
        waitingRoom(this);
        this.#takeProperties();
      }
      if (this.#running !== null) return;
      // Somebody scanned the tag on a bike, and waits for what is here.
      if (/[#&]bike=/.test(location.hash)) this.begin();
      else near.observe(this);
      // A frame sooner than the observer tells it. In a page that is still being read, what names the folder may be yet to come.
      const [box] = document.readyState === "loading" ? [] : this.getClientRects();
      if (box !== undefined && box.top < innerHeight + ahead) void loadOnce().catch(() => undefined);
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
      this.#running = loadOnce().then((app) => app.start(this));
      this.#running.catch((failure: unknown) => {
        this.#running = null;
        const problem = `${name}: its files could not be loaded from beside ${from()} (${String(failure)}).`;
        console.warn(problem);
        const detail = { code: "files_not_loaded", problem };
        this.dispatchEvent(new CustomEvent("saddlerule-problem", { bubbles: true, composed: true, detail }));
      });
    }

    /** Those that were set before this class was there come before its own. */
    #takeProperties(): void {
      const given = this as unknown as Record<string, unknown>;
      for (const [property] of attributes) {
        if (!Object.hasOwn(this, property)) continue;
        const value = given[property];
        Reflect.deleteProperty(this, property);
        given[property] = value;
      }
    }

    #end(): void {
      this.told = {};
      void this.#running?.then(
        (running) => running.end(),
        () => undefined,
      );
      this.#running = null;
    }
  }

  for (const [property, attribute] of attributes) {
    if (property in SaddleruleFit.prototype) continue;
    const isText = attribute !== onOrOff;
    Object.defineProperty(SaddleruleFit.prototype, property, {
      get(this: HTMLElement) {
        return isText ? this.getAttribute(attribute) : this.hasAttribute(attribute);
      },
      set(this: HTMLElement, value: unknown) {
        if (isText ? value == null : !value) this.removeAttribute(attribute);
        else this.setAttribute(attribute, isText ? String(value) : "");
      },
    });
  }
  customElements.define(name, SaddleruleFit);
}
