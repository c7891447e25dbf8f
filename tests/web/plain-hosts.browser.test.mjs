// The files on hosts that serve them in their own way: another charset, addresses that lead elsewhere, an Apache with few modules, scripts
// that were joined.

import assert from "node:assert/strict";
import { chmodSync, existsSync, readFileSync, readdirSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { once } from "node:events";
import { extname, join } from "node:path";
import test, { after, before, describe } from "node:test";
import { siteHeaders } from "../../web/building/hosting.mjs";
import { apache, debianModules } from "../support/apache.mjs";
import { siteBuilder } from "../support/built-site.mjs";
import { sample } from "../support/built-engine.mjs";
import { clubPage, clubSite, elementFolder } from "../support/club-site.mjs";
import { keepStageChosen, usualStage } from "../support/choose-stage.mjs";
import { eventually as soon } from "../support/eventually.mjs";
import { goTo, launchBrowser, pageFile, screens } from "../support/open-page.mjs";
import { browsers } from "../support/browsers/browsers.mjs";
import { Visit } from "../support/browsers/visit.mjs";

/** Browsers of a busy machine take their time. */
const eventually = (check) => soon(check, { tries: 200 });

const sites = siteBuilder();
const site = sites.first();
after(sites.done);

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

const types = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".txt": "text/plain",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
};

/** A server of plain files by a function from path to file; `answer` may take a request over, and says so. */
async function host(test, fileOf, { charset = "", answer = () => false } = {}) {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url, "http://localhost");
    if (answer(pathname, response)) return;
    const file = fileOf(pathname);
    if (file === null || !existsSync(file) || statSync(file).isDirectory()) {
      response.writeHead(404, { "content-type": "text/plain" }).end("not found\n");
      return;
    }
    const type = types[extname(file)] ?? "application/octet-stream";
    // As Apache's AddDefaultCharset does: of these two alone.
    const named = charset !== "" && /^text\/(html|plain)$/.test(type) ? `; charset=${charset}` : "";
    response.writeHead(200, { "content-type": type + named }).end(readFileSync(file));
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  test.after(() => {
    server.closeAllConnections();
    server.close();
  });
  return { address: `http://127.0.0.1:${server.address().port}`, server };
}

async function visit(test, address, options = {}) {
  const context = await browser.newContext({ viewport: screens.phone, locale: "en-GB", ...options });
  test.after(() => context.close());
  await context.addInitScript(keepStageChosen, usualStage);
  const page = await context.newPage();
  const said = [];
  page.on("console", (message) => said.push(message.text()));
  page.on("pageerror", (error) => said.push(`error: ${error.message}`));
  await page.goto(address);
  return { page, context, said };
}

async function judges(page) {
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5 cm");
  await page.getByRole("heading", { name: "Saddle height to look for" }).waitFor();
}

const inSite = (pathname) =>
  pathname.startsWith("/fit/") ? join(site, pathname.slice(5) || "index.html") : null;

const latin = { charset: "ISO-8859-1" };

describe("a host that calls every page ISO-8859-1", () => {
  for (const { name, launch } of browsers)
    test(`${name}: the single file runs, and its letters are its own`, async (test) => {
      const { address } = await host(test, () => pageFile, latin);
      const browser = await launch();
      test.after(() => browser.close());
      const to = `${address}/saddlerule.html#language=de`;
      const visit = await Visit.to(to, { test, browser, size: screens.phone });
      await visit.types("Schrittlänge", "49,5 cm");
      await visit.reads("Gesuchte Sattelhöhe");
      assert.deepEqual(await visit.faults(), []);
    });

  test("the site runs, in a language with letters of its own, and is kept for later", async (test) => {
    const { address } = await host(test, inSite, latin);
    const { page, said } = await visit(test, `${address}/fit/#language=fr`);
    await page.getByRole("textbox", { name: "Entrejambe" }).fill("49,5 cm");
    await page.getByRole("heading", { name: "Hauteur de selle recherchée" }).waitFor();
    assert.doesNotMatch(await page.locator("main").evaluate((main) => main.shadowRoot.textContent), /Ã|â€/);
    await page.evaluate(() => navigator.serviceWorker.ready);
    assert.deepEqual(said, []);
  });

  test("the element has its letters in a page of another charset", async (test) => {
    const body =
      '<script src="/saddlerule/saddlerule-fit.js"></script><saddlerule-fit language="de"></saddlerule-fit>';
    const { address } = await host(test, (path) => join(elementFolder, path.replace("/saddlerule/", "")), {
      answer(path, response) {
        if (path !== "/") return false;
        response.writeHead(200, { "content-type": "text/html; charset=ISO-8859-1" });
        response.end(`<!doctype html><title>Club</title><link rel="icon" href="data:,">${body}`);
        return true;
      },
    });
    const { page, said } = await visit(test, `${address}/`);
    await page.getByRole("textbox", { name: "Schrittlänge" }).fill("49,5 cm");
    assert.doesNotMatch(
      await page.locator("saddlerule-fit").evaluate((host) => host.shadowRoot.textContent),
      /Ã|â€/,
    );
    assert.deepEqual(said, []);
  });
});

test("the single file under a policy that refuses its scripts says so, once it had time to start", async (test) => {
  const { address } = await host(test, () => pageFile, {
    answer(path, response) {
      response.writeHead(200, {
        "content-type": "text/html",
        "content-security-policy": "script-src 'self'",
      });
      response.end(readFileSync(pageFile));
      return true;
    },
  });
  const { page } = await visit(test, `${address}/saddlerule.html`);
  await page.evaluate(() => document.getAnimations().forEach((animation) => animation.finish()));
  await page.getByText("Saddlerule has not started.").waitFor();
});

describe("addresses that lead elsewhere", () => {
  test("the site is kept for later where index.html leads to its folder", async (test) => {
    const { address, server } = await host(test, inSite, {
      answer(path, response) {
        if (path !== "/fit/index.html") return false;
        response.writeHead(301, { location: "/fit/" }).end();
        return true;
      },
    });
    const { page, context } = await visit(test, `${address}/fit/`);
    await judges(page);
    await goTo(page, "Save");
    await page.getByText("it opens here with no signal").waitFor();
    server.closeAllConnections();
    server.close();
    await context.setOffline(true);
    await page.goto(`${address}/fit/?again`);
    await judges(page);
  });

  test("the site at an address without its slash says in every language that it has not started", async (test) => {
    const { address } = await host(test, (path) =>
      path === "/fit" ? join(site, "index.html") : inSite(path),
    );
    const { page } = await visit(test, `${address}/fit`);
    await page.getByText("Saddlerule has not started.").waitFor();
    assert.equal(await page.locator("main > p:visible").count(), 5);
  });
});

describe("Apache with the .htaccess of the site", () => {
  const seen = (folder) => {
    for (const name of ["", ...readdirSync(folder, { recursive: true })])
      chmodSync(join(folder, name), statSync(join(folder, name)).isDirectory() ? 0o755 : 0o644);
    chmodSync(sites.folder, 0o755);
  };

  for (const [what, modules] of [
    ["no modules", ["dir"]],
    ["Debian's modules", debianModules],
    ["mod_headers but no mod_deflate", ["mime", "dir", "filter", "headers"]],
    ["every module it can use", [...debianModules, "headers"]],
  ])
    test(`${what}: every file is served, with all that these modules can do`, async (test) => {
      seen(site);
      const server = await apache(site, modules);
      test.after(server.close);
      const accept = { headers: { "accept-encoding": "gzip" } };
      for (const name of readdirSync(site, { recursive: true })) {
        if (name.endsWith("htaccess") || statSync(join(site, name)).isDirectory()) continue;
        const response = await fetch(`${server.origin}/${name}`, accept);
        assert.equal(response.status, 200, `${name}: ${server.errors()}`);
        await response.arrayBuffer();
      }
      const { headers } = await fetch(`${server.origin}/`, accept);
      const has = (name) => modules.includes(name);
      for (const [name, value] of Object.entries(siteHeaders))
        assert.equal(headers.get(name), has("headers") ? value : null, name);
      assert.equal(headers.get("cache-control"), has("headers") ? "no-cache" : null);
      assert.equal(headers.get("content-encoding"), has("mime") && has("deflate") ? "gzip" : null);
      const engine = readdirSync(join(site, "files")).find((name) => name.endsWith(".wasm"));
      const wasm = await fetch(`${server.origin}/files/${engine}`, accept);
      await wasm.arrayBuffer();
      assert.equal(wasm.headers.get("content-type"), has("mime") ? "application/wasm" : null);
      const { page } = await visit(test, `${server.origin}/`);
      // Without types, browsers run no script that is checked for its own.
      if (has("mime")) await judges(page);
    });
});

describe("scripts that a host joins or puts into the page", () => {
  const loader = readFileSync(join(elementFolder, "saddlerule-fit.js"), "utf8");
  const folder = '<script type="text/plain" data-saddlerule="/saddlerule"></script>';
  const fit = '<saddlerule-fit list="/bikes.json" view="rack"></saddlerule-fit>';

  async function club(test, head, body) {
    const site = await clubSite(
      {
        "/": clubPage(body, { head }),
        "/club.css": "",
        "/bikes.json": readFileSync(sample("loan-shed.json")),
        "/cache/all.js": `"use strict";\n${loader}`,
      },
      { policy: null },
    );
    test.after(site.close);
    return visit(test, `${site.address}/`, { viewport: screens.laptop });
  }

  for (const [what, head, body] of [
    ["joined", '<script src="/cache/all.js"></script>', fit + folder],
    ["in the page", folder, `${fit}<script>${loader}</script>`],
  ])
    test(`${what}: the folder is found where the page names it`, async (test) => {
      const { page, said } = await club(test, head, body);
      await page.locator(".row-name").first().waitFor();
      assert.deepEqual(said, []);
    });

  test("where nothing names the folder, the console says where the files were looked for", async (test) => {
    const { said } = await club(test, '<script src="/cache/all.js"></script>', fit);
    await eventually(() =>
      assert.ok(
        said.some((line) => /could not be loaded from beside http:.*\/cache\/all\.js/.test(line)),
        said.join("\n"),
      ),
    );
  });
});
