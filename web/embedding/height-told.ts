// Inside a frame: tells the page around it how high this one is, so that it can give the frame that height.
// saddlerule-frame.ts is the other side.

/** What is posted. */
export interface HeightMessage {
  saddlerule: "height";
  /** In CSS pixels. */
  height: number;
}

/** What the page around posts where it began to listen late. */
export interface HeightQuestion {
  saddlerule: "how high";
}

/** In CSS pixels. The page around sees only steps: from exact heights it could tell how many bikes fit, and so the inside leg. */
const step = 240;

/**
 * Tells the height of `element`, now, whenever it changes and when it is asked, to the page around if that is of the origin
 * `host`; nobody else is told.
 */
export function tellHeight(element: Element, host: string): void {
  if (window.parent === window) return;
  let told = 0;
  const tell = (): void => {
    window.parent.postMessage({ saddlerule: "height", height: told } satisfies HeightMessage, host);
  };
  new ResizeObserver(() => {
    const height = Math.ceil(element.getBoundingClientRect().height / step) * step;
    if (height === told) return;
    told = height;
    tell();
  }).observe(element);
  addEventListener("message", ({ data, origin, source }) => {
    const { saddlerule } = Object(data) as Partial<HeightQuestion>;
    if (saddlerule === "how high" && origin === host && source === window.parent && told > 0) tell();
  });
}
