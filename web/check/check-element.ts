// What is in a page of the same host that should show the element.
import { checkPolicies } from "./check-policy";
import { good, wrong } from "./findings";
import type { Finding } from "./findings";

export interface SeenPage {
  findings: Finding[];
  /** Of each element that names one. */
  lists: URL[];
}

export async function checkPage(address: URL): Promise<SeenPage> {
  if (address.origin !== location.origin)
    return { findings: [wrong(`${address.href} is on another host: open check.html there.`)], lists: [] };
  const asked = await opened(address);
  if (asked === null) return { findings: [wrong(`There is no page at ${address.href}.`)], lists: [] };
  const { page, policy } = asked;
  const inPage = [...page.querySelectorAll("meta[http-equiv='Content-Security-Policy' i]")];
  const policies = [policy, ...inPage.map((meta) => meta.getAttribute("content") ?? "")];
  const hosts = [...page.querySelectorAll("saddlerule-fit")];
  const scripts = [...page.querySelectorAll("script[src*='saddlerule-fit'], script[data-saddlerule]")];
  const count = hosts.length === 1 ? "one element" : `${hosts.length} elements`;
  const findings = [
    hosts.length > 0
      ? good(`The page has ${count} in it.`)
      : wrong(
          "The page has no <saddlerule-fit> in it: its editor took it away, or a script puts it in later.",
        ),
    scripts.length > 0
      ? good("The page names the element's script.")
      : wrong(
          "The page names no saddlerule-fit.js: its editor took the script away, or an optimiser joined it with others.",
        ),
    ...checkPolicies(policies, "the page"),
  ];
  const named = hosts.map((host) => host.getAttribute("list")).filter((list) => list !== null);
  return { findings, lists: named.map((list) => new URL(list, address)) };
}

/** As a browser reads it, with nothing of it run. */
function opened(address: URL): Promise<{ page: Document; policy: string } | null> {
  return new Promise((resolve) => {
    const request = new XMLHttpRequest();
    request.open("GET", address);
    request.responseType = "document";
    request.addEventListener("loadend", () => {
      const page = request.status === 200 ? request.responseXML : null;
      const policy = request.getResponseHeader("content-security-policy") ?? "";
      resolve(page === null ? null : { page, policy });
    });
    request.send();
  });
}
