// Whether two screens are side by side.
import type { RefObject } from "preact";
import { useLayoutEffect, useState } from "preact/hooks";

/** As in frame.css, in widths of its text. */
const wideFrom = 60;

export function useWide(place: RefObject<HTMLElement>): boolean {
  const [wide, setWide] = useState(false);
  useLayoutEffect(() => {
    const element = place.current;
    if (element === null) return;
    const measure = (): void => {
      setWide(element.clientWidth >= wideFrom * parseFloat(getComputedStyle(element).fontSize));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => {
      observer.disconnect();
    };
  }, [place]);
  return wide;
}
