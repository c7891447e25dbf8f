// What can be measured of a screen in the running page: letters, targets, and what does not fit.

/** Runs in the page. Gives a line for everything that is too small or does not fit. */
export function screenFaults() {
  const room = document.querySelector("#saddlerule").shadowRoot;
  const faults = [];
  const seen = (element) =>
    element.checkVisibility({ checkVisibilityCSS: true }) && element.getClientRects().length > 0;
  const told = (element) => {
    const words = (element.innerText ?? element.textContent ?? "").trim().slice(0, 40);
    const kind = element.getAttribute("class");
    return `<${element.tagName.toLowerCase()}${kind ? ` class="${kind}"` : ""}> ${words || element.getAttribute("aria-label") || ""}`;
  };
  const within = (element, test) => {
    for (let around = element; around !== null; around = around.parentElement) {
      if (test(getComputedStyle(around))) return true;
    }
    return false;
  };
  /** For screen readers alone: cut away to nothing, on purpose. */
  const aloud = (element) =>
    element.closest(".aloud") !== null || within(element, ({ clipPath }) => clipPath === "inset(50%)");
  const scrolls = (element) => within(element, ({ overflowX }) => /auto|scroll/.test(overflowX));
  const elements = [...room.querySelectorAll("*")].filter(
    (element) => seen(element) && !aloud(element) && element.closest("style") === null,
  );

  for (const element of elements) {
    const style = getComputedStyle(element);
    const itsOwnText = [...element.childNodes].some(
      (node) => node.nodeType === Node.TEXT_NODE && node.data.trim() !== "",
    );
    if (itsOwnText && element.closest("option") === null && parseFloat(style.fontSize) < 16) {
      faults.push(`letters of ${style.fontSize}: ${told(element)}`);
    }

    // Success criterion 2.5.5 of WCAG 2.2, target size (enhanced): 44 by 44 CSS pixels; a label belongs to its control.
    if (element.matches("button, a[href], input, select, textarea, summary")) {
      const box = (element.closest("label") ?? element).getBoundingClientRect();
      if (box.height < 43.5 || box.width < 43.5) {
        faults.push(`target of ${box.width.toFixed(1)} by ${box.height.toFixed(1)}: ${told(element)}`);
      }
    }

    const box = element.getBoundingClientRect();
    if (
      !(element instanceof SVGElement) &&
      (box.right > innerWidth + 1 || box.left < -1) &&
      !scrolls(element)
    ) {
      faults.push(
        `reaches from ${box.left.toFixed(0)} to ${box.right.toFixed(0)} of ${innerWidth}: ${told(element)}`,
      );
    }
    const hides = (way) => way === "hidden" || way === "clip";
    if (
      itsOwnText &&
      ((hides(style.overflowX) && element.scrollWidth > element.clientWidth + 1) ||
        (hides(style.overflowY) && element.scrollHeight > element.clientHeight + 1))
    ) {
      faults.push(`clipped: ${told(element)}`);
    }
    if (
      element instanceof SVGTextElement &&
      getComputedStyle(element.ownerSVGElement).overflow !== "visible"
    ) {
      const picture = element.ownerSVGElement.getBoundingClientRect();
      if (box.left < picture.left - 2 || box.right > picture.right + 2 || box.bottom > picture.bottom + 2) {
        faults.push(`outside of its drawing: ${told(element)}`);
      }
    }
  }
  // Bars at head and foot are over what scrolls below them.
  const flowing = elements.filter(
    (element) => !within(element, ({ position }) => /sticky|fixed/.test(position)),
  );
  faults.push(...overlaps(flowing, told));
  const tooWide = document.documentElement.scrollWidth - innerWidth;
  if (tooWide > 0) faults.push(`the page is ${tooWide} px wider than the screen`);
  return [...new Set(faults)];

  /** Words that are over other words. What is drawn is left out: there figures are on lines and bands. */
  function overlaps(elements, told) {
    const lines = elements
      .filter(
        (element) => !(element instanceof SVGElement) && element.closest("option, [aria-hidden]") === null,
      )
      .flatMap((element) =>
        [...element.childNodes]
          .filter((node) => node.nodeType === Node.TEXT_NODE && node.data.trim() !== "")
          .flatMap((node) => {
            const range = document.createRange();
            range.selectNodeContents(node);
            return [...range.getClientRects()].map((box) => ({ element, box }));
          }),
      )
      .sort((one, other) => one.box.top - other.box.top);
    const found = [];
    lines.forEach(({ element, box }, place) => {
      for (let next = place + 1; next < lines.length && lines[next].box.top < box.bottom; ++next) {
        const { element: other, box: its } = lines[next];
        const width = Math.min(box.right, its.right) - Math.max(box.left, its.left);
        const height = Math.min(box.bottom, its.bottom) - its.top;
        // Lines set close touch with what hangs below their letters.
        if (other !== element && width > 3 && height > 0.4 * Math.min(box.height, its.height)) {
          found.push(`over each other: ${told(element)} and ${told(other)}`);
        }
      }
    });
    return found;
  }
}
