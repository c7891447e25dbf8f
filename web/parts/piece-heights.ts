// How high the pieces of a long list are: as they were when last seen, and as the first one seen for the others.

/** Items in a piece. */
export const pieceLength = 2;

/** Height of an item before any was seen. */
const firstGuess = 100;

export class PieceHeights {
  /** Pieces with a heading above them, and how high a heading is. */
  headed: number[] = [];
  heading = 0;
  private form = "";
  private usual: number | null = null;
  private readonly seen = new Map<number, number>();

  /** Rows of another width or another look have other heights. */
  keepFor(form: string): void {
    if (form === this.form) return;
    this.form = form;
    this.usual = null;
    this.seen.clear();
  }

  keep(piece: number, height: number, items: number): void {
    // One figure once and for all: a room of thousands of rows must not jump with every row that comes into sight.
    this.usual ??= (height / items) * pieceLength;
    this.seen.set(piece, height);
  }

  /** Without headings. */
  between(first: number, end: number): number {
    const usual = this.usual ?? firstGuess * pieceLength;
    let height = Math.max(0, end - first) * usual;
    for (const [piece, seen] of this.seen) {
      if (piece >= first && piece < end) height += seen - usual;
    }
    return height;
  }

  /** Height of all that is above a piece and its heading. */
  above(piece: number): number {
    return this.between(0, piece) + this.heading * this.headed.filter((first) => first < piece).length;
  }

  /** The piece that is so far below the top of the list. */
  pieceAt(depth: number, pieces: number): number {
    let low = 0;
    let high = Math.max(0, pieces - 1);
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (this.above(middle) <= depth) low = middle;
      else high = middle - 1;
    }
    return low;
  }
}
