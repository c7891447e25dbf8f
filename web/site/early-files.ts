// The two files that the page waits for, asked for as soon as there is any script: early-entry.ts comes long before the page's
// own. (A preload would do in some browsers; others fetch the file a second time.)
import { engine } from "site-files";

export interface EarlyFiles {
  engine: Promise<Response>;
  settings: Promise<Response>;
}

const onPage = globalThis as { saddleruleEarly?: EarlyFiles };

function asked(path: string): Promise<Response> {
  const response = fetch(new URL(path, document.baseURI));
  // Whoever waits for it is told.
  response.catch(() => undefined);
  return response;
}

/** The same for every script of the page. Their bodies can be read once. */
export function earlyFiles(): EarlyFiles {
  return (onPage.saddleruleEarly ??= { engine: asked(engine), settings: asked("site-settings.json") });
}
