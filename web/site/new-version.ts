// The site's versions as the page sees them: the service worker that keeps the one in use, and a newer one that waits.
import { scriptAddress } from "../page/trusted-scripts";

export interface Versions {
  /** The page opens from here on without a signal; false where this browser or address does not keep it. */
  kept: boolean | null;
  /** Opens the newer version in the place of this page; null while there is none. */
  openNewer: (() => void) | null;
}

/** Milliseconds: a page that stays open for weeks looks for a newer version when somebody comes back to it. */
const lookedForEvery = 60 * 60 * 1000;

/** What web/service-worker/service-worker.ts listens for. */
type Saying = "take over" | { fetched: string[] };

function say(worker: ServiceWorker, saying: Saying): void {
  worker.postMessage(saying);
}

/** Sets the service worker up, and tells of every change. */
export function watchVersions(told: (versions: Versions) => void): void {
  // Browsers have none on addresses that anybody on the way could change.
  const workers = "serviceWorker" in navigator ? navigator.serviceWorker : null;
  const failed = (): void => told({ kept: false, openNewer: null });
  if (workers === null) {
    failed();
    return;
  }
  const address = scriptAddress(new URL("service-worker.js", document.baseURI).href);
  workers.register(address, { updateViaCache: "none" }).then((registration) => {
    const look = (): void => {
      told({
        kept: registration.active === null ? null : true,
        openNewer:
          registration.waiting && registration.active ? () => openNewer(registration, workers) : null,
      });
    };
    const follow = (worker: ServiceWorker | null): void => {
      worker?.addEventListener("statechange", () => {
        // One that could not be kept whole is gone, and what was there before stays.
        if (worker.state === "redundant" && registration.active === null) failed();
        else look();
      });
    };
    look();
    tellWhatWasFetched(workers);
    follow(registration.installing);
    registration.addEventListener("updatefound", () => follow(registration.installing));
    lookAgainLater(registration);
  }, failed);
}

/** Another tab may have opened it meanwhile; then it needs no asking. */
function openNewer({ waiting }: ServiceWorkerRegistration, workers: ServiceWorkerContainer): void {
  if (waiting === null) {
    location.reload();
    return;
  }
  workers.addEventListener("controllerchange", () => location.reload(), { once: true });
  say(waiting, "take over");
}

/** What this page fetched without the service worker, most often because it was there first, is kept all the same. */
function tellWhatWasFetched(workers: ServiceWorkerContainer): void {
  new PerformanceObserver((list) => {
    const fetched = (list.getEntriesByType("resource") as PerformanceResourceTiming[])
      .filter(({ initiatorType, workerStart }) => initiatorType === "fetch" && workerStart === 0)
      .map(({ name }) => name);
    if (fetched.length === 0) return;
    void workers.ready.then(({ active }) => {
      if (active) say(active, { fetched });
    });
  }).observe({ type: "resource", buffered: true });
}

function lookAgainLater(registration: ServiceWorkerRegistration): void {
  let last = Date.now();
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden" || Date.now() - last < lookedForEvery) return;
    last = Date.now();
    // Without a signal there is nothing new.
    registration.update().catch(() => undefined);
  });
}
