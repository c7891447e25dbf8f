// Whether browsers keep the site for when there is no signal, or why not.
import { scriptAddress } from "../page/trusted-scripts";
import { good, reason, wrong } from "./findings";
import type { Finding } from "./findings";

export async function checkKeeping(): Promise<Finding[]> {
  const not = (why: string): Finding[] => [wrong(`Not saved for offline use: ${why}.`)];
  if (!isSecureContext) return not("the host does not use https");
  if (!("serviceWorker" in navigator)) return not("this browser has no service workers; try another one");
  const page = await fetch("./", { cache: "no-store" });
  if (page.redirected) return not(`the host redirects the folder's address to ${page.url}`);
  try {
    const address = scriptAddress(new URL("service-worker.js", document.baseURI).href);
    const registration = await navigator.serviceWorker.register(address, { updateViaCache: "none" });
    const worker = registration.installing ?? registration.waiting ?? registration.active;
    const state = await settled(worker);
    return state === "redundant" && registration.active === null
      ? not("a file of the site is missing, was changed, or is redirected")
      : [good("Saved for offline use after one visit.")];
  } catch (failure) {
    return not(`the browser does not take service-worker.js: ${reason(failure)}`);
  }
}

function settled(worker: ServiceWorker | null): Promise<ServiceWorkerState | "redundant"> {
  return new Promise((resolve) => {
    const look = (): void => {
      if (worker === null) resolve("redundant");
      else if (worker.state !== "installing" && worker.state !== "parsed") resolve(worker.state);
    };
    worker?.addEventListener("statechange", look);
    look();
  });
}
