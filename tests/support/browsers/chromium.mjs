// Chromium, driven over its own protocol by playwright-core.

import { launchChromium } from "../chromium.mjs";

export const name = "Chromium";

export async function launch() {
  const browser = await launchChromium(
    // A proxy that nobody serves: this machine is all there is.
    "--proxy-server=127.0.0.1:9",
  );
  return { open: (size) => open(browser, size), close: () => browser.close() };
}

async function open(browser, viewport) {
  const context = await browser.newContext({ viewport, locale: "en-GB" });
  // The picker that keeps hold of a file opens outside of the page, where no driver reaches; without it, the page uses the
  // file field that all browsers have.
  await context.addInitScript(() => delete window.showOpenFilePicker);
  const page = await context.newPage();
  // Leaving unsaved changes is asked about.
  page.on("dialog", (dialog) => dialog.accept());
  const faults = [];
  page.on("pageerror", (error) => faults.push(`script error: ${error.message}`));
  page.on("console", (message) => faults.push(`console: ${message.text()}`));
  // From the first moment on; asked for together with the press that opens it, it would come too late.
  page.on("filechooser", () => undefined);
  return {
    faults,
    goTo: (address) => page.goto(address),
    run: (code, ...given) =>
      typeof code === "string"
        ? page.evaluate(code)
        : page.evaluate(`(${code})(...${JSON.stringify(given)})`),
    click: ({ x, y }) => page.mouse.click(x, y),
    key: (key) => page.keyboard.press(key),
    type: (text) => page.keyboard.type(text),
    async chooseFile(label, file) {
      const input = await page.evaluateHandle((name) => window.inPage.all("file", name)[0], label);
      const point = await input.evaluate((element) => window.inPage.pointOf(element));
      const [chooser] = await Promise.all([
        page.waitForEvent("filechooser"),
        page.mouse.click(point.x, point.y),
      ]);
      await chooser.setFiles(file);
    },
    screenshot: () => page.screenshot(),
    close: () => context.close(),
  };
}
