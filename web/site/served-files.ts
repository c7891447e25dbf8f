// The site's own files, fetched when they are wanted. Each is called by its content, and comes from the service worker's
// version where there is one.
import * as files from "site-files";
import type { EngineSource } from "../engine/engine-source";
import { scriptAddress } from "../page/trusted-scripts";
import type { OtherLanguage } from "../texts/languages";

const inSite = (path: string): string => new URL(path, document.baseURI).href;

async function served(path: string): Promise<Response> {
  const response = await fetch(inSite(path));
  if (!response.ok) throw new Error(`${path}: the server said ${response.status}`);
  return response;
}

async function compiledEngine(): Promise<WebAssembly.Module> {
  const response = await served(files.engine);
  // Compiled while it comes, where the host says what it is.
  return response.headers.get("content-type") === "application/wasm"
    ? WebAssembly.compileStreaming(response)
    : WebAssembly.compile(await response.arrayBuffer());
}

/** Begins to fetch and compile the engine at once. */
export function servedEngine(): EngineSource {
  let compiling: Promise<WebAssembly.Module> | null = null;
  const compiled = (): Promise<WebAssembly.Module> =>
    (compiling ??= compiledEngine().catch((failure: unknown) => {
      compiling = null;
      throw failure;
    }));
  compiled().catch(() => undefined);
  return {
    compiled,
    travelling: async () => ({ module: await compiled() }),
    startWorker: () => new Worker(scriptAddress(inSite(files.thread))),
  };
}

export async function servedWords(language: OtherLanguage): Promise<string> {
  return (await served(files.words[language] ?? "")).text();
}

/** What the club's webmaster wrote into the settings, as an address would say it; nothing where that is not to be had. */
export async function servedSettings(): Promise<string> {
  try {
    const said: unknown = await (await served("site-settings.json")).json();
    const settings = Object.entries(said ?? {}).filter(
      ([, value]) => typeof value === "string" && value !== "",
    );
    return new URLSearchParams(settings as string[][]).toString();
  } catch {
    return "";
  }
}
