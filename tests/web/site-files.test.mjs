// The site's files as they are on a host: manifest, icons, policies and hashes, checked by packaged validators and by Chromium.

import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import test, { after } from "node:test";
import validateManifest from "web-app-manifest-validator";
import { nginxExample, apacheExample, siteHeaders } from "../../web/building/hosting.mjs";
import { siteDirectives } from "../../web/building/policy.mjs";
import { root } from "../support/built-engine.mjs";
import { serveClub, siteBuilder } from "../support/built-site.mjs";
import { drawnIcons, iconFolder, icons } from "../support/draw-icons.mjs";
import { launchBrowser, pageFile } from "../support/open-page.mjs";

const require = createRequire(import.meta.url);
const { CspEvaluator } = require("csp_evaluator/dist/evaluator.js");
const { CspParser } = require("csp_evaluator/dist/parser.js");
const { Severity } = require("csp_evaluator/dist/finding.js");

const sites = siteBuilder();
const site = sites.first();
after(sites.done);
const read = (name) => readFileSync(join(site, name));
const index = read("index.html").toString();
const manifest = JSON.parse(read("manifest.webmanifest"));

/** The policy that a page carries in itself. */
const ownPolicy = (html) => /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)[1];

const directivesOf = (policy) =>
  Object.fromEntries(
    policy.split("; ").map((directive) => [directive.split(" ")[0], directive.split(" ").slice(1)]),
  );

/** Width and height of a PNG (W3C, Portable Network Graphics, 11.2.1: they are the first of its header). */
const pngSize = (png) => [png.readUInt32BE(16), png.readUInt32BE(20)];

test("the manifest is valid, and has what browsers ask for before they offer the home screen", () => {
  // The validator is older than `id` (W3C Web Application Manifest, 1.8), which is a text.
  const { id, ...members } = manifest;
  assert.equal(typeof id, "string");
  assert.deepEqual(validateManifest(members), []);
  assert.notDeepEqual(
    validateManifest({ ...members, display: "sideways" }),
    [],
    "the validator finds nothing at all",
  );
  for (const member of ["name", "short_name", "start_url", "scope", "description"])
    assert.ok(manifest[member], member);
  assert.equal(manifest.display, "standalone");
  const sides = manifest.icons.map(({ sizes, purpose }) => `${sizes} ${purpose}`);
  assert.deepEqual(sides, ["192x192 any", "512x512 any", "512x512 maskable"]);
  for (const { src, sizes, type } of manifest.icons) {
    assert.equal(type, "image/png");
    assert.equal(pngSize(read(src)).join("x"), sizes, src);
  }
  const apple = /rel="apple-touch-icon" href="([^"]+)"/.exec(index)[1];
  assert.deepEqual(pngSize(read(apple)), [180, 180]);
});

test("Chromium reads the manifest without a fault, and finds nothing against installing", async (test) => {
  const club = await serveClub(site);
  test.after(club.close);
  const browser = await launchBrowser();
  test.after(() => browser.close());
  const page = await browser.newPage();
  await page.goto(`${club.nginx.origin}/fit/`);
  await page.getByRole("textbox", { name: "Inside leg" }).waitFor();
  const session = await page.context().newCDPSession(page);
  const { errors, url } = await session.send("Page.getAppManifest");
  assert.deepEqual(errors, []);
  assert.equal(url, `${club.nginx.origin}/fit/manifest.webmanifest`);
  const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
  // Nothing is installed from a window that keeps nothing, which a test's window is.
  const against = installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== "in-incognito");
  assert.deepEqual(against, []);
});

test("the icons are as they are drawn, and a round mask cuts nothing of the tape and the saddle", async (test) => {
  const drawn = await drawnIcons();
  const browser = await launchBrowser();
  test.after(() => browser.close());
  const page = await browser.newPage();
  await page.addInitScript(() => {
    window.pixels = async (base64) => {
      const bytes = Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
      const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
      const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext("2d");
      context.drawImage(bitmap, 0, 0);
      return context.getImageData(0, 0, bitmap.width, bitmap.height).data;
    };
  });
  await page.goto("about:blank");
  const base64 = (png) => png.toString("base64");
  const kept = (name) => base64(readFileSync(join(iconFolder, name)));
  for (const [name, { side }] of Object.entries(icons)) {
    const [values, apart] = await page.evaluate(
      async ([kept, drawn]) => {
        const [before, now] = [await window.pixels(kept), await window.pixels(drawn)];
        return [before.length, before.filter((value, place) => Math.abs(value - now[place]) > 40).length];
      },
      [kept(name), base64(drawn[name])],
    );
    assert.equal(values, 4 * side * side, name);
    // Browsers smooth edges a little differently from one version to the next.
    assert.ok(apart < values / 200, `${name}: ${apart} of ${values} values differ`);
  }
  // W3C Web Application Manifest, "Icon masks and safe zone": what matters is in a circle of four tenths of the side.
  const farthest = await page.evaluate(async (kept) => {
    const values = await window.pixels(kept);
    let farthest = 0;
    for (let at = 0; at < values.length; at += 4) {
      const [red, green, blue] = values.slice(at, at + 3);
      const ink = red < 60 && green < 60 && blue < 60;
      const tape = red > 230 && green > 180 && blue < 90;
      const [x, y] = [(at / 4) % 512, Math.floor(at / 4 / 512)];
      if (ink || tape) farthest = Math.max(farthest, Math.hypot(x - 255.5, y - 255.5));
    }
    return farthest / 512;
  }, kept("icon-maskable-512.png"));
  assert.ok(farthest > 0.2 && farthest < 0.41, `it reaches ${farthest} of the side from the middle`);
});

test("every policy is a strict one, by the evaluator and by what it must not say", () => {
  const policies = {
    "the single file": ownPolicy(readFileSync(pageFile, "utf8")),
    "the site in its own page": ownPolicy(index),
    "the site by its host": siteHeaders["Content-Security-Policy"],
  };
  for (const [name, policy] of Object.entries(policies)) {
    const found = new CspEvaluator(new CspParser(policy).csp).evaluate();
    // "'self' can be problematic if you host … user uploaded files": a folder of a club's own host has none.
    const severe = found.filter(({ severity, value }) => severity < Severity.INFO && value !== "'self'");
    assert.deepEqual(severe, [], name);
    const directives = directivesOf(policy);
    assert.deepEqual(directives["default-src"], ["'none'"], name);
    assert.deepEqual(directives["require-trusted-types-for"], ["'script'"], name);
    // Each name of a policy is one of this project's, and none may be made twice.
    for (const named of directives["trusted-types"]) assert.match(named, /^saddlerule(-\w+)?$/, name);
    assert.doesNotMatch(policy, /'unsafe-inline'|'unsafe-eval'|https?:|\*/, name);
  }
  const lax = new CspEvaluator(new CspParser("script-src 'unsafe-inline'").csp).evaluate();
  assert.ok(
    lax.some(({ severity }) => severity === Severity.HIGH),
    "the evaluator finds nothing at all",
  );
});

test("the host says what the page says, and where it may be in a frame", () => {
  const { "frame-ancestors": ancestors, ...rest } = directivesOf(siteHeaders["Content-Security-Policy"]);
  assert.deepEqual(ancestors, ["'self'"]);
  assert.deepEqual(rest, directivesOf(ownPolicy(index)));
  assert.deepEqual(rest, siteDirectives);
});

test("scripts and styles are named with the hash of what they are, and nothing is inline", () => {
  const named = [...index.matchAll(/<(?:script|link)[^>]+(?:src|href)="([^"]+\.(?:js|css))"[^>]*>/g)];
  assert.equal(named.length, 3);
  for (const [tag, file] of named) {
    const hash = createHash("sha384").update(read(file)).digest("base64");
    assert.ok(tag.includes(`integrity="sha384-${hash}"`), tag);
  }
  assert.doesNotMatch(index, /<style|<script(?![^>]+src=)|style=|\son\w+=/);
});

test("files are called by their content, and the service worker knows each of them by its hash", () => {
  const worker = read("service-worker.js").toString();
  for (const file of readdirSync(join(site, "files"))) {
    const [, name] = /\.([0-9a-f]{12})\.\w+$/.exec(file);
    const content = read(`files/${file}`);
    assert.equal(createHash("sha256").update(content).digest("hex").slice(0, 12), name, file);
    assert.ok(worker.includes(`sha384-${createHash("sha384").update(content).digest("base64")}`), file);
  }
  for (const file of ["index.html", "manifest.webmanifest"])
    assert.ok(worker.includes(createHash("sha384").update(read(file)).digest("base64")), file);
});

test("the guide shows webmasters the headers that these tests are run under", () => {
  const readme = readFileSync(join(root, "web/site/README.md"), "utf8");
  for (const example of [nginxExample(), apacheExample()]) assert.ok(readme.includes(example), example);
});
