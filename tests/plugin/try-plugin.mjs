// The plugin in the real content management system, as Debian has it: its own database server, PHP's own web server, a fresh website. An
// administrator uploads the zip and activates it; an author, who may write no scripts, uploads a list and writes the shortcode, and then the
// block; a reader opens the page and gets a verdict; the author uploads a newer list. Not part of tests/run, for its packages are large:
//
//   .ci/need wordpress wordpress-theme-twentytwentythree php-cli php-mysql mariadb-server chromium=chromium
//   .ci/build-wasm && node tests/plugin/try-plugin.mjs
//
// Everything it writes is in one folder, which it removes at its end; pictures of the page go to build/plugin.

import assert from "node:assert/strict";
import { execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir, userInfo } from "node:os";
import { join } from "node:path";
import { releaseFiles } from "../../web/building/release.mjs";
import { pageWasmFile, root } from "../support/built-engine.mjs";
import { keepStageChosen, usualStage } from "../support/choose-stage.mjs";
import { until } from "../support/eventually.mjs";
import { freePort } from "../support/free-port.mjs";
import { launchBrowser, screens } from "../support/open-page.mjs";

const system = "/usr/share/wordpress";
const folder = mkdtempSync(join(tmpdir(), "saddlerule-plugin-"));
const pictures = join(root, "build/plugin");
mkdirSync(pictures, { recursive: true });
const socket = join(folder, "database.sock");
const ending = [];

/** In a group of its own, with whatever it starts itself. */
function started(program, given, env = process.env) {
  const running = spawn(program, given, { stdio: "ignore", detached: true, env });
  ending.unshift(async () => {
    if (running.exitCode !== null || running.signalCode !== null) return;
    process.kill(-running.pid);
    await once(running, "exit");
  });
  return running;
}

const waits = { late: () => assert.fail("a server did not start") };

async function database() {
  const data = join(folder, "database");
  const user = `--user=${userInfo().username}`;
  const how = ["--no-defaults", `--datadir=${data}`, user];
  execFileSync("mariadb-install-db", [...how, "--auth-root-authentication-method=normal"], { stdio: "pipe" });
  started("mariadbd", [...how, "--skip-networking", `--socket=${socket}`]);
  const asked = (sql) =>
    execFileSync("mariadb", ["--no-defaults", "-u", "root", `--socket=${socket}`, "-e", sql], {
      stdio: "pipe",
    });
  await until(() => {
    try {
      asked("create database club");
      return true;
    } catch {
      return null;
    }
  }, waits);
}

/** The website, with an administrator and an author. */
async function website(port) {
  const place = join(folder, "site");
  cpSync(system, place, { recursive: true, dereference: true });
  const address = `http://127.0.0.1:${port}`;
  const config = `<?php
define('DB_NAME', 'club');
define('DB_USER', 'root');
define('DB_PASSWORD', '');
define('DB_HOST', 'localhost:${socket}');
define('DB_CHARSET', 'utf8mb4');
define('DB_COLLATE', '');
define('WP_HTTP_BLOCK_EXTERNAL', true);
define('DISABLE_WP_CRON', true);
define('FS_METHOD', 'direct');
$table_prefix = 'club_';
if (!defined('ABSPATH')) define('ABSPATH', __DIR__ . '/');
require_once ABSPATH . 'wp-settings.php';
`;
  writeFileSync(join(place, "wp-config.php"), config);
  const install = `define('WP_INSTALLING', true);
$_SERVER['HTTP_HOST'] = '127.0.0.1:${port}';
require '${place}/wp-load.php';
require ABSPATH . 'wp-admin/includes/upgrade.php';
wp_install('Bike loans at the village hall', 'warden', 'warden@club.example', true, '', 'a long word');
update_option('siteurl', '${address}');
update_option('home', '${address}');
wp_insert_user(['user_login' => 'helper', 'user_pass' => 'a longer word', 'user_email' => 'helper@club.example', 'role' => 'author']);
switch_theme('twentytwentythree');`;
  execFileSync("php", ["-d", "sendmail_path=/bin/true", "-d", "error_reporting=E_ERROR", "-r", install], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  started("php", ["-S", `127.0.0.1:${port}`, "-t", place], { ...process.env, PHP_CLI_SERVER_WORKERS: "4" });
  await until(() => fetch(address).catch(() => null), waits);
  return address;
}

async function loggedIn(browser, address, name, word) {
  const context = await browser.newContext({ viewport: screens.laptop, locale: "en-GB" });
  const page = await context.newPage();
  await page.goto(`${address}/wp-login.php`);
  await page.fill("#user_login", name);
  await page.fill("#user_pass", word);
  await Promise.all([page.waitForURL(/wp-admin/), page.click("#wp-submit")]);
  return page;
}

async function installs(page, address, zip) {
  await page.goto(`${address}/wp-admin/plugin-install.php?tab=upload`);
  await page.setInputFiles("#pluginzip", zip);
  await Promise.all([page.waitForURL(/action=upload-plugin/), page.click("#install-plugin-submit")]);
  await Promise.all([page.waitForURL(/plugins\.php/), page.getByText("Activate Plugin").click()]);
  await page.getByText("Plugin activated.").waitFor();
}

/** What the editor itself does, with the rights of whoever is logged in. */
const asks = (page, request) => page.evaluate((request) => window.wp.apiFetch(request), request);

async function uploads(page, name, text) {
  return page.evaluate(
    async ([name, text]) => {
      const body = new window.FormData();
      body.append("file", new File([text], name, { type: "text/csv" }));
      const { source_url } = await window.wp.apiFetch({ path: "/wp/v2/media", method: "POST", body });
      return source_url;
    },
    [name, text],
  );
}

const publishes = async (page, title, content) =>
  asks(page, { path: "/wp/v2/posts", method: "POST", data: { title, content, status: "publish" } });

async function verdict(browser, address, { bike, picture }) {
  const context = await browser.newContext({ viewport: screens.phone, locale: "en-GB" });
  await context.addInitScript(keepStageChosen, usualStage);
  const page = await context.newPage();
  const problems = [];
  page.on("pageerror", (error) => problems.push(error.message));
  page.on("console", (message) => problems.push(message.text()));
  await page.goto(address);
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5 cm");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
  await page.locator("saddlerule-fit").getByRole("button", { name: "Bikes", exact: true }).click();
  await page.getByText(bike).first().waitFor();
  await page.screenshot({ path: join(pictures, `${picture}.png`) });
  await context.close();
  return problems;
}

let failed = null;
try {
  const release = await releaseFiles({ engine: pageWasmFile });
  const zip = join(folder, "saddlerule-wordpress.zip");
  writeFileSync(zip, release["saddlerule-wordpress.zip"]);
  await database();
  const address = await website(await freePort());
  const browser = await launchBrowser();
  ending.unshift(() => browser.close());

  const warden = await loggedIn(browser, address, "warden", "a long word");
  await installs(warden, address, zip);
  console.log("the administrator uploads and activates the plugin");

  const helper = await loggedIn(browser, address, "helper", "a longer word");
  await helper.goto(`${address}/wp-admin/post-new.php`);
  await helper.waitForFunction(() => window.wp?.apiFetch && window.wp.blocks?.getBlockType("saddlerule/fit"));
  const list = readFileSync(join(root, "web/downloads/bikes.csv"), "utf8");
  const bike = "Loan 02, 14 in, two hand brakes";
  assert.ok(list.includes(bike));
  const first = await uploads(helper, "bikes.csv", list);

  const classic = await publishes(helper, "Shortcode", '[saddlerule list="bikes.csv" units="cm"]');
  assert.deepEqual(await verdict(browser, classic.link, { bike, picture: "shortcode" }), []);
  console.log("an author's shortcode gives a reader a verdict on the list of that name");

  const scripts = await publishes(
    helper,
    "Script",
    '<script src="/x.js"></script><saddlerule-fit></saddlerule-fit>',
  );
  assert.doesNotMatch(scripts.content.rendered, /<script|<saddlerule-fit/);
  console.log("the same author may write no scripts");

  const comment = `<!-- wp:saddlerule/fit ${JSON.stringify({ list: first, view: "rider" })} /-->`;
  const block = await publishes(helper, "Block", comment);
  assert.deepEqual(await verdict(browser, block.link, { bike, picture: "block" }), []);
  await helper.evaluate(
    (list) =>
      window.wp.data
        .dispatch("core/block-editor")
        .insertBlocks(window.wp.blocks.createBlock("saddlerule/fit", { list })),
    first,
  );
  await helper.getByRole("button", { name: "Choose from the media library" }).waitFor();
  await helper.keyboard.press("Escape");
  await helper.screenshot({ path: join(pictures, "editor.png") });
  console.log("the block has its form in the editor, and gives a verdict");

  const newer = "Loan 02, painted blue";
  const second = await uploads(helper, "bikes.csv", list.replaceAll(bike, newer));
  assert.notEqual(second, first);
  assert.deepEqual(await verdict(browser, classic.link, { bike: newer, picture: "newer" }), []);
  console.log(
    `a newer list of the same name (${second.split("/").at(-1)}) is shown without changing the page`,
  );
} catch (failure) {
  failed = failure;
} finally {
  for (const end of ending) await end();
  rmSync(folder, { recursive: true });
}
if (failed !== null) {
  console.error(failed.stack);
  process.exit(1);
}
