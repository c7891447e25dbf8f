// A list that a page names by its address: fetched with a limit of size and of time, told on the way, and refused in words.
import { refused } from "./refusal";
import type { Refusal } from "./refusal";
import { deviceDay } from "../page/device-day";
import type { BytesHooks, ListSource } from "./list-opening";
import type { OnProgress } from "./thread";

/** A site's service worker puts it on a copy that it kept: a time in ISO 8601 (service-worker/kept-lists.ts). */
const keptHeader = "saddlerule-kept";

const mebibyte = 1024 * 1024;

/** What the engine takes (core/lists/catalogue/catalogue_reader.h): reading stops beyond it. */
export const mostFetched = 8 * mebibyte;

/** In milliseconds: how long a server may be silent, and how long all of it may take. */
export interface Patience {
  silent: number;
  whole: number;
}

const usualPatience: Patience = { silent: 15_000, whole: 120_000 };

/** The last part of an address, as a file would be called. */
function nameOf({ pathname, host }: URL): string {
  const last = pathname.split("/").filter(Boolean).at(-1);
  try {
    return decodeURIComponent(last ?? host);
  } catch {
    return last ?? host;
  }
}

/** For a page that reaches no network: `address` as it was written. */
export function unreachedSource(address: string): ListSource {
  return {
    name: address,
    sample: false,
    named: true,
    bytes: () => Promise.resolve(refused("address_offline")),
  };
}

/**
 * Asked for without cookies: the address may come from a stranger's link, and must not act or read in its reader's name.
 *
 * @param address of a list, whole
 */
export function addressSource(address: URL, patience = usualPatience): ListSource {
  return {
    name: nameOf(address),
    sample: false,
    named: true,
    bytes: (onProgress, stop, told) => fetched(address, patience, onProgress, stop, told),
  };
}

async function fetched(
  address: URL,
  patience: Patience,
  onProgress: OnProgress,
  stop: AbortSignal,
  told?: BytesHooks,
): Promise<Uint8Array | Refusal> {
  const watch = watchOver(address, patience, stop);
  try {
    const response = await fetch(address, { signal: watch.signal, credentials: "omit" });
    watch.heard();
    const refused = refusedBy(response, address);
    if (refused !== null) {
      letGo(response.body);
      return refused;
    }
    const kept = Date.parse(response.headers.get(keptHeader) ?? "");
    if (!Number.isNaN(kept)) told?.keptOn(deviceDay(new Date(kept)));
    const body = await wholeBody(response, onProgress, watch.heard, watch.signal);
    return body instanceof Uint8Array && isWebPage(body) ? webPage(response) : body;
  } catch {
    // Stopped by its reader, nothing is said about it.
    const seconds = String(watch.lateAfter() / 1000);
    if (seconds !== "0") return refused("address_slow", { seconds });
    return await whyUnreached(address, await watch.isRefusedByPolicy(), watch.signal);
  } finally {
    watch.end();
  }
}

/** Ends a fetch that takes too long or is stopped, and sees whether the page's own policy forbade it. */
function watchOver(address: URL, { silent, whole }: Patience, stop: AbortSignal) {
  const ending = new AbortController();
  let late = 0;
  let policy = false;
  const tooLate = (after: number): void => {
    late = after;
    ending.abort();
  };
  const stopped = (): void => ending.abort();
  const seen = ({ blockedURI, effectiveDirective }: SecurityPolicyViolationEvent): void => {
    policy ||= effectiveDirective === "connect-src" && blockedURI.startsWith(address.origin);
  };
  const last = setTimeout(tooLate, whole, whole);
  let silence = setTimeout(tooLate, silent, silent);
  stop.addEventListener("abort", stopped);
  document.addEventListener("securitypolicyviolation", seen);
  return {
    signal: ending.signal,
    heard: (): void => {
      clearTimeout(silence);
      silence = setTimeout(tooLate, silent, silent);
    },
    /** After how many milliseconds it was given up; 0: it was not. */
    lateAfter: () => late,
    /** Told of a moment after the fetch has failed. */
    async isRefusedByPolicy(): Promise<boolean> {
      await new Promise((resolve) => setTimeout(resolve));
      return policy;
    },
    end(): void {
      clearTimeout(silence);
      clearTimeout(last);
      stop.removeEventListener("abort", stopped);
      document.removeEventListener("securitypolicyviolation", seen);
    },
  };
}

/** A server may have led elsewhere, as to a page that asks for a login. */
function webPage({ redirected, url }: Response): Refusal {
  return refused("address_web_page", redirected ? { from: url } : {});
}

function refusedBy(response: Response, { host }: URL): Refusal | null {
  const { ok, status, headers } = response;
  const figures = { status: String(status), host };
  if (status === 404 || status === 410) return refused("address_gone", figures);
  if (status === 401 || status === 403) return refused("address_refused", figures);
  if (!ok) return refused("address_server", figures);
  if (/^(text\/html|application\/xhtml)/i.test(headers.get("content-type") ?? "")) return webPage(response);
  // Packed on the way, it is larger than it says.
  if (Number(headers.get("content-length") ?? 0) > mostFetched) return tooLarge;
  return null;
}

const tooLarge = refused("address_too_large", { limit: "8" });

/** Nobody waits for the rest; where the connection has broken meanwhile, there is none. */
function letGo(body: { cancel: () => Promise<void> } | null | undefined): void {
  body?.cancel().catch(() => undefined);
}

/** Servers that call everything plain text. No list begins like this. */
function isWebPage(body: Uint8Array): boolean {
  return /^\s*<(!doctype html|html)/i.test(new TextDecoder().decode(body.subarray(0, 256)));
}

async function wholeBody(
  response: Response,
  onProgress: OnProgress,
  heard: () => void,
  stop: AbortSignal,
): Promise<Uint8Array | Refusal> {
  const told = response.headers.get("content-encoding") === null;
  const total = told ? Number(response.headers.get("content-length") ?? 0) : 0;
  const reader = response.body?.getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  // Not every browser ends a reading that waits when its fetch is ended.
  const stopped = new Promise<never>((_, reject) => {
    stop.addEventListener("abort", () => reject(new Error("stopped")));
  });
  stopped.catch(() => undefined);
  for (;;) {
    const { done, value } = (await Promise.race([reader?.read(), stopped])) ?? {
      done: true,
      value: undefined,
    };
    if (done) break;
    heard();
    length += value.length;
    if (length > mostFetched) {
      letGo(reader);
      return tooLarge;
    }
    parts.push(value);
    onProgress(length, Math.max(total, length + 1));
  }
  return joined(parts, length);
}

function joined(parts: Uint8Array[], length: number): Uint8Array {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/**
 * Browsers do not tell a page why nothing came. A server that answers where nobody asks to read its answer is there, and
 * keeps its files from other sites' pages.
 */
async function whyUnreached(address: URL, policy: boolean, stop: AbortSignal): Promise<Refusal> {
  const figures = { host: address.host, origin: location.origin, server: address.origin };
  if (policy) return refused("address_policy", figures);
  const elsewhere = address.origin !== location.origin;
  if (elsewhere && navigator.onLine && (await answersAtAll(address, stop)))
    return refused("address_not_allowed", figures);
  return refused("address_no_signal", figures);
}

async function answersAtAll(address: URL, stop: AbortSignal): Promise<boolean> {
  try {
    await fetch(address, { method: "HEAD", mode: "no-cors", credentials: "omit", signal: stop });
    return true;
  } catch {
    return false;
  }
}
