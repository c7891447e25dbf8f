// Firefox, driven over WebDriver BiDi by puppeteer-core.

import puppeteer from "puppeteer-core";

export const name = "Firefox";

export async function launch() {
  const browser = await puppeteer.launch({
    browser: "firefox",
    executablePath: process.env.FIREFOX ?? "/usr/bin/firefox-esr",
    headless: true,
    extraPrefsFirefox: {
      // A proxy that nobody serves: this machine is all there is.
      "network.proxy.type": 1,
      "network.proxy.http": "127.0.0.1",
      "network.proxy.http_port": 9,
      "network.proxy.ssl": "127.0.0.1",
      "network.proxy.ssl_port": 9,
      "intl.accept_languages": "en-GB,en",
    },
  });
  return { open: (size) => open(browser, size), close: () => browser.close() };
}

/** Which way a screen is held, Firefox 140 cannot be told, but its size it can. */
async function resize(page, viewport) {
  try {
    await page.setViewport(viewport);
  } catch (failure) {
    if (!/unknown command/.test(failure.message)) throw failure;
    await page.waitForFunction((width) => innerWidth === width, {}, viewport.width);
  }
}

async function open(browser, viewport) {
  const context = await browser.createBrowserContext();
  const page = await context.newPage();
  await resize(page, viewport);
  // Leaving unsaved changes is asked about.
  page.on("dialog", (dialog) => dialog.accept());
  const faults = [];
  page.on("pageerror", (error) => faults.push(`script error: ${error.message}`));
  page.on("console", (message) => faults.push(`console: ${message.text()}`));
  return {
    faults,
    goTo: (address) => page.goto(address),
    run: (code, ...given) =>
      page.evaluate(typeof code === "string" ? code : `(${code})(...${JSON.stringify(given)})`),
    click: ({ x, y }) => page.mouse.click(x, y),
    async key(combination) {
      const held = combination.split("+");
      const last = held.pop();
      for (const key of held) await page.keyboard.down(key);
      await page.keyboard.press(last);
      for (const key of held.reverse()) await page.keyboard.up(key);
    },
    type: (text) => page.keyboard.type(text),
    async chooseFile(label, file) {
      const input = await page.evaluateHandle((name) => window.inPage.all("file", name)[0], label);
      await input.asElement().uploadFile(file);
    },
    screenshot: () => page.screenshot(),
    close: () => context.close(),
  };
}
