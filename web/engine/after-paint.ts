// Letting the page be seen before it goes on with something that takes a moment.

/** Resolves once the next frame is on screen. A page out of sight is not painted, and goes on after a tenth of a second. */
export function afterPaint(): Promise<void> {
  return new Promise((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve));
    setTimeout(resolve, 100);
  });
}
