// WebKit as WebKitGTK has it: its small browser on a screen that nobody sees, driven over WebDriver.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync } from "node:fs";
import { createServer } from "node:net";
import { Builder, Capabilities, Key, Origin } from "selenium-webdriver";

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
  const port = await freePort();
  const driver = spawn("WebKitWebDriver", [`--port=${port}`], {
    stdio: "ignore",
    env: {
      ...process.env,
      DISPLAY: `:${String(number).trim()}`,
      LANG: "C.UTF-8",
      // Its own walls need rights that a container does not have; what it opens here is our own page.
      WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: "1",
    },
  });
  const server = `http://127.0.0.1:${port}`;
  await answered(`${server}/status`);
  return {
    open: (size) => open(server, size),
    close() {
      driver.kill();
      screen.kill();
    },
  };
}

async function freePort() {
  const listener = createServer().listen(0, "127.0.0.1");
  await once(listener, "listening");
  const { port } = listener.address();
  listener.close();
  await once(listener, "close");
  return port;
}

async function answered(address) {
  for (let turn = 0; turn < 100; ++turn) {
    if ((await fetch(address).catch(() => null))?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`no answer from ${address}`);
}

async function open(server, { width, height }) {
  const driver = await new Builder()
    .usingServer(server)
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
  return {
    faults: [],
    async goTo(address) {
      await resize();
      await driver.get(address);
    },
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
    close: () => driver.quit(),
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
