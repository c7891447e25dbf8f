// The width that a drawing has on screen, so that its texts keep their size.
import type { RefObject } from "preact";
import { useLayoutEffect, useRef, useState } from "preact/hooks";

const beforeSeen = 340;

export function useWidth(): [RefObject<HTMLDivElement>, number] {
  const place = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(beforeSeen);
  useLayoutEffect(() => {
    const element = place.current;
    if (element === null) return;
    const measure = (): void => {
      if (element.clientWidth > 0) setWidth(element.clientWidth);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => {
      observer.disconnect();
    };
  }, []);
  return [place, width];
}
