// What strangers put behind the # of the site's address, and what a page may write at and in the element, one after the other
// through one open page: no script runs, nothing is sent, what was typed stays, the page does not stall, and the next list opens as
// ever. tests/web/hostile has the cases.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { extname, join } from "node:path";
import test, { after, before } from "node:test";
import { siteBuilder } from "../support/built-site.mjs";
import { keepStageChosen, usualStage } from "../support/choose-stage.mjs";
import { clubPage, clubSite } from "../support/club-site.mjs";
import { fedAll, stranger, watched } from "../support/hostile.mjs";
import { launchBrowser, screens } from "../support/open-page.mjs";
import { hostileAddresses } from "./hostile/addresses.mjs";
import { hostileElements } from "./hostile/elements.mjs";
import { hostileFamilyFiles } from "./hostile/family-files.mjs";
import { hostileLists, list } from "./hostile/lists.mjs";

let browser;
let server;
before(async () => {
  browser = await launchBrowser();
  server = await stranger();
});
after(async () => {
  await browser.close();
  server.close();
});

/** Answers /check/7.json with a list that is called so. */
const checks = (count) =>
  Object.fromEntries(
    Array.from({ length: count }, (_, place) => [
      `/check/${place}.json`,
      list([{ name: "Red", saddle_lowest: 48, saddle_highest: 60 }], { title: `Check ${place}` }),
    ]),
  );

async function opened(test, address, own) {
  const context = await browser.newContext({
    viewport: screens.phone,
    locale: "en-GB",
  });
  test.after(() => context.close());
  await context.addInitScript(keepStageChosen, usualStage);
  const page = await context.newPage();
  const faults = await watched(page, own);
  await page.goto(address);
  await page.evaluate(async () => {
    const { find, type, until } = window.drive;
    await until("the page", () => find(".screen.rider .screen-title"));
    find(".screen.rider input[type=radio][value=cm]").click();
    type(".screen.rider input[id^=reading-]", "49.5");
  });
  return { page, faults };
}

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".wasm": "application/wasm",
  ".json": "application/json",
};

/** The site's files for `clubSite`, below /fit/. */
function siteFiles(folder) {
  const paths = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  return Object.fromEntries(
    paths.map(({ path, name }) => {
      const file = join(path, name);
      const served = (request, response) =>
        response
          .writeHead(200, { "content-type": types[extname(name)] ?? "application/octet-stream" })
          .end(readFileSync(file));
      return [`/fit/${file.slice(folder.length + 1)}`, served];
    }),
  );
}

/** Runs in the page: says it behind the #, and then names a list that has to open as if nothing had been. */
async function sayAddress({ hash, check }) {
  const { find, goTo, until } = window.drive;
  const say = async (text) => {
    const heard = new Promise((resolve) => addEventListener("hashchange", resolve, { once: true }));
    const before = window.location.hash;
    window.location.hash = text;
    if (window.location.hash !== before) await heard;
  };
  await say(hash);
  await say(`list=/check/${check}.json`);
  if (find(".screen.list") === null) await goTo("list");
  await until("the next list", () => find(".screen.list h3")?.textContent === `Check ${check}`);
  // Out of sight the rider's screen is not drawn; what is lost would show at the next look.
  if (check % 8 === 7) await goTo("rider");
}

test("hostile addresses run nothing, send nothing, lose nothing and stall nothing", async (test) => {
  const cases = hostileAddresses(server.address);
  assert.ok(cases.length >= 120);
  const sites = siteBuilder();
  const members = (request, response) => {
    const isMember = request.headers.cookie !== undefined;
    response.writeHead(isMember ? 200 : 401, { "content-type": "application/json" }).end("{}");
  };
  const folder = sites.first();
  const site = await clubSite({
    ...siteFiles(folder),
    "/fit/": (request, response) =>
      response
        .writeHead(200, { "content-type": types[".html"] })
        .end(readFileSync(join(folder, "index.html"))),
    "/page": clubPage("<p>No list</p>"),
    "/members": members,
    ...checks(cases.length),
  });
  test.after(() => {
    site.close();
    sites.done();
  });
  const { page, faults } = await opened(test, `${site.address}/fit/`, [site.address]);
  const longest = await fedAll({ page, faults, cases, typed: "49.5", server }, (one) =>
    page.evaluate(sayAddress, { ...one, check: cases.indexOf(one) }),
  );
  test.diagnostic(`${cases.length} addresses; longest task ${Math.round(longest)} ms`);
});

/** Runs in the page: an attribute of the first element or the list inside the second, and then the one that has to open. */
async function sayElement({ name, value, inside, check, usual }) {
  const [outer, inner] = document.querySelectorAll("saddlerule-fit");
  const { until } = window.drive;
  const told = (what, title) =>
    until(what, () => window.told.some((detail) => title === undefined || detail.title === title));
  window.told = [];
  if (inside !== undefined) {
    inner.querySelector("script").firstChild.data = inside;
    // A script with nothing in it is no list, of which nothing is said.
    if (inside.trim() !== "") await told("what became of it");
    window.told = [];
    inner.querySelector("script").firstChild.data = usual;
    await told("the next list", `Check ${check}`);
    return;
  }
  outer.setAttribute(name, value);
  if (name !== "list") outer.removeAttribute(name);
  outer.setAttribute("list", `/check/${check}.json`);
  await told("the next list", `Check ${check}`);
}

test("hostile attributes and insides of the element run nothing, send nothing, lose nothing and stall nothing", async (test) => {
  const cases = hostileElements(server.address);
  assert.ok(cases.length >= 110);
  const usual = Object.values(checks(cases.length));
  const pages = {
    "/": clubPage(
      `<saddlerule-fit list="/check/0.json"></saddlerule-fit>
<saddlerule-fit><script type="application/json">${usual[0]}</script></saddlerule-fit>`,
      {
        head: '<script src="/saddlerule/saddlerule-fit.js" async></script>',
      },
    ),
    "/club.css": "body { margin: 0 }",
    ...checks(cases.length),
  };
  const site = await clubSite(pages);
  test.after(() => site.close());
  const { page, faults } = await opened(test, `${site.address}/`, [site.address]);
  await page.evaluate(async () => {
    window.told = [];
    for (const what of ["list", "problem"])
      addEventListener(`saddlerule-${what}`, ({ detail }) => window.told.push(detail));
    const inner = document.querySelectorAll("saddlerule-fit")[1];
    inner.scrollIntoView();
    await window.drive.until("the second element", () => inner.shadowRoot?.querySelector(".screen-title"));
  });
  const longest = await fedAll({ page, faults, cases, typed: "49.5", server }, (one) => {
    const check = cases.indexOf(one);
    return page.evaluate(sayElement, { ...one, check, usual: usual[check] });
  });
  test.diagnostic(`${cases.length} attributes and insides; longest task ${Math.round(longest)} ms`);
});

test("there are 500 cases", () => {
  const { address } = server;
  const whole = {
    riders: [{ rider: { readings: [{ figure: {} }] }, wants: {} }],
    tape: {},
    years: {},
    club: {},
  };
  const kinds = [
    hostileLists(address),
    hostileFamilyFiles(address, whole),
    hostileAddresses(address),
    hostileElements(address),
  ];
  const names = kinds.map((cases) => new Set(cases.map(({ what }) => what)).size);
  assert.ok(names.reduce((sum, count) => sum + count) >= 500, names.join(", "));
});
