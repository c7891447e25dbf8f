// Inside a frame: has the frame as high as what is in it. A frame of this page's own origin is given that height at once; a page of
// another origin is told, and frame-host.ts is there the other side.
import { frameHeight } from "./frame-height";

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

/** Tells the height of `element`, now and whenever it is another one. */
function watchHeight(element: Element, told: (height: number) => void): void {
  let last = 0;
  new ResizeObserver(() => {
    const height = Math.ceil(element.getBoundingClientRect().height / step) * step;
    if (height === last) return;
    last = height;
    told(height);
  }).observe(element);
}

/** The frame that this page is in, where its page asks for the height and is of the same origin. */
export function ownFrame(): HTMLElement | null {
  const { frameElement: frame } = window;
  return frame?.hasAttribute("data-saddlerule") === true ? (frame as HTMLElement) : null;
}

export function keepAsHigh(frame: HTMLElement, element: Element): void {
  watchHeight(element, (height) => {
    frame.style.height = frameHeight(height);
  });
}

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
  watchHeight(element, (height) => {
    told = height;
    tell();
  });
  addEventListener("message", ({ data, origin, source }) => {
    const { saddlerule } = Object(data) as Partial<HeightQuestion>;
    if (saddlerule === "how high" && origin === host && source === window.parent && told > 0) tell();
  });
}
