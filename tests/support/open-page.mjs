// Opens the built page as a family would: from a file, without a network, on a phone or a laptop.

import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "./built-engine.mjs";
import { keepStageChosen, usualStage } from "./choose-stage.mjs";
import { launchChromium } from "./chromium.mjs";
import { servedAddress } from "./served-page.mjs";

/** `PAGE` names another build of the page. */
export const pageFile = process.env.PAGE ?? join(root, "build/page/saddlerule.html");
export const pageAddress = pathToFileURL(pageFile).href;

/** The same page from a server, where it may save on the device. */
export const servedPage = () => servedAddress(pageFile);

export const screens = {
  phone: { width: 390, height: 844 },
  laptop: { width: 1280, height: 800 },
};

export { launchChromium as launchBrowser };

/**
 * A page with the built file open in it. `faults` gathers what must stay empty: script errors, messages on the console
 * (a refusal by the policy is one), and requests beyond the file itself. `now` fixes the device's clock; `pickers` puts stand-ins
 * for the browser's file pickers into the page; `prepare` is given the browser's context before the page is opened in it;
 * `address` is that of another build, `served` has this one from a server; `stage` is how every rider rides, null where the test chooses that itself.
 */
export async function openPage(
  browser,
  viewport,
  { now, pickers, prepare, served = false, address: elsewhere, stage = usualStage, ...options } = {},
) {
  const address = elsewhere ?? (served ? await servedPage() : pageAddress);
  const offline = address.startsWith("file:");
  const context = await browser.newContext({ viewport, offline, locale: "en-GB", ...options });
  // Files come and go as in browsers without these: a test that wants them brings its own.
  await context.addInitScript(() => {
    window.showOpenFilePicker = undefined;
    window.showSaveFilePicker = undefined;
  });
  if (stage !== null) await context.addInitScript(keepStageChosen, stage);
  if (pickers) await context.addInitScript(pickers);
  const page = await context.newPage();
  if (now) await page.clock.setFixedTime(new Date(now));
  await prepare?.(context);
  const faults = [];
  page.on("pageerror", (error) => faults.push(`script error: ${error.message}`));
  page.on("console", (message) => faults.push(`console: ${message.text()}`));
  page.on("request", (request) => {
    // The engine's thread is a blob: a text that the page made itself.
    if (request.url() !== address && !/^(data|blob):/.test(request.url()))
      faults.push(`request: ${request.url()}`);
  });
  await page.goto(address);
  await page.locator(".screen.current .screen-title").waitFor();
  return { page, faults, close: () => context.close() };
}

/** Goes to a screen by the page's own navigation. */
export async function goTo(page, name) {
  await page.getByRole("navigation").getByRole("button", { name, exact: true }).click();
}

/** Opens files through the page's file chooser. */
export async function openList(page, file) {
  await goTo(page, "List");
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: /^Open (a|another) list/ }).click(),
  ]);
  await chooser.setFiles(file);
}

/** The words on the screen. The page lives in a shadow root, which an element's own text leaves out. */
export function shownText(page) {
  return page.evaluate(() => {
    const host = [...document.querySelectorAll("*")].find((element) => element.shadowRoot);
    return [...host.shadowRoot.children].map((child) => child.innerText ?? "").join("\n");
  });
}
