// WebKit as WebKitGTK has it: its small browser on a screen that nobody sees, driven over WebDriver.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync } from "node:fs";
import { Builder, Capabilities, Key, Origin } from "selenium-webdriver";
import { until } from "../eventually.mjs";
import { freePort } from "../free-port.mjs";

export const name = "WebKit";

const miniBrowser = [
  process.env.WEBKIT_BROWSER,
  ...["x86_64", "aarch64"].map((cpu) => `/usr/lib/${cpu}-linux-gnu/webkit2gtk-4.1/MiniBrowser`),
].find((path) => path !== undefined && existsSync(path));

export async function launch() {
  const screen = spawn("Xvfb", ["-displayfd", "3", "-screen", "0", "1600x1300x24", "-nolisten", "tcp"], {
    stdio: ["ignore", "ignore", "ignore", "pipe"],
  });
  const [number] = await once(screen.stdio[3], "data");
  const display = `:${String(number).trim()}`;
  return { open: (size) => openOnceMore(display, size), close: () => screen.kill() };
}

const mostStarts = 4;

/** On a busy machine the small browser now and then does not come up, and nothing is said of it. */
async function openOnceMore(display, size) {
  for (let turn = 1; ; ++turn) {
    const driver = startDriver(display, await freePort());
    try {
      // The busier the machine, the longer it may take: each start has more time than the one before.
      return await within(turn * 30_000, "a window of WebKit", open(driver, size));
    } catch (error) {
      driver.end();
      if (turn === mostStarts) throw error;
    }
  }
}

function startDriver(display, port) {
  const started = spawn("WebKitWebDriver", [`--port=${port}`], {
    stdio: "ignore",
    // A group of its own, so that what it starts ends with it.
    detached: true,
    env: {
      ...process.env,
      DISPLAY: display,
      LANG: "C.UTF-8",
      // Its own walls need rights that a container does not have; what it opens here is our own page.
      WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: "1",
    },
  });
  return {
    server: `http://127.0.0.1:${port}`,
    hasEnded: () => started.exitCode !== null || started.signalCode !== null,
    end() {
      if (started.exitCode === null) process.kill(-started.pid);
    },
  };
}

/** A promise that is not waited for beyond `limit` ms. */
async function within(limit, what, promise) {
  let timer;
  const late = new Promise((_, reject) => {
    timer = setTimeout(() => reject(new Error(`${what} did not come within ${limit} ms`)), limit);
  });
  try {
    return await Promise.race([promise, late]);
  } finally {
    clearTimeout(timer);
  }
}

/** Until the driver answers; whoever started it waits no longer than it likes. */
async function answered({ server, hasEnded }) {
  const answers = async () =>
    hasEnded() || ((await fetch(`${server}/status`).catch(() => null))?.ok ?? false);
  await until(answers, {
    late() {
      throw new Error("the driver of WebKit does not answer");
    },
  });
  if (hasEnded()) throw new Error("the driver of WebKit has ended");
}

async function open(started, { width, height }) {
  await answered(started);
  const driver = await new Builder()
    .usingServer(started.server)
    .withCapabilities(
      new Capabilities({
        browserName: "MiniBrowser",
        // Leaving unsaved changes is asked about.
        unhandledPromptBehavior: "accept",
        // A proxy that nobody serves: this machine is all there is.
        proxy: {
          proxyType: "manual",
          httpProxy: "127.0.0.1:9",
          sslProxy: "127.0.0.1:9",
          noProxy: ["127.0.0.1"],
        },
        "webkitgtk:browserOptions": { binary: miniBrowser, args: ["--automation"] },
      }),
    )
    .build();
  const run = (code, ...given) =>
    driver.executeScript(typeof code === "string" ? code : `return (${code})(...${JSON.stringify(given)})`);
  /** The window has bars of its own, and is never narrower than they need. */
  const resize = async () => {
    await driver.manage().window().setRect({ x: 0, y: 0, width, height });
    const bars = await run(() => ({ x: outerWidth - innerWidth, y: outerHeight - innerHeight }));
    await driver
      .manage()
      .window()
      .setRect({ x: 0, y: 0, width: width + bars.x, height: height + bars.y });
  };
  await resize();
  return {
    faults: [],
    goTo: (address) => driver.get(address),
    run,
    click: ({ x, y }) =>
      driver
        .actions()
        .move({ x: Math.round(x), y: Math.round(y), origin: Origin.VIEWPORT, duration: 0 })
        .click()
        .perform(),
    key: (key) => press(driver, key),
    type: (text) => driver.actions().sendKeys(text).perform(),
    async chooseFile(label, file) {
      const input = await driver.executeScript((name) => window.inPage.all("file", name)[0], label);
      await input.sendKeys(file);
    },
    screenshot: async () => Buffer.from(await driver.takeScreenshot(), "base64"),
    async close() {
      await within(5_000, "the end of WebKit", driver.quit()).catch(() => undefined);
      started.end();
    },
  };
}

const keys = { Control: Key.CONTROL, Shift: Key.SHIFT, Tab: Key.TAB, Enter: Key.ENTER, Delete: Key.DELETE };

/** "Shift+Tab": all but the last are held down. */
async function press(driver, combination) {
  const parts = combination
    .split("+")
    .map((key) => keys[key] ?? (key === "Space" ? " " : (Key[arrow(key)] ?? key)));
  const last = parts.pop();
  let actions = driver.actions();
  for (const held of parts) actions = actions.keyDown(held);
  actions = actions.sendKeys(last);
  for (const held of parts) actions = actions.keyUp(held);
  await actions.perform();
}

/** "ArrowDown" is called ARROW_DOWN there. */
const arrow = (key) => key.replace(/([a-z])([A-Z])/g, "$1_$2").toUpperCase();
