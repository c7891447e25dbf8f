// The files of one version of the site, kept whole or not at all. A page is answered by the version it came from: files are
// called by their content, and those of an older version stay until no page is open that could ask for them.
import { files, version } from "version-files";

declare const self: ServiceWorkerGlobalScope;

const scope = new URL(self.registration.scope);

/** Other sites of the same origin have caches of their own. */
const ours = `saddlerule-version ${scope.pathname} `;
const ownCache = ours + version;

/** Stands in a cache that is whole, with its place among the versions that came one after another. */
const wholeMark = new URL("whole-version", scope);

/** Asked for as "./": many hosts lead its full name there, and an answer that was led elsewhere opens no page later. */
const pagePath = "index.html";

/** Files called by their content; what is elsewhere has the same name in every version. */
const hashedFolder = "files/";

const inSite = (path: string): URL => new URL(path, scope);

/** Fetches every file and checks it against its hash. One that is missing or damaged, and nothing has happened. */
export async function keepVersion(): Promise<void> {
  const whole = await wholeVersions();
  const place = 1 + Math.max(0, ...whole.map(({ place }) => place));
  // What a browser that was closed meanwhile left of another one. There is never a second version on its way.
  const halves = (await ownCaches()).filter((name) => !whole.some((version) => version.name === name));
  await Promise.all(halves.map((name) => caches.delete(name)));
  try {
    const cache = await caches.open(ownCache);
    await Promise.all(files.map(async (file) => cache.put(inSite(file.path), await fetched(file))));
    await cache.put(wholeMark, new Response(String(place)));
  } catch (failure) {
    await caches.delete(ownCache);
    throw failure;
  }
}

async function fetched({ path, integrity }: (typeof files)[number]): Promise<Response> {
  const hashed = path.startsWith(hashedFolder);
  const had = hashed ? await inVersions(inSite(path)) : undefined;
  if (had !== undefined) return had;
  const asked = async (cache: RequestCache): Promise<Response> => {
    const response = await fetch(inSite(path === pagePath ? "./" : path), { integrity, cache });
    if (!response.ok || response.redirected) throw new Error(`${path}: ${response.status}`);
    return response;
  };
  if (!hashed) return asked("no-store");
  // What is called by its content may come from the browser's own cache; but that may hold half of it, from an upload.
  return asked("default").catch(() => asked("reload"));
}

/** How a navigation to `address` is answered; null where the page there is not the site's. */
export function pageOfVersion({ pathname }: URL): ((request: Request) => Promise<Response>) | null {
  if (pathname !== scope.pathname && pathname !== inSite(pagePath).pathname) return null;
  return async (request) => {
    const cache = await caches.open(ownCache);
    return (await cache.match(inSite(pagePath))) ?? fetch(request);
  };
}

export function isOfVersion({ pathname }: URL): boolean {
  return (
    pathname.startsWith(inSite(hashedFolder).pathname) ||
    files.some(({ path }) => inSite(path).pathname === pathname)
  );
}

export async function fromVersion(request: Request): Promise<Response> {
  const { pathname } = new URL(request.url);
  return (await inVersions(inSite(pathname))) ?? fetch(request);
}

/** This version's file first: pages of an older one ask for what only theirs had. */
async function inVersions(address: URL): Promise<Response | undefined> {
  for (const name of [ownCache, ...(await ownCaches())]) {
    const response = await caches.match(address, { cacheName: name });
    if (response !== undefined) return response;
  }
  return undefined;
}

async function ownCaches(): Promise<string[]> {
  return (await caches.keys()).filter((name) => name.startsWith(ours));
}

interface WholeVersion {
  name: string;
  place: number;
}

async function wholeVersions(): Promise<WholeVersion[]> {
  const names = await ownCaches();
  const marks = await Promise.all(
    names.map(async (name) => {
      const mark = await caches.match(wholeMark, { cacheName: name });
      return mark === undefined ? [] : [{ name, place: Number(await mark.text()) }];
    }),
  );
  return marks.flat();
}

/** Those before this one, once no page is open but the one that is being opened. */
export async function forgetOldVersions(opening?: FetchEvent): Promise<void> {
  const pages = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  const own = ({ id, url }: Client): boolean =>
    url.startsWith(scope.href) && id !== opening?.resultingClientId;
  if (pages.some(own)) return;
  const whole = await wholeVersions();
  const place = whole.find(({ name }) => name === ownCache)?.place ?? 0;
  await Promise.all(whole.filter((old) => old.place < place).map(({ name }) => caches.delete(name)));
}
