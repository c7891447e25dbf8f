// Says that an answer takes longer than usual, and what the figures in grey are.
import { useEffect, useState } from "preact/hooks";
import { usePage } from "../page/page-context";

/** Milliseconds: nobody looks at an answer that long without wondering. */
const patience = 3000;

export function Overdue({ pending }: { pending: boolean }) {
  const { texts } = usePage();
  const [late, setLate] = useState(false);
  useEffect(() => {
    if (!pending) return;
    const timer = setTimeout(() => setLate(true), patience);
    return () => {
      clearTimeout(timer);
      setLate(false);
    };
  }, [pending]);
  return (
    <div class="inset" role="status">
      {late && pending && <p class="overdue">{texts.overdue}</p>}
    </div>
  );
}
