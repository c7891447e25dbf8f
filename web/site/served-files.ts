// The site's own files, fetched when they are wanted. Each is called by its content, and comes from the service worker's
// version where there is one.
import * as files from "site-files";
import type { EngineSource } from "../engine/engine-source";
import { scriptAddress } from "../page/trusted-scripts";
import type { OtherLanguage } from "../texts/languages";
import { earlyFiles } from "./early-files";

const inSite = (path: string): string => new URL(path, document.baseURI).href;

function served(response: Response): Response {
  if (!response.ok) throw new Error(`${response.url}: the server said ${response.status}`);
  return response;
}

async function compiled(coming: Promise<Response>): Promise<WebAssembly.Module> {
  const response = served(await coming);
  // Compiled while it comes, where the host says what it is.
  return response.headers.get("content-type") === "application/wasm"
    ? WebAssembly.compileStreaming(response)
    : WebAssembly.compile(await response.arrayBuffer());
}

/** Compiles the engine at once; what failed is fetched again when it is wanted. */
export function servedEngine(): EngineSource {
  let compiling: Promise<WebAssembly.Module> | null = null;
  const compileOnce = (coming: Promise<Response>): Promise<WebAssembly.Module> => {
    compiling = compiled(coming);
    compiling.catch(() => (compiling = null));
    return compiling;
  };
  void compileOnce(earlyFiles().engine).catch(() => undefined);
  const engine = (): Promise<WebAssembly.Module> => compiling ?? compileOnce(fetch(inSite(files.engine)));
  return {
    compiled: engine,
    startWorker: () => new Worker(scriptAddress(inSite(files.thread))),
  };
}

export async function servedWords(language: OtherLanguage): Promise<string> {
  return served(await fetch(inSite(files.words[language] ?? ""))).text();
}

/** What the club's webmaster wrote into the settings, as an address would say it; nothing where that is not to be had. */
export async function servedSettings(): Promise<string> {
  try {
    const said: unknown = await served(await earlyFiles().settings).json();
    const settings = Object.entries(said ?? {}).filter(
      ([, value]) => typeof value === "string" && value !== "",
    );
    return new URLSearchParams(settings as string[][]).toString();
  } catch {
    return "";
  }
}
