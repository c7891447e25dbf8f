// Runs in the page: finds elements as a reader of the screen would name them, in the shadow root that the page lives in.
// The names and roles are worked out by dom-accessibility-api, alike in every browser.

import {
  computeAccessibleDescription,
  computeAccessibleName,
  getRole,
  isInaccessible,
} from "dom-accessibility-api";

const root = () => [...document.querySelectorAll("*")].find((element) => element.shadowRoot)?.shadowRoot;

const seen = (element) =>
  element.checkVisibility({ checkVisibilityCSS: true }) && element.getClientRects().length > 0;

const oneLine = (text) => text.replace(/\s+/g, " ").trim();

const roleOf = (element) => (element.type === "file" ? "file" : getRole(element));

/** Where the page has the focus, inside the shadow root. */
const focused = () => root()?.activeElement ?? null;

/** Those with this role and this name, in the order of the document. `name` is a text or { pattern }. */
function all(role, name) {
  const fits =
    name?.pattern === undefined
      ? (text) => name === null || text === name
      : (text) => new RegExp(name.pattern, "u").test(text);
  return [...(root()?.querySelectorAll("*") ?? [])].filter(
    (element) =>
      roleOf(element) === role &&
      seen(element) &&
      !isInaccessible(element) &&
      fits(oneLine(computeAccessibleName(element))),
  );
}

/** What an assistive technology would hear about an element. */
function facts(element) {
  const state = (name) => element.getAttribute(`aria-${name}`);
  return {
    role: roleOf(element),
    name: oneLine(computeAccessibleName(element)),
    description: oneLine(computeAccessibleDescription(element)),
    words: oneLine(element.innerText ?? element.textContent),
    value: element.value ?? null,
    checked: element.checked ?? null,
    open: element.open ?? state("expanded"),
    invalid: state("invalid") === "true",
    current: state("current"),
    focused: element === focused(),
  };
}

/**
 * Brings an element to the middle of the screen and gives the point to press; null while something else is over it.
 * A control that is unseen over its label is the label's.
 */
function pointOf(element) {
  element.scrollIntoView({ block: "center", inline: "nearest", behavior: "instant" });
  const box = element.getBoundingClientRect();
  const point = { x: box.left + box.width / 2, y: box.top + box.height / 2 };
  const hit = root().elementFromPoint(point.x, point.y);
  const label = hit?.closest("label");
  const its = hit !== null && (element.contains(hit) || hit.contains(element) || label?.control === element);
  return its ? point : null;
}

/** The words on the screen. */
const words = () => [...(root()?.children ?? [])].map((child) => child.innerText ?? "").join("\n");

/** A list's option, chosen by its words. Lists unfold outside of the page, where no driver reaches alike. */
function pick(select, option) {
  const place = [...select.options].findIndex(({ text }) => text === option);
  if (place < 0) return false;
  select.selectedIndex = place;
  select.dispatchEvent(new Event("change", { bubbles: true }));
  return true;
}

/** What the page asked for beyond itself. */
const requests = () =>
  performance
    .getEntriesByType("resource")
    .map(({ name }) => name)
    .filter((name) => !/^(data|blob):/.test(name));

// From here on; what went wrong before is gathered by the browsers' own messages, where they give any.
const faults = [];
addEventListener("error", (event) => faults.push(`script error: ${event.message}`));
addEventListener("unhandledrejection", (event) => faults.push(`unhandled: ${event.reason}`));
document.addEventListener("securitypolicyviolation", (event) =>
  faults.push(`refused by the policy: ${event.violatedDirective} ${event.blockedURI}`),
);

window.inPage = { root, all, facts, pointOf, words, pick, focused, requests, faults };
