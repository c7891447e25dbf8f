// <saddlerule-fit> in pages that nobody here wrote: narrow columns, dialogs, tabs, shadow roots, pages that clip, pages with bars and
// shortcuts of their own, on paper, and lists between the tags as editors leave them.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import test, { after, before, describe } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { clubPage, clubSite, elementFolder } from "../support/club-site.mjs";
import { keepStageChosen, usualStage } from "../support/choose-stage.mjs";
import { drawn, eventually as soon } from "../support/eventually.mjs";
import { jsonList } from "../support/list-desk.mjs";
import { launchBrowser, screens } from "../support/open-page.mjs";

/** Browsers of a busy machine take their time. */
const eventually = (check) => soon(check, { tries: 200 });

const head = '<script src="/saddlerule/saddlerule-fit.js" async></script>';
const shed = readFileSync(sample("loan-shed.json"));
const fit = '<saddlerule-fit list="/bikes.json" view="rack" units="cm"></saddlerule-fit>';

let browser;
before(async () => (browser = await launchBrowser()));
after(() => browser.close());

async function visit(
  test,
  body,
  { style = "", pages = {}, viewport = screens.laptop, prepare, ...how } = {},
) {
  const site = await clubSite(
    {
      "/": clubPage(body, { head, ...how }),
      "/club.css": `body { margin: 0 } ${style}`,
      "/bikes.json": shed,
      ...pages,
    },
    { policy: null },
  );
  const context = await browser.newContext({ viewport, locale: "en-GB" });
  test.after(async () => {
    await context.close();
    site.close();
  });
  await context.addInitScript(keepStageChosen, usualStage);
  await context.addInitScript(() => {
    window.told = [];
    for (const what of ["list", "problem"])
      document.addEventListener(`saddlerule-${what}`, ({ detail }) => window.told.push({ what, ...detail }));
  });
  const page = await context.newPage();
  const said = [];
  page.on("console", (message) => said.push(message.text()));
  page.on("pageerror", (error) => said.push(`error: ${error.message}`));
  await prepare?.(page, site);
  await page.goto(`${site.address}/`);
  const told = (what) => page.evaluate((what) => window.told.filter((one) => one.what === what), what);
  return { page, site, said, told };
}

const bikesAreThere = (page) => page.locator(".row-name").first().waitFor();

/** Nothing in the element is wider than the element, but what scrolls by itself. */
const tooWide = (page) =>
  page.evaluate(() => {
    const host = document.querySelector("saddlerule-fit");
    const { left, right } = host.getBoundingClientRect();
    return [...host.shadowRoot.querySelectorAll(".screen.current *, .navigation *")]
      .filter((one) => {
        const box = one.getBoundingClientRect();
        return (
          box.width > 1 &&
          (box.left < left - 1 || box.right > right + 1) &&
          one.closest(".beside-scroll, svg") === null
        );
      })
      .map((one) => `${one.localName}.${one.className}`);
  });

describe("places", () => {
  test("in a column of 280 px everything is in it, on every screen", async (test) => {
    const { page, said } = await visit(test, `<div style="width: 280px">${fit}</div>`);
    await bikesAreThere(page);
    await page.locator(".to-rider").click();
    await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
    for (const tab of ["rack", "tape", "list", "keep", "rider"]) {
      await page.locator(`.to-${tab}`).click();
      await page.locator(`.screen.${tab}.current .screen-title`).waitFor();
      await drawn(page);
      assert.deepEqual(await tooWide(page), [], tab);
    }
    await page.locator(".to-rack").click();
    await page.locator(".row-name").first().click();
    await page.locator(".screen.bike.current .settings").first().waitFor();
    assert.deepEqual(await tooWide(page), []);
    assert.deepEqual(said, []);
  });

  for (const [what, style] of Object.entries({
    "a row of flex": "display: flex",
    "a centred column of flex": "display: flex; flex-direction: column; align-items: center",
    "a float": "float: left",
    "an inline block": "display: inline-block",
    "a width that fits": "width: fit-content",
    "an absolute place": "position: absolute",
    "a centred grid": "display: grid; justify-items: center",
  }))
    test(`in ${what} it has a width that can be read`, async (test) => {
      const { page } = await visit(test, `<div style="${style}">${fit}</div>`);
      await bikesAreThere(page);
      assert.ok((await page.evaluate(() => document.querySelector("saddlerule-fit").offsetWidth)) >= 280);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
      assert.deepEqual(await tooWide(page), []);
    });

  test("in a dialog it is there once the dialog opens, and Enter and Escape are the dialog's as ever", async (test) => {
    const { page, told } = await visit(
      test,
      `<dialog><form method="dialog">${fit}<button>Close</button></form></dialog>`,
    );
    await drawn(page);
    assert.deepEqual(await told("list"), []);
    await page.evaluate(() => document.querySelector("dialog").showModal());
    await bikesAreThere(page);
    await page.locator(".to-tape").click();
    await page.getByRole("textbox", { name: /^Saddle at its lowest/ }).fill("48");
    await page.keyboard.press("Enter");
    assert.ok(await page.evaluate(() => document.querySelector("dialog").open));
    await page.keyboard.press("Escape");
    assert.ok(!(await page.evaluate(() => document.querySelector("dialog").open)));
  });

  test("in a tab that is shown later it is there then, as wide as the tab", async (test) => {
    const { page, told } = await visit(test, `<div id="tab" style="display: none">${fit}</div>`);
    await drawn(page);
    assert.deepEqual(await told("list"), []);
    await page.evaluate(() => (document.querySelector("#tab").style.display = "block"));
    await bikesAreThere(page);
    // Hidden and shown again it is as it was.
    await page.locator(".row-name").nth(1).click();
    await page.locator(".screen.bike.current").waitFor();
    await page.evaluate(() => (document.querySelector("#tab").style.display = "none"));
    await drawn(page);
    await page.evaluate(() => (document.querySelector("#tab").style.display = "block"));
    await page.locator(".screen.bike.current").waitFor();
    assert.deepEqual(await tooWide(page), []);
  });

  for (const mode of ["open", "closed"])
    test(`in a shadow root that is ${mode} it works, and its events come out`, async (test) => {
      const { page, told, said } = await visit(test, '<div id="outer"></div>', {
        prepare: (page) =>
          page.addInitScript((mode) => {
            addEventListener("DOMContentLoaded", () => {
              window.inner = document.querySelector("#outer").attachShadow({ mode });
              window.inner.innerHTML =
                '<p>Around</p><saddlerule-fit list="/bikes.json" view="rack"></saddlerule-fit>';
            });
          }, mode),
      });
      await eventually(async () => assert.equal((await told("list"))[0]?.bikes, 40));
      const rows = () =>
        page.evaluate(
          () => window.inner.querySelector("saddlerule-fit").shadowRoot.querySelectorAll(".row-name").length,
        );
      await eventually(async () => assert.ok((await rows()) > 0));
      assert.deepEqual(said, []);
    });

  test("in a page from right to left it stays as it is, and nothing sticks out", async (test) => {
    const { page, said } = await visit(test, fit, { dir: "rtl", lang: "ar", viewport: screens.phone });
    await bikesAreThere(page);
    assert.deepEqual(await tooWide(page), []);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
    assert.deepEqual(said, []);
  });
});

describe("bars and edges", () => {
  const isInSight = (page, button) =>
    page.evaluate((button) => {
      const host = document.querySelector("saddlerule-fit");
      const box = host.shadowRoot.querySelector(button).getBoundingClientRect();
      const hit = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
      return box.top >= 0 && box.bottom <= innerHeight && hit === host;
    }, button);

  for (const [what, style, body = fit] of [
    ["an element around clips", "#clips { overflow: hidden }", `<div id="clips">${fit}</div>`],
    ["the page clips sideways", "html, body { overflow-x: hidden }"],
    ["the body alone clips sideways", "body { overflow-x: hidden }"],
    ["nothing clips", ""],
    [
      "it is in something that scrolls",
      "#scrolls { height: 700px; overflow: auto }",
      `<div id="scrolls">${fit}</div>`,
    ],
  ])
    test(`the navigation is in sight on a phone where ${what}`, async (test) => {
      const { page } = await visit(test, body, { style, viewport: screens.phone });
      await bikesAreThere(page);
      await eventually(async () => assert.ok(await isInSight(page, ".to-tape")));
      await page.locator(".to-tape").click();
      await page.locator(".screen.tape.current").waitFor();
    });

  test("under a page's own bars nothing of it is covered once the page says how high they are", async (test) => {
    const { page } = await visit(test, `<div class="top">Menu</div>${fit}<div class="bottom">Cookies</div>`, {
      viewport: screens.phone,
      style: `.top, .bottom { position: fixed; z-index: 9; left: 0; right: 0; background: white; height: 96px; top: 0 }
        .bottom { height: 56px; top: auto; bottom: 0 } main { padding-top: 96px }
        saddlerule-fit { --saddlerule-inset-top: 96px; --saddlerule-inset-bottom: 56px }`,
    });
    await bikesAreThere(page);
    assert.ok(await isInSight(page, ".to-tape"));
    await page.locator(".row-name").nth(5).click();
    await page.locator(".screen.bike.current").waitFor();
    await drawn(page);
    assert.ok(await isInSight(page, ".screen.bike .screen-title"));
    await page.mouse.wheel(0, 600);
    await drawn(page);
    await eventually(async () => assert.ok(await isInSight(page, ".screen.bike .back")));
    assert.ok(await isInSight(page, ".to-tape"));
  });

  test("a page's shortcuts take nothing of what is typed, and hear what is no typing", async (test) => {
    const { page } = await visit(test, fit, {
      prepare: (page) =>
        page.addInitScript(() => {
          window.heard = [];
          document.addEventListener("keydown", (event) => {
            if (event.target instanceof window.HTMLInputElement) return;
            window.heard.push(event.key);
            if (/^[\d.]$/.test(event.key)) event.preventDefault();
          });
        }),
    });
    await bikesAreThere(page);
    const field = page.getByRole("textbox", { name: "Inside leg" });
    await field.click();
    await page.keyboard.type("49.5");
    assert.equal(await field.inputValue(), "49.5");
    await page.keyboard.press("Control+k");
    await page.keyboard.press("Escape");
    assert.deepEqual(await page.evaluate(() => window.heard), ["Control", "k", "Escape"]);
  });
});

describe("on paper", () => {
  const around = `<h2 id="news">Club news</h2><div><p id="inside">Bikes</p>${fit}</div><footer id="foot">Foot</footer>`;
  const shown = (page) =>
    page.evaluate(() =>
      ["#news", "#inside", "#foot", "header"].filter((one) => document.querySelector(one).checkVisibility()),
    );

  test("the page around is printed with what the element shows, and without its buttons", async (test) => {
    const { page } = await visit(test, around);
    await bikesAreThere(page);
    await page.emulateMedia({ media: "print" });
    assert.deepEqual(await shown(page), ["#news", "#inside", "#foot", "header"]);
    assert.equal(await page.locator(".navigation").isVisible(), false);
    assert.ok(await page.locator(".screen.rack .screen-title").isVisible());
  });

  test("a card is printed alone, and afterwards the page is as it was", async (test) => {
    const { page } = await visit(test, around);
    await bikesAreThere(page);
    await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
    await page
      .getByText(/\d+ fit/)
      .first()
      .waitFor();
    await page.locator(".row-name").first().click();
    await page.getByRole("button", { name: "Card for the fridge" }).click();
    await page.locator(".fridge-card").waitFor();
    const before = await page.evaluate(() => document.body.outerHTML);
    await page.evaluate(() => (window.print = () => (window.printed = (window.printed ?? 0) + 1)));
    await page.locator(".card-wishes .button.main").click();
    assert.equal(await page.evaluate(() => window.printed), 1);
    assert.deepEqual(await shown(page), ["#news", "#inside", "#foot", "header"], "on screen nothing goes");
    await page.emulateMedia({ media: "print" });
    assert.deepEqual(await shown(page), []);
    assert.ok(await page.locator(".fridge-card").isVisible());
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
    assert.deepEqual(await shown(page), ["#news", "#inside", "#foot", "header"]);
    assert.equal(await page.evaluate(() => document.body.outerHTML), before);
    assert.equal(await page.evaluate(() => document.adoptedStyleSheets.length), 0);
  });
});

describe("a list between the tags, as editors leave it", () => {
  const list = jsonList(
    [
      { id: "H1", name: "Hall 1", kind: "pedal", saddle_lowest: 48, saddle_highest: 60 },
      { id: "H2", name: "Hall 2", kind: "pedal", saddle_lowest: 50, saddle_highest: 62 },
    ],
    { title: "Hall & yard list" },
  );
  const spread = JSON.stringify(JSON.parse(list), null, 2);
  const inScript = (text) => `<script type="application/json">${text}</script>`;
  const curly = (text) => text.replace(/"([^"]*)"/g, "“$1”");

  for (const [what, inside, words] of [
    ["as it was written", inScript(spread), null],
    [
      "with paragraphs",
      `<p>${inScript(spread.replaceAll("\n", "</p>\n<p>"))}</p>`,
      /put paragraphs or line breaks into it/,
    ],
    [
      "with line breaks and fixed spaces",
      inScript(spread.replaceAll("\n", "<br />\n&nbsp;")),
      /line breaks into it, and put fixed spaces/,
    ],
    ["with curly quotes", inScript(curly(spread)), /made its quotes curly/],
    ["with quotes written out", inScript(spread.replaceAll('"', "&#8220;")), /made its quotes curly/],
    ["with marks of an editor around", inScript(`// <![CDATA[\n${spread}\n// ]]>`), /put marks around it/],
    ["without its type", `<script>${spread}</script>`, null],
    ["in capitals", `<SCRIPT TYPE="APPLICATION/JSON">${spread}</SCRIPT>`, null],
    ["without its script", `<p>${spread.replaceAll("\n", "</p><p>")}</p>`, /took its <script> away/],
    [
      "without its script and with curly quotes",
      `<p>Our bikes</p><p>${curly(spread)}</p>`,
      /took its <script> away, and made its quotes curly/,
    ],
  ])
    test(`${what}: it is read, nobody sees it, and the webmaster hears what was done`, async (test) => {
      const hold = [];
      const { page, told, said } = await visit(
        test,
        `<saddlerule-fit view="rack">${inside}</saddlerule-fit>`,
        {
          prepare: (page) => page.route(/saddlerule-app/, (route) => void hold.push(route)),
        },
      );
      // Before Saddlerule is there.
      await eventually(() => assert.equal(hold.length, 1));
      assert.doesNotMatch(await page.evaluate(() => document.body.innerText), /saddle_lowest/);
      await hold[0].continue();
      await eventually(async () => assert.equal((await told("list"))[0]?.bikes, 2));
      assert.equal((await told("list"))[0].title, "Hall & yard list");
      await page.getByRole("button", { name: "Hall 1" }).waitFor();
      assert.doesNotMatch(await page.evaluate(() => document.body.innerText), /saddle_lowest/);
      const ours = said.filter((line) => line.startsWith("Saddlerule: "));
      assert.equal(ours.length, words === null ? 0 : 1, ours.join("\n"));
      if (words !== null) assert.match(ours[0], words);
    });

  test("what cannot be read any more: readers get a sentence, and the webmaster hears what was done", async (test) => {
    const broken = inScript(`${spread.slice(0, -20)}</p>`);
    const { page, told, said } = await visit(test, `<saddlerule-fit view="rack">${broken}</saddlerule-fit>`);
    await page
      .locator(".screen.current")
      .getByText(/The editor of this website has changed the list/)
      .first()
      .waitFor();
    assert.equal((await told("problem"))[0].code, "inline_rewritten");
    assert.match(said[0], /put paragraphs or line breaks into it\. It cannot be read any more/);
    assert.match(said[1], /the list between the tags is not opened \(inline_rewritten\)/);
    assert.doesNotMatch(await page.evaluate(() => document.body.innerText), /saddle_lowest/);
  });

  test("a slip of the webmaster's own is told with its place, as ever", async (test) => {
    const { told, said } = await visit(
      test,
      `<saddlerule-fit>${inScript('{ "format": saddlerule }')}</saddlerule-fit>`,
    );
    await eventually(async () =>
      assert.match((await told("problem"))[0]?.problem ?? "", /^Line 1, column 13/),
    );
    assert.match(said[0], /the list between the tags is not opened/);
  });
});

describe("bad input from a host", () => {
  const html = (response, status = 200, type = "text/html") =>
    response
      .writeHead(status, { "content-type": type })
      .end("<!doctype html><title>Log in</title><p>Please log in</p>");

  for (const [what, list, words, cause] of [
    [
      "a wrong address",
      "/nowhere.json",
      /There is nothing at this address any more/,
      /list \/nowhere\.json is not opened \(address_gone\).*404/,
    ],
    [
      "a login page",
      "/private.json",
      /A web page came instead of a list/,
      /address_web_page\).*Perhaps the address is that of a page.*from: http.*\/login/,
    ],
    [
      "an error page that says 200",
      "/error.json",
      /A web page came instead of a list/,
      /list \/error\.json .*address_web_page/,
    ],
    [
      "an error page that calls itself JSON",
      "/lies.json",
      /A web page came instead of a list/,
      /list \/lies\.json .*address_web_page/,
    ],
    ["a list that was cut off", "/cut.json", /Line \d+/, /list \/cut\.json is not opened/],
  ])
    test(`${what}: readers get a sentence, the webmaster the cause`, async (test) => {
      const { page, said } = await visit(
        test,
        `<saddlerule-fit list="${list}" view="rack"></saddlerule-fit>`,
        {
          pages: {
            "/private.json": (request, response) => response.writeHead(302, { location: "/login" }).end(),
            "/login": (request, response) => html(response),
            "/error.json": (request, response) => html(response),
            "/lies.json": (request, response) => html(response, 200, "application/json"),
            "/cut.json": shed.subarray(0, 4000),
          },
        },
      );
      await page.getByRole("alert").getByText(words).first().waitFor();
      await eventually(() =>
        assert.ok(
          said.some((line) => cause.test(line)),
          said.join("\n"),
        ),
      );
    });

  const named = (stem) => readdirSync(elementFolder).find((name) => name.startsWith(`saddlerule-${stem}-`));

  test("a script kept from before an update finds the files that came after it", async (test) => {
    const loader = readFileSync(join(elementFolder, "saddlerule-fit.js"), "utf8");
    let asked = 0;
    const { page, said, told } = await visit(test, fit, {
      pages: {
        "/saddlerule/saddlerule-fit.js": (request, response) =>
          response
            .writeHead(200, { "content-type": "text/javascript", "cache-control": "max-age=31536000" })
            .end(asked++ === 0 ? loader.replaceAll(named("app"), "saddlerule-app-0123456789ab.js") : loader),
      },
    });
    await bikesAreThere(page);
    assert.equal(asked, 2);
    assert.deepEqual(await told("problem"), []);
    assert.ok(said.every((line) => /404/.test(line)));
  });

  test("an engine that is gone, or that a host has changed, is named in the console and in an event", async (test) => {
    for (const [answer, words] of [
      [
        (request, response) => response.writeHead(404).end(),
        /saddlerule-engine-\w+\.bin is not there: the server said 404/,
      ],
      [readFileSync(sample("loan-shed.csv")), /saddlerule-engine-\w+\.bin does not run/],
    ]) {
      const { page, said, told } = await visit(test, fit, {
        pages: { [`/saddlerule/${named("engine")}`]: answer },
      });
      await eventually(() =>
        assert.ok(
          said.some((line) => words.test(line)),
          said.join("\n"),
        ),
      );
      await page.locator(".frame").waitFor();
      await eventually(async () => {
        const [{ code, problem }] = await told("problem");
        assert.equal(code, "files_not_loaded");
        assert.match(problem, words);
      });
    }
  });

  test("a policy that forbids wasm is named in the console and in an event, and the words are the reader's all the same", async (test) => {
    const { page, said, told } = await visit(test, '<saddlerule-fit language="de"></saddlerule-fit>', {
      head: `${head}<meta http-equiv="Content-Security-Policy" content="script-src 'self'">`,
    });
    await page.getByRole("textbox", { name: "Schrittlänge" }).waitFor();
    const words = /engine-\w+\.bin does not run: CompileError.*Content Security Policy/;
    await eventually(async () => {
      assert.ok(
        said.some((line) => words.test(line)),
        said.join("\n"),
      );
      assert.ok(
        (await told("problem")).some(
          ({ code, problem }) => code === "files_not_loaded" && words.test(problem),
        ),
      );
    });
  });
});
