// Debian's Chromium without a window, patient with a busy machine.
import { chromium } from "playwright-core";
import { patience } from "./eventually.mjs";

/** `more` are further arguments of its command line. */
export async function launchChromium(...more) {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-background-networking",
      "--disable-component-update",
      ...more,
    ],
  });
  const newContext = browser.newContext.bind(browser);
  browser.newContext = async (options) => {
    const context = await newContext(options);
    context.setDefaultTimeout(patience);
    return context;
  };
  return browser;
}
