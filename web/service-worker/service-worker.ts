// The site's service worker: the page opens with no signal, from the files of one version. What it keeps of the site is in
// kept-version.ts, what it keeps of the club's lists in kept-lists.ts; here is who is answered by which.
import { answerList, answerSettings, isSettings, keepAlso } from "./kept-lists";
import { forgetOldVersions, fromVersion, isOfVersion, keepVersion, pageOfVersion } from "./kept-version";

declare const self: ServiceWorkerGlobalScope;

/** What pages say (web/site/new-version.ts): that the new version is wanted at once, or what they fetched without this worker. */
type Said = "take over" | { fetched: string[] };

self.addEventListener("install", (event) => {
  event.waitUntil(keepVersion());
});

self.addEventListener("activate", (event) => {
  // The page that brought it here has the same kept for it from now on: its files are called by their content.
  event.waitUntil(self.clients.claim().then(() => forgetOldVersions()));
});

self.addEventListener("message", (event) => {
  const said = event.data as Said;
  if (said === "take over") void self.skipWaiting();
  else event.waitUntil(keepAlso(said.fetched.map((address) => new URL(address)).filter(isOther)));
});

/** Of this origin, and no file of the site's version. */
function isOther(address: URL): boolean {
  return address.origin === self.location.origin && !isOfVersion(address);
}

async function listOrNetwork(event: FetchEvent): Promise<Response> {
  const client = await self.clients.get(event.clientId);
  return client !== undefined && isOwnPage(new URL(client.url)) ? answerList(event) : fetch(event.request);
}

/** The site's only page, under either of its addresses. */
function isOwnPage({ origin, pathname }: URL): boolean {
  const scope = new URL(self.registration.scope);
  return origin === scope.origin && [scope.pathname, `${scope.pathname}index.html`].includes(pathname);
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const address = new URL(request.url);
  // All else goes to the network by itself, and so does what check.html wants to see as the host gives it.
  const isOwn = request.method === "GET" && address.origin === self.location.origin;
  if (!isOwn || request.cache === "no-store") return;
  if (request.mode === "navigate") {
    const page = pageOfVersion(address);
    if (page === null) return;
    event.respondWith(page(request));
    event.waitUntil(forgetOldVersions(event));
  } else if (isOfVersion(address)) event.respondWith(fromVersion(request));
  else if (isSettings(address)) event.respondWith(answerSettings(event));
  // Scripts, styles and pictures name their destination; what the page fetches by itself is a list. Other pages of this host
  // may be in the worker's scope too, and what they fetch is their own affair.
  else if (request.destination === "") event.respondWith(listOrNetwork(event));
});
