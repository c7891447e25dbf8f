// How high a frame may become, in CSS pixels. What is higher scrolls inside it: a list of thousands of bikes would make the page
// around endless.

const lowest = 320;
const highest = 6000;

/** As a style has it. */
export function frameHeight(height: number): string {
  return `${Math.min(highest, Math.max(lowest, Math.ceil(height)))}px`;
}
