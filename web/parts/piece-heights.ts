// How high the pieces of a long list are: as they were when last seen, and as the first one seen for the others.

/** Items in a piece. */
export const pieceLength = 2;

/** Height of an item before any was seen. */
const firstGuess = 190;

export class PieceHeights {
  private width = 0;
  private usual: number | null = null;
  private readonly seen = new Map<number, number>();

  /** Rows of another width have other heights. */
  keepFor(width: number): void {
    if (width === this.width) return;
    this.width = width;
    this.usual = null;
    this.seen.clear();
  }

  keep(piece: number, height: number): void {
    // One figure once and for all: a room of thousands of rows must not jump with every row that comes into sight.
    this.usual ??= height;
    this.seen.set(piece, height);
  }

  /** Height of all pieces before this one. */
  before(piece: number): number {
    return this.between(0, piece);
  }

  between(first: number, end: number): number {
    const usual = this.usual ?? firstGuess * pieceLength;
    let height = Math.max(0, end - first) * usual;
    for (const [piece, seen] of this.seen) {
      if (piece >= first && piece < end) height += seen - usual;
    }
    return height;
  }

  /** The piece that lies so far below the top of the list. */
  pieceAt(depth: number, pieces: number): number {
    let low = 0;
    let high = Math.max(0, pieces - 1);
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (this.before(middle) <= depth) low = middle;
      else high = middle - 1;
    }
    return low;
  }
}
