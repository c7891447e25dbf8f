// A list that may be long: cut into pieces, of which only those near the screen are drawn.
import type { ComponentChildren, JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";

const pieceLength = 8;
/** How far outside the screen a piece is drawn already. */
const nearby = "700px 0px";
/** Height of a row before any was seen. */
const firstGuess = 190;

interface LongListProps<Item> {
  label: string;
  items: Item[];
  keyOf: (item: Item) => string;
  children: (item: Item) => ComponentChildren;
}

export function LongList<Item>({ label, items, keyOf, children }: LongListProps<Item>) {
  const rowHeight = useRef(firstGuess);
  const pieces: JSX.Element[] = [];
  for (let start = 0; start < items.length; start += pieceLength) {
    pieces.push(
      <Piece
        key={start}
        items={items}
        start={start}
        length={Math.min(pieceLength, items.length - start)}
        rowHeight={rowHeight}
        keyOf={keyOf}
      >
        {children}
      </Piece>,
    );
  }
  return (
    <div role="list" aria-label={label}>
      {pieces}
    </div>
  );
}

interface PieceProps<Item> extends Pick<LongListProps<Item>, "items" | "keyOf" | "children"> {
  start: number;
  length: number;
  rowHeight: { current: number };
}

function Piece<Item>({ items, start, length, rowHeight, keyOf, children }: PieceProps<Item>) {
  const place = useRef<HTMLDivElement>(null);
  const [near, setNear] = useState(start === 0);
  const ownHeight = useRef<number | null>(null);

  useEffect(() => {
    const element = place.current;
    if (element === null) return;
    const observer = new IntersectionObserver(
      (entries) => {
        const entry = entries.at(-1);
        if (entry === undefined || entry.boundingClientRect.height === 0) return;
        const { isIntersecting, boundingClientRect } = entry;
        setNear((was) => {
          if (was && !isIntersecting) {
            ownHeight.current = boundingClientRect.height;
            rowHeight.current = boundingClientRect.height / length;
          }
          return isIntersecting;
        });
      },
      { rootMargin: nearby },
    );
    observer.observe(element);
    return () => {
      observer.disconnect();
    };
  }, [length, rowHeight]);

  if (!near) {
    const height = ownHeight.current ?? rowHeight.current * length;
    return <div ref={place} class="piece" style={{ height: `${height}px` }} />;
  }
  return (
    <div ref={place} class="piece">
      {items.slice(start, start + length).map((item, number) => (
        <div key={keyOf(item)} role="listitem" aria-posinset={start + number + 1} aria-setsize={items.length}>
          {children(item)}
        </div>
      ))}
    </div>
  );
}
