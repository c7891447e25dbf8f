// What the page waits for, asked for as soon as there is any script: early-entry.ts comes long before the page's own. Small files
// come first, or they would wait behind the engine on a slow line. (A preload would do in some browsers; others fetch the file a
// second time.)
import { engine, thread } from "site-files";

export interface EarlyFiles {
  settings: Promise<Response>;
  engine: Promise<Response>;
}

const onPage = globalThis as { saddleruleEarly?: EarlyFiles };

function asked(path: string): Promise<Response> {
  const response = fetch(new URL(path, document.baseURI));
  // Whoever waits for it is told.
  response.catch(() => undefined);
  return response;
}

function askedInOrder(): EarlyFiles {
  const settings = asked("site-settings.json");
  // Into the browser's cache, where the worker finds it that the page starts later.
  void asked(thread);
  return { settings, engine: asked(engine) };
}

/** The same for every script of the page. Their bodies can be read once. */
export function earlyFiles(): EarlyFiles {
  return (onPage.saddleruleEarly ??= askedInOrder());
}
