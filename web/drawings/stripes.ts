// Stripes across a piece of a drawing in which no bike's saddle fits.
const between = 8;

/** The lines in a field of that size, each from its left or upper edge down to the lower or right one. */
export function stripes(width: number, height: number): string {
  const lines: string[] = [];
  for (let start = between; start < width + height; start += between) {
    const [down, left] = start < height ? [start, 0] : [height, start - height];
    const [up, right] = start < width ? [0, start] : [start - width, width];
    lines.push(`M${left} ${down}L${right} ${up}`);
  }
  return lines.join("");
}
