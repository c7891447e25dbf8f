// A list that may be long: only the items near the screen are drawn, and room is kept for the others. Its items may be in
// groups, each under a heading that is always drawn, so that it can stay in sight.
import type { ComponentChildren, JSX, RefObject } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { PieceHeights, pieceLength } from "./piece-heights";
import { useTabPastEdge } from "./tab-past-edge";

/** How far outside the screen items are drawn already. */
const nearby = 240;

/** Items that follow each other under one heading. */
export interface ListGroup {
  length: number;
  /** Only its heading is drawn. */
  folded?: boolean;
  head: ComponentChildren;
}

interface LongListProps<Item> {
  label: string;
  length: number;
  /** All items are in one of them. Without them the list has no headings. */
  groups?: ListGroup[] | undefined;
  /** What rows look like, where that changes with something else than their width. */
  look?: string;
  /** null: an item that is still being fetched. */
  itemAt: (place: number) => Item | null;
  /** For items with a state of their own. Without it a place keeps its elements when another item takes its place. */
  keyOf?: (item: Item) => string;
  /** The places that came near the screen, the last one excluded. */
  onNear?: (first: number, end: number) => void;
  /** Everything is drawn, for paper. */
  whole?: boolean;
  /** Scrolled to; wrapped, so that the same place may be sought again. */
  sought?: { place: number } | null;
  /** Draws an item, or the room for one. */
  children: (item: Item | null) => ComponentChildren;
}

export function LongList<Item>({
  label,
  length,
  groups = [{ length, head: null }],
  look = "",
  itemAt,
  keyOf,
  onNear,
  whole = false,
  sought = null,
  children,
}: LongListProps<Item>) {
  const place = useRef<HTMLDivElement>(null);
  const heights = useRef(new PieceHeights());
  /** The pieces that are there with their items. */
  const standing = useRef(new Set<number>());
  const frame = useRef<Frame>({ owes: false, fetches: false }).current;
  const parts = inPieces(groups, whole);
  const pieces = parts.at(-1)?.endPiece ?? 0;
  // What follows a folded group is below its heading.
  heights.current.headed = parts
    .filter(({ head }) => head !== null)
    .map(({ firstPiece, endPiece }) => (firstPiece < endPiece ? firstPiece : firstPiece - 1));
  const [near, lookAgain] = useNearPieces(place, heights.current, pieces, frame);
  const hearKey = useTabPastEdge(
    place,
    (at, to) => partOf(at - 1, parts) === partOf(to - 1, parts),
    lookAgain,
  );
  const first = whole ? 0 : Math.min(near.first, Math.max(0, pieces - 1));
  const end = whole ? pieces : Math.min(Math.max(near.end, first + 1), pieces);

  // Once it is painted: asking for heights before would lay the page out one time more.
  useEffect(() => {
    measure(place.current, heights.current, first, look);
  });
  useEffect(() => {
    lookAgain();
    // Other items may be lower, and more of them fit the screen.
  }, [lookAgain, length, first, end, look]);
  const [from, to] = [placesOf(first, parts)[0] ?? 0, (placesOf(end - 1, parts).at(-1) ?? -1) + 1];
  useEffect(() => {
    if (!whole) onNear?.(from, to);
  }, [onNear, from, to, length, whole]);

  const partsNow = useRef(parts);
  partsNow.current = parts;
  useEffect(() => {
    if (sought !== null) scrollTo(place.current, sought.place, partsNow.current, heights.current);
  }, [sought]);

  const drawn = new Map<number, JSX.Element>();
  const stoodBefore = standing.current;
  standing.current = new Set();
  // After a jump one piece a frame is drawn anew, and none in the frame that has to read an answer first.
  let left = frame.fetches && !frame.owes ? 0 : 1;
  frame.fetches = false;
  for (let piece = first; piece < end; piece++) {
    const places = placesOf(piece, parts);
    const known = places.some((number) => itemAt(number) !== null);
    const waits = known && !whole && !stoodBefore.has(piece) && --left < 0;
    if (known && !waits) standing.current.add(piece);
    frame.fetches ||= !known;
    drawn.set(
      piece,
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
    <div ref={place} onKeyDown={hearKey}>
      {parts.map(({ head, firstPiece, endPiece }, number) => {
        const from = Math.min(Math.max(first, firstPiece), endPiece);
        const to = Math.max(Math.min(end, endPiece), from);
        return (
          <section key={number}>
            {head !== null && <div class="long-list-head">{head}</div>}
            <div {...(from < to && { role: "list", "aria-label": label })}>
              <Room height={heights.current.between(firstPiece, from)} />
              {Array.from({ length: to - from }, (_, piece) => drawn.get(from + piece))}
              <Room height={heights.current.between(to, endPiece)} />
            </div>
          </section>
        );
      })}
    </div>
  );
}

function Room({ height }: { height: number }) {
  return <div class="long-list-room" role="none" style={{ height: `${height}px` }} />;
}

interface GroupInPieces extends ListGroup {
  firstPlace: number;
  firstPiece: number;
  endPiece: number;
}

/** No piece has items of two groups. Folded ones have none, but where all is drawn. */
function inPieces(groups: ListGroup[], whole: boolean): GroupInPieces[] {
  let firstPlace = 0;
  let firstPiece = 0;
  return groups.map((group) => {
    const pieces = group.folded && !whole ? 0 : Math.ceil(group.length / pieceLength);
    const endPiece = firstPiece + pieces;
    const part = { ...group, firstPlace, firstPiece, endPiece };
    firstPlace += group.length;
    firstPiece = endPiece;
    return part;
  });
}

function partOf(place: number, parts: GroupInPieces[]): GroupInPieces | undefined {
  return parts.find(({ firstPlace, length }) => place >= firstPlace && place < firstPlace + length);
}

function placesOf(piece: number, parts: GroupInPieces[]): number[] {
  const part = parts.find(({ endPiece }) => piece < endPiece);
  if (part === undefined) return [];
  const start = (piece - part.firstPiece) * pieceLength;
  const count = Math.min(pieceLength, part.length - start);
  return Array.from({ length: count }, (_, number) => part.firstPlace + start + number);
}

/** Whatever scrolls around the list does so for an element, which is there for a moment. */
function scrollTo(
  list: HTMLElement | null,
  place: number,
  parts: GroupInPieces[],
  heights: PieceHeights,
): void {
  const part = partOf(place, parts);
  if (list === null || part === undefined) return;
  const piece = part.firstPiece + Math.floor((place - part.firstPlace) / pieceLength);
  const mark = document.createElement("i");
  mark.style.cssText = `position:absolute;top:${heights.above(piece) + heights.heading}px`;
  list.append(mark);
  mark.scrollIntoView({ block: "center" });
  mark.remove();
}

/** Keeps the heights of the pieces on the page. Out of sight they have none. */
function measure(list: HTMLElement | null, heights: PieceHeights, first: number, look: string): void {
  if (list === null || list.clientHeight === 0) return;
  heights.keepFor(`${list.clientWidth} ${look}`);
  heights.heading = list.querySelector<HTMLElement>(".long-list-head")?.offsetHeight ?? 0;
  list.querySelectorAll<HTMLElement>(".piece").forEach((piece, number) => {
    heights.keep(first + number, piece.getBoundingClientRect().height, piece.childElementCount);
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
  /** There are items still to be answered. */
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
