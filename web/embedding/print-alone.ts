// Printing from inside an element prints what it shows, without the page around it.

import { around } from "./around";

const mark = "data-saddlerule-beside";

/** Up from `host`, each element with those beside it, also out of the shadow roots that it is in. */
function besideAll(host: Element): Element[] {
  const beside: Element[] = [];
  for (let at: Element | null = host; at !== null && at.localName !== "body"; at = around(at)) {
    const self = at;
    beside.push(...Array.from(at.parentNode?.children ?? []).filter((one) => one !== self));
  }
  return beside;
}

export function printAlone(host: Element): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`@media print { [${mark}] { display: none !important } }`);
  const beside = besideAll(host);
  const roots = new Set([document, ...beside.map((one) => one.getRootNode() as Document | ShadowRoot)]);
  for (const one of beside) one.setAttribute(mark, "");
  for (const root of roots) root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
  const over = (): void => {
    removeEventListener("afterprint", over);
    for (const one of beside) one.removeAttribute(mark);
    for (const root of roots)
      root.adoptedStyleSheets = root.adoptedStyleSheets.filter((other) => other !== sheet);
  };
  addEventListener("afterprint", over);
  print();
}
