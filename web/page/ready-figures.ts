// Makes forms of figures ready that a browser takes a moment to make, before somebody waits for them.
import { useEffect } from "preact/hooks";
import { usePage } from "./page-context";

/** Amounts in the currency of the list: the first one of each form takes a slow device as long as drawing the whole rack. */
export function useReadyMoney(currency: string | null): void {
  const { figures } = usePage();
  useEffect(() => {
    const timers = [1, 1.5].map((amount, place) =>
      setTimeout(() => figures.money(amount, currency), 100 * (place + 1)),
    );
    return () => {
      timers.forEach(clearTimeout);
    };
  }, [figures, currency]);
}
