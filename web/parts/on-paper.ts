// Whether the screen is being printed: then a long list is drawn whole, not only what is near the screen.
import { useEffect, useState } from "preact/hooks";

export function useOnPaper(): boolean {
  const [onPaper, put] = useState(false);
  useEffect(() => {
    const begin = (): void => put(true);
    const end = (): void => put(false);
    addEventListener("beforeprint", begin);
    addEventListener("afterprint", end);
    return () => {
      removeEventListener("beforeprint", begin);
      removeEventListener("afterprint", end);
    };
  }, []);
  return onPaper;
}
