// A text as a QR code (ISO/IEC 18004), to be drawn as one path.
import { correction, generate } from "lean-qr/nano";

export interface MatrixCode {
  /** Modules along a side. */
  size: number;
  /** The dark ones, as a path in a square of that size. */
  path: string;
}

/** null: the text is longer than any code can be. */
export function matrixCode(text: string): MatrixCode | null {
  try {
    const code = generate(text, { minCorrectionLevel: correction.M });
    return { size: code.size, path: darkPath(code) };
  } catch {
    return null;
  }
}

function darkPath({ size, get }: { size: number; get: (x: number, y: number) => boolean }): string {
  let path = "";
  for (let y = 0; y < size; ++y)
    for (let x = 0; x < size; ++x) {
      if (!get(x, y)) continue;
      const from = x;
      while (get(x + 1, y)) ++x;
      path += `M${from} ${y}h${x + 1 - from}v1h${from - x - 1}z`;
    }
  return path;
}
