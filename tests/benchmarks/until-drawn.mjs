// How long a page takes to show a change.

/** From a change made in the page to the frame that shows it, by the page's own clock. */
export async function untilDrawn(page, act, isDrawn) {
  return page.evaluate(
    async ([actText, drawnText]) => {
      const host = [...document.querySelectorAll("*")].find((element) => element.shadowRoot);
      const root = host.shadowRoot;
      const run = (text) => new Function("root", `return (${text})(root)`)(root);
      const start = performance.now();
      run(actText);
      // What is there once a frame is over has been painted.
      do {
        await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
        if (performance.now() - start > 20000) throw new Error("never drawn");
      } while (!run(drawnText));
      return performance.now() - start;
    },
    [act.toString(), isDrawn.toString()],
  );
}
