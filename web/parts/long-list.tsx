// A list that may be long: only the items near the screen are drawn, and room is kept for the others.
import type { ComponentChildren, JSX, RefObject } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { PieceHeights, pieceLength } from "./piece-heights";
import { useTabPastEdge } from "./tab-past-edge";

/** How far outside the screen items are drawn already. */
const nearby = 240;

interface LongListProps<Item> {
  label: string;
  length: number;
  /** null: an item that is still being fetched. */
  itemAt: (place: number) => Item | null;
  /** For items with a state of their own. Without it a place keeps its elements when another item comes to stand there. */
  keyOf?: (item: Item) => string;
  /** The places that came near the screen, the last one excluded. */
  onNear?: (first: number, end: number) => void;
  /** Everything is drawn, for paper. */
  whole?: boolean;
  /** Draws an item, or the room for one. */
  children: (item: Item | null) => ComponentChildren;
}

export function LongList<Item>({
  label,
  length,
  itemAt,
  keyOf,
  onNear,
  whole = false,
  children,
}: LongListProps<Item>) {
  const place = useRef<HTMLDivElement>(null);
  const heights = useRef(new PieceHeights());
  /** The pieces that stand there with their items. */
  const standing = useRef(new Set<number>());
  const frame = useRef<Frame>({ owes: false, fetches: false }).current;
  const pieces = Math.ceil(length / pieceLength);
  const [near, lookAgain] = useNearPieces(place, heights.current, pieces, frame);
  const hearKey = useTabPastEdge(place, length, lookAgain);
  const first = whole ? 0 : Math.min(near.first, Math.max(0, pieces - 1));
  const end = whole ? pieces : Math.min(Math.max(near.end, first + 1), pieces);

  // Once it is painted: asking for heights before would lay the page out one time more.
  useEffect(() => {
    measure(place.current, heights.current, first);
  });
  useEffect(() => {
    lookAgain();
    // Other items may be lower, and more of them fit the screen.
  }, [lookAgain, length, first, end]);
  useEffect(() => {
    if (!whole) onNear?.(first * pieceLength, Math.min(length, end * pieceLength));
  }, [onNear, first, end, length, whole]);

  const drawn: JSX.Element[] = [];
  const stoodBefore = standing.current;
  standing.current = new Set();
  // After a jump one piece a frame is drawn anew, and none in the frame that has to read an answer first.
  let left = frame.fetches && !frame.owes ? 0 : 1;
  frame.fetches = false;
  for (let piece = first; piece < end; piece++) {
    const places = placesOf(piece, length);
    const known = places.some((number) => itemAt(number) !== null);
    const waits = known && !whole && !stoodBefore.has(piece) && --left < 0;
    if (known && !waits) standing.current.add(piece);
    frame.fetches ||= !known;
    drawn.push(
      <div key={piece} class="piece">
        {places.map((number) => {
          const item = waits ? null : itemAt(number);
          return (
            <div
              key={item === null || keyOf === undefined ? number : keyOf(item)}
              role="listitem"
              aria-posinset={number + 1}
              aria-setsize={length}
            >
              {children(item)}
            </div>
          );
        })}
      </div>,
    );
  }
  frame.owes = left < 0;
  useEffect(() => {
    if (frame.owes) lookAgain();
  });
  return (
    <div ref={place} role="list" aria-label={label} onKeyDown={hearKey}>
      <Room height={heights.current.before(first)} />
      {drawn}
      <Room height={heights.current.between(end, pieces)} />
    </div>
  );
}

function Room({ height }: { height: number }) {
  return <div class="long-list-room" role="none" style={{ height: `${height}px` }} />;
}

function placesOf(piece: number, length: number): number[] {
  const start = piece * pieceLength;
  return Array.from({ length: Math.min(pieceLength, length - start) }, (_, number) => start + number);
}

/** Keeps the heights of the pieces on the page. Out of sight they have none. */
function measure(list: HTMLElement | null, heights: PieceHeights, first: number): void {
  if (list === null || list.clientHeight === 0) return;
  heights.keepFor(list.clientWidth);
  list.querySelectorAll<HTMLElement>(":scope > .piece").forEach((piece, number) => {
    heights.keep(first + number, piece.getBoundingClientRect().height);
  });
}

interface NearPieces {
  first: number;
  end: number;
}

/** What was left when the list was drawn last. */
interface Frame {
  /** There are more items to be drawn. */
  owes: boolean;
  /** There are items still to be told of. */
  fetches: boolean;
}

/** Which pieces are near the screen, followed as anything scrolls; and the way to look again, in the next frame. */
function useNearPieces(
  place: RefObject<HTMLElement>,
  heights: PieceHeights,
  pieces: number,
  frame: Frame,
): [NearPieces, () => void] {
  const [near, setNear] = useState<NearPieces>({ first: 0, end: 1 });
  const look = useRef<() => void>(() => undefined);
  const waiting = useRef(0);
  // However often it is called: what a frame draws anew is drawn once.
  const lookAgain = useRef(() => {
    waiting.current ||= requestAnimationFrame(() => {
      waiting.current = 0;
      look.current();
    });
  }).current;
  look.current = () => {
    const element = place.current;
    if (element === null || element.clientHeight === 0) return;
    const { top } = element.getBoundingClientRect();
    const first = heights.pieceAt(-nearby - top, pieces);
    const end = heights.pieceAt(innerHeight + nearby - top, pieces) + 1;
    setNear((was) => (was.first === first && was.end === end && !frame.owes ? was : { first, end }));
  };
  useEffect(() => {
    // Whatever scrolls: the document, or some element around the page.
    const listening = { capture: true, passive: true };
    addEventListener("scroll", lookAgain, listening);
    addEventListener("resize", lookAgain);
    // The list comes into sight, or its rows change their height.
    const observer = new ResizeObserver(lookAgain);
    if (place.current !== null) observer.observe(place.current);
    return () => {
      removeEventListener("scroll", lookAgain, listening);
      removeEventListener("resize", lookAgain);
      observer.disconnect();
      cancelAnimationFrame(waiting.current);
    };
  }, [place, lookAgain]);
  return [near, lookAgain];
}
