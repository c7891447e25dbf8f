// check.html against hosts that misbehave, each in its own way: it names what is wrong, and nothing else.

import assert from "node:assert/strict";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import { extname } from "node:path";
import test, { after, before } from "node:test";
import { gzipSync } from "node:zlib";
import { elementFiles } from "../../web/building/element.mjs";
import { siteHeaders } from "../../web/building/hosting.mjs";
import { siteFiles } from "../../web/building/site.mjs";
import { pageWasmFile, sample } from "../support/built-engine.mjs";
import { clubPage } from "../support/club-site.mjs";
import { launchBrowser, screens } from "../support/open-page.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const site = await siteFiles({ engine: pageWasmFile });
const element = await elementFiles({ engine: pageWasmFile });
const shed = readFileSync(sample("loan-shed.json"));

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".txt": "text/plain; charset=utf-8",
  ".wasm": "application/wasm",
};

const head = '<script src="/saddlerule/saddlerule-fit.js" async></script>';
const withElement = clubPage('<saddlerule-fit list="bikes.json"></saddlerule-fit>', { head });

/** By content: some are large. */
const known = new Map();
function packedOnce(body) {
  const key = body.toString("latin1");
  if (!known.has(key)) known.set(key, gzipSync(body, { level: 1 }));
  return known.get(key);
}

/**
 * A good host, with both folders, a list and a page. `change` takes what it would answer (status, headers, body), by its path, and
 * makes something of it that a bad host answers.
 */
async function host(test, change = (path, answer) => answer) {
  const files = {
    "/fit/": site["index.html"],
    "/bikes.json": shed,
    "/page.html": withElement,
    ...Object.fromEntries(Object.entries(site).map(([name, content]) => [`/fit/${name}`, content])),
    ...Object.fromEntries(Object.entries(element).map(([name, content]) => [`/saddlerule/${name}`, content])),
  };
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url, "http://localhost");
    const content = files[pathname];
    const type = types[extname(pathname) || ".html"] ?? "application/octet-stream";
    const good =
      content === undefined
        ? { status: 404, headers: { "content-type": "text/plain" }, body: "not found" }
        : {
            status: 200,
            headers: {
              "content-type": type,
              "content-encoding": "gzip",
              ...(pathname.startsWith("/fit/") && siteHeaders),
            },
            body: Buffer.from(content),
          };
    const { status, headers, body } = change(pathname, good) ?? good;
    const packed = headers["content-encoding"] === "gzip" ? packedOnce(body) : body;
    response.writeHead(status, headers).end(packed);
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  test.after(() => {
    server.closeAllConnections();
    server.close();
  });
  return server.address().port;
}

let browser;
// A name that is no secure context, as a club's host without https.
before(async () => (browser = await launchBrowser("--host-resolver-rules=MAP club.example 127.0.0.1")));
after(() => browser.close());

async function checked(test, at, { change, name = "127.0.0.1", viewport = screens.phone } = {}) {
  const port = await host(test, change);
  const context = await browser.newContext({ viewport });
  test.after(() => context.close());
  const page = await context.newPage();
  const faults = [];
  page.on("pageerror", (error) => faults.push(error.message));
  await page.goto(`http://${name}:${port}${at}`);
  await page.getByText(/^(Nothing is wrong\.|Wrong: \d+\.)$/).waitFor();
  const of = (kind) => page.locator(`#findings .${kind}`).allInnerTexts();
  return { page, faults, good: await of("good"), notes: await of("note"), wrong: await of("wrong"), port };
}

const inSite = "/fit/check.html?list=../bikes.json";
const inElement = "/saddlerule/check.html?page=../page.html";
const has = (texts, pattern) =>
  assert.ok(
    texts.some((text) => pattern.test(text)),
    texts.join("\n"),
  );

/** What is changed of the answers to paths that match. */
const where = (pattern, change) => (path, answer) =>
  pattern.test(path) ? { ...answer, ...change(answer, path) } : answer;

test("nothing is wrong with a good host of the site, its list is read, and no rule of accessibility is broken", async (test) => {
  const { page, faults, good, wrong, notes } = await checked(test, inSite);
  assert.deepEqual(wrong, []);
  assert.deepEqual(notes, []);
  has(good, /All \d+ files are there/);
  has(good, /bikes\.json has \d+ bikes, called “Loan shed, autumn list”/);
  has(good, /Saved for offline use/);
  has(good, /policy of the host allows all/);
  assert.deepEqual(faults, []);
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => window.axe.run());
  assert.deepEqual(
    violations.map(({ id }) => id),
    [],
  );
});

test("nothing is wrong with a good host of the element and a page around it; the form asks again", async (test) => {
  const { page, wrong, good } = await checked(test, inElement, { viewport: screens.laptop });
  assert.deepEqual(wrong, []);
  has(good, /The page has one element in it/);
  has(good, /bikes\.json has \d+ bikes/);
  await page.getByRole("textbox", { name: "List" }).fill("/nowhere.csv");
  await page.getByRole("button", { name: "Check" }).click();
  await page
    .getByText(/nowhere\.csv cannot be read: There is nothing at this address any more .*\(address_gone\)/)
    .waitFor();
});

test("the form works under the policy that the guide gives", async (test) => {
  const { page } = await checked(test, "/fit/check.html");
  await page.getByText("No list is named in site-settings.json").waitFor();
  await page.getByRole("textbox", { name: "List" }).fill("../bikes.json");
  await page.getByRole("button", { name: "Check" }).click();
  await page.getByText(/has \d+ bikes/).waitFor();
});

for (const [what, at, change, kind, words] of [
  [
    "a missing file",
    inSite,
    where(/engine-thread/, () => ({ status: 404 })),
    "wrong",
    /Missing: files\/engine-thread\.\w+\.js \(404\)/,
  ],
  [
    "a script that was changed",
    inSite,
    where(/files\/saddlerule\..*js$/, ({ body }) => ({ body: Buffer.concat([body, Buffer.from("\n//")]) })),
    "wrong",
    /Changed on the way: files\/saddlerule\.\w+\.js/,
  ],
  [
    "scripts as plain text",
    inSite,
    where(/\/files\/.*\.js$/, ({ headers }) => ({ headers: { ...headers, "content-type": "text/plain" } })),
    "wrong",
    /types that browsers do not take: .*\.js \(text\/plain\)/,
  ],
  [
    "nothing packed",
    inSite,
    where(/\.(js|wasm|txt)$/, ({ headers }) => ({ headers: { ...headers, "content-encoding": "identity" } })),
    "note",
    /Not packed: .*engine\.\w+\.wasm.*turn on gzip/,
  ],
  [
    "another charset",
    inSite,
    where(/\/fit\/$/, ({ headers }) => ({
      headers: { ...headers, "content-type": "text/html; charset=ISO-8859-1" },
    })),
    "note",
    /The host calls texts ISO-8859-1/,
  ],
  [
    "a folder that leads elsewhere",
    inSite,
    (path, answer) =>
      path === "/fit/" ? { status: 302, headers: { location: "/fit/index.html" }, body: "" } : answer,
    "wrong",
    /Not saved for offline use: the host redirects the folder's address to http.*index\.html/,
  ],
  [
    "a service worker that is no script",
    inSite,
    where(/service-worker\.js$/, ({ headers }) => ({ headers: { ...headers, "content-type": "text/html" } })),
    "wrong",
    /the browser does not take service-worker\.js/,
  ],
  [
    "a policy without wasm",
    inSite,
    where(/\/fit\/$/, ({ headers }) => ({
      headers: { ...headers, "content-security-policy": "default-src 'self'" },
    })),
    "wrong",
    /policy of the host forbids what is needed: script-src needs 'wasm-unsafe-eval'/,
  ],
  [
    "a page with a policy that lets in nothing from its own host",
    inElement,
    where(/page\.html$/, ({ headers }) => ({
      headers: {
        ...headers,
        "content-security-policy": "script-src 'none'; connect-src 'none'; trusted-types x",
      },
    })),
    "wrong",
    /policy of the page forbids .*script-src needs 'self'.*connect-src needs 'self'.*trusted-types needs saddlerule/,
  ],
  [
    "a page whose editor took the script away",
    inElement,
    where(/page\.html$/, () => ({ body: Buffer.from(withElement.replace(head, "")) })),
    "wrong",
    /The page names no saddlerule-fit\.js/,
  ],
  [
    "a page whose editor took the element away",
    inElement,
    where(/page\.html$/, () => ({ body: Buffer.from(clubPage("<p>Bikes</p>", { head })) })),
    "wrong",
    /no <saddlerule-fit> in it/,
  ],
  [
    "a page that is not there",
    "/saddlerule/check.html?page=/none",
    undefined,
    "wrong",
    /There is no page at/,
  ],
  [
    "a web page in place of the list",
    inSite,
    where(/bikes\.json$/, ({ headers }) => ({
      headers: { ...headers, "content-type": "text/html" },
      body: Buffer.from("<!doctype html><p>Please log in</p>"),
    })),
    "wrong",
    /bikes\.json cannot be read: A web page came instead of a list.*\(address_web_page\)/,
  ],
  [
    "a list that was cut off",
    inSite,
    where(/bikes\.json$/, () => ({ body: shed.subarray(0, 3000) })),
    "wrong",
    /bikes\.json cannot be read: line \d+.*\(json_cut_off\)/i,
  ],
  [
    "a list that browsers may keep for a week",
    inSite,
    where(/bikes\.json$/, ({ headers }) => ({ headers: { ...headers, "cache-control": "max-age=604800" } })),
    "note",
    /may hold the list for 168 hours/,
  ],
])
  test(`${what} is named`, async (test) => {
    const found = await checked(test, at, { change });
    has(kind === "wrong" ? found.wrong : found.notes, words);
    if (kind === "note") assert.deepEqual(found.wrong, []);
    assert.deepEqual(found.faults, []);
  });

test("a host without https is named, and what it means for the site", async (test) => {
  const { wrong } = await checked(test, inSite, { name: "club.example" });
  assert.equal(wrong.length, 2);
  has(wrong, /The host does not use https/);
  has(wrong, /Not saved for offline use: the host does not use https/);
});

test("the site checks what the host has now, whatever browsers have kept of it", async (test) => {
  let gone = false;
  const change = (path, answer) => (gone && /words-de/.test(path) ? { ...answer, status: 404 } : answer);
  const { page, port } = await checked(test, inSite, { change });
  await page.goto(`http://127.0.0.1:${port}/fit/`);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  gone = true;
  await page.goto(`http://127.0.0.1:${port}${inSite}`);
  await page.getByText(/Missing: files\/words-de\.\w+\.txt \(404\)/).waitFor();
});
