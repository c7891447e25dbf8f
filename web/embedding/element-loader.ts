// The one script that a club pastes into its page, built as saddlerule-fit.js. It makes <saddlerule-fit> known and is no
// larger than that takes: all else is loaded from beside it.
//
// It is written as a plain script, and works as a module too: editors of content management systems take attributes away,
// and a module without its type="module" would be an error of syntax.
import { app, engine, shared } from "element-app-file";
import { defineElement } from "./define-element";
import type { App } from "./define-element";

/**
 * What the document itself says. An element of the page named like a property of the document, such as an image called
 * currentScript, hides that property, and markup may be a stranger's: a comment, say.
 */
function ofDocument<Name extends "currentScript" | "scripts">(property: Name): Document[Name] {
  const own = Object.getOwnPropertyDescriptor(Document.prototype, property);
  return own?.get?.call(document) as Document[Name];
}

function scripts(): HTMLScriptElement[] {
  return Array.from(ofDocument("scripts"));
}

/** Where this script came from. A module does not know, and looks for its own name among the page's scripts. */
function ownAddress(): string {
  const running = ofDocument("currentScript");
  if (running instanceof HTMLScriptElement && running.src !== "") return running.src;
  return scripts().find(({ src }) => src.includes("saddlerule-fit"))?.src ?? location.href;
}

const own = "document" in globalThis ? ownAddress() : "";

/**
 * Where scripts are joined, or put into the page, a <script data-saddlerule="/saddlerule/"> names the folder. It is a script because
 * whoever can put one into a page needs no other way to run theirs.
 */
function from(): string {
  const named = scripts().find(({ dataset }) => dataset.saddlerule);
  return named === undefined
    ? own
    : new URL(`${named.dataset.saddlerule}/saddlerule-fit.js`, named.baseURI).href;
}

const loaded = (file: string): Promise<App> => import(new URL(file, from()).href) as Promise<App>;

/** A browser may have kept this script from before the files beside it were replaced: as it is now, it names others. */
async function loadedAnew(failure: unknown): Promise<App> {
  const response = await fetch(from(), { cache: "reload" });
  const [now] = /saddlerule-app-\w+\.js/.exec(await response.text()) ?? [];
  if (!response.ok || now === undefined || now === app) throw failure;
  return loaded(now);
}

async function load(): Promise<App> {
  // On a slow line a reader waits for the engine longest: it is fetched along with the scripts that will ask for it.
  const engineAhead = fetch(new URL(engine, from()).href);
  engineAhead.catch(() => undefined);
  // On its way with the one that asks for it.
  void loaded(shared).catch(() => undefined);
  const { start } = await loaded(app).catch(loadedAnew);
  return { start: (host) => start(host, engineAhead) };
}

defineElement({ version: app, from, load });
