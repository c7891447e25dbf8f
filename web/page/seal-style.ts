// The component's own room: a shadow root into which no style of the document reaches, and out of which none goes.

/** Attaches a shadow root to `host` with `sheet` in it, and gives the place to draw into. */
export function sealedRoom(host: Element, sheet: string): HTMLElement {
  const room = host.shadowRoot ?? host.attachShadow({ mode: "open" });
  adopt(room, sheet);
  const floor = document.createElement("div");
  floor.className = "room";
  room.append(floor);
  return floor;
}

/** A further sheet for the same room, behind the one that is in it. */
export function alsoSealed(host: Element, sheet: string): void {
  const further = new CSSStyleSheet();
  further.replaceSync(sheet);
  host.shadowRoot?.adoptedStyleSheets.push(further);
}

function adopt(room: ShadowRoot, sheet: string): void {
  if ("adoptedStyleSheets" in room) {
    const adopted = new CSSStyleSheet();
    adopted.replaceSync(sheet);
    room.adoptedStyleSheets = [adopted];
    return;
  }
  const element = document.createElement("style");
  element.textContent = sheet;
  (room as ShadowRoot).append(element);
}
