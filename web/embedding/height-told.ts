// Inside a frame: tells the page around it how high this one is, so that it can give the frame that height.
// saddlerule-frame.ts is the other side.

/** What is posted. */
export interface HeightMessage {
  saddlerule: "height";
  /** In CSS pixels. */
  height: number;
}

/**
 * Tells the height of `element`, now and whenever it changes, to the page around if that is of the origin `host`; nobody
 * else is told.
 */
export function tellHeight(element: Element, host: string): void {
  if (window.parent === window) return;
  let told = 0;
  new ResizeObserver(() => {
    const height = Math.ceil(element.getBoundingClientRect().height);
    if (height === told) return;
    told = height;
    window.parent.postMessage({ saddlerule: "height", height } satisfies HeightMessage, host);
  }).observe(element);
}
