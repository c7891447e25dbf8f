// What the club serves besides the site, kept for when there is no signal: its lists, and what it says about the site.
// A list comes from the network if that answers soon, and else as it was kept last, with the date of that.

declare const self: ServiceWorkerGlobalScope;

/** Lists outlive versions of the site. */
const cacheName = `saddlerule-lists ${new URL(self.registration.scope).pathname}`;

/** Tells the page that a list is the kept copy, and since when: a time in ISO 8601. web/engine/list-address.ts reads it. */
const keptHeader = "saddlerule-kept";

/** Milliseconds after which a kept copy serves better than waiting on: for an answer to begin, and from then on to be whole. */
const patience = { begin: 2500, whole: 5000 };

/** As many lists as somebody goes through in a season of clubs and sales. */
const mostLists = 8;

/** Bytes: what the engine takes, and the page reads. */
const mostBytes = 8 * 1024 * 1024;

const settingsAddress = new URL("site-settings.json", self.registration.scope).href;

export function isSettings({ href }: URL): boolean {
  return href === settingsAddress;
}

/** As they were kept, for the page must not wait for them; what has changed since serves the next visit. */
export async function answerSettings(event: FetchEvent): Promise<Response> {
  const kept = await keptCopy(event.request);
  const coming = newest(event);
  if (kept === undefined) return coming;
  event.waitUntil(coming.catch(() => undefined));
  return kept;
}

export async function answerList(event: FetchEvent): Promise<Response> {
  const kept = await keptCopy(event.request);
  const coming = newest(event);
  if (kept === undefined) return coming;
  let begun = false;
  const inTime = coming
    .then((response) => {
      begun = true;
      if (response.status === 410) return response;
      return serves(response) ? whenWhole(response) : kept;
    })
    .catch(() => kept);
  event.waitUntil(inTime);
  const tooLate = later(patience.begin)
    .then(() => (begun ? later(patience.whole) : undefined))
    .then(() => kept);
  return Promise.race([inTime, tooLate]);
}

async function whenWhole(response: Response): Promise<Response> {
  const whole = response.clone();
  if (!(await isWhole(response.url, await response.blob(), response)))
    throw new Error("no list, or half of one");
  return whole;
}

/** What a page fetched before this worker was there. */
export async function keepAlso(addresses: URL[]): Promise<void> {
  const keeping = addresses.map(async ({ href }) => {
    const request = new Request(href);
    const response = await fetch(request, { cache: "no-cache" });
    if (serves(response)) await keep(request, response);
  });
  await Promise.allSettled(keeping);
}

async function newest(event: FetchEvent): Promise<Response> {
  // Hosts that let lists be cached for days are asked all the same whether there is a newer one.
  const response = await fetch(event.request, { cache: "no-cache" });
  if (serves(response)) event.waitUntil(keep(event.request, response.clone()).catch(() => undefined));
  else if (response.status === 410) event.waitUntil(forget(event.request));
  return response;
}

/**
 * A list, and not the page of a host in trouble, or of a café that wants a password first; nor what its server does not
 * want to be kept, or gives to one reader alone.
 */
function serves({ status, headers }: Response): boolean {
  const said = (name: string): string => headers.get(name) ?? "";
  return (
    status === 200 &&
    !/^(text\/html|application\/xhtml)/i.test(said("content-type")) &&
    !/\b(no-store|private)\b/i.test(said("cache-control")) &&
    !/\b(cookie|authorization)\b/i.test(said("vary"))
  );
}

/** Not cut off by a server that went away, and what it is taken for: every list of bikes names a saddle height. */
async function isWhole(address: string, body: Blob, { headers }: Response): Promise<boolean> {
  const told = headers.has("content-encoding") ? null : headers.get("content-length");
  if (body.size === 0 || (told !== null && Number(told) !== body.size)) return false;
  // Of UTF-16, read as UTF-8, the letters are left.
  const text = (await body.text()).replaceAll("\0", "");
  return address === settingsAddress ? /^\s*\{/.test(text) : /saddle[\W_]*(lowest|highest)/i.test(text);
}

async function keptCopy({ url }: Request): Promise<Response | undefined> {
  return caches.match(url, { cacheName });
}

async function forget({ url }: Request): Promise<void> {
  await (await caches.open(cacheName)).delete(url);
}

/** Without room for it, or where it breaks off, what was kept before stays. */
async function keep({ url }: Request, response: Response): Promise<void> {
  const body = await wholeBody(response);
  if (body === null || !(await isWhole(url, body, response))) return;
  const headers = {
    "content-type": response.headers.get("content-type") ?? "",
    [keptHeader]: new Date().toISOString(),
  };
  const cache = await caches.open(cacheName);
  await cache.put(url, new Response(body, { headers }));
  const staying = [settingsAddress, url, await listOfSettings()];
  const lists = (await cache.keys()).filter((list) => !staying.includes(list.url));
  const surplus = lists.slice(0, Math.max(0, lists.length + 1 - mostLists));
  await Promise.all(surplus.map((list) => cache.delete(list)));
}

/** The club's own list: others come and go. */
async function listOfSettings(): Promise<string | null> {
  try {
    const settings = (await (await caches.match(settingsAddress, { cacheName }))?.json()) as {
      list?: unknown;
    };
    return typeof settings.list === "string" ? new URL(settings.list, self.registration.scope).href : null;
  } catch {
    return null;
  }
}

async function wholeBody({ body }: Response): Promise<Blob | null> {
  const reader = body?.getReader();
  const parts: BlobPart[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = (await reader?.read()) ?? { done: true, value: undefined };
    if (done) return new Blob(parts);
    length += value.length;
    if (length > mostBytes) {
      await reader?.cancel();
      return null;
    }
    parts.push(value);
  }
}

function later(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
