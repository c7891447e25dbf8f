// The browser's Back and Forward: screens are entries of its history, in the page file in Chromium, Firefox and WebKit; in an
// element where the page around says so, and never in a frame.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import test, { after, before, describe } from "node:test";
import { sample } from "../support/built-engine.mjs";
import { browsers } from "../support/browsers/browsers.mjs";
import { Visit } from "../support/browsers/visit.mjs";
import { clubPage, clubSite } from "../support/club-site.mjs";
import { eventually as soon, wholeTest } from "../support/eventually.mjs";
import {
  goTo,
  launchBrowser,
  openList,
  openPage,
  pageAddress,
  pageFile,
  screens,
} from "../support/open-page.mjs";

/** Browsers of a busy machine take their time. */
const eventually = (check) => soon(check, { tries: 200 });

for (const { name, launch } of browsers) {
  describe(name, { timeout: wholeTest }, () => {
    let browser;
    before(async () => (browser = await launch()));
    after(() => browser.close());

    test(`${name}: Back from one bike is the list of bikes as it was scrolled, and Forward the bike again`, async (test) => {
      const visit = await Visit.to(pageAddress, { test, browser, size: screens.phone });
      const back = () => visit.run(() => history.back());
      const hash = () => visit.run(() => window.location.hash);
      await visit.types("Inside leg", "49.5");
      await visit.goTo("List");
      await visit.opensFile(sample("loan-shed.json"));
      await visit.press("button", "See the bikes");
      await visit.reads(/\d+ fits?\b/);
      assert.equal(await hash(), "#view=rack");

      const row = await visit.sees("button", /^Loan \d/, 7);
      // Not in the middle of the screen, where it would be brought without a place to come back to.
      const left = await visit.run((name) => {
        const [element] = window.inPage.all("button", name);
        scrollTo(0, window.scrollY + element.getBoundingClientRect().top - 200);
        element.focus({ preventScroll: true });
        return window.scrollY;
      }, row.name);
      assert.ok(left > 500, `${left}`);
      const isWhereItWas = async () =>
        assert.ok(
          Math.abs((await visit.run(() => window.scrollY)) - left) < 2,
          `${await visit.run(() => window.scrollY)}, not ${left}`,
        );
      await visit.key("Enter");
      await visit.sees("heading", row.name);
      assert.match(await hash(), /^#bike=\w+$/);
      await back();
      await visit.sees("heading", "Bikes");
      assert.equal(await hash(), "#view=rack");
      await eventually(async () => assert.equal((await visit.focused())?.name, row.name));
      await isWhereItWas();

      await visit.run(() => history.forward());
      await visit.sees("heading", row.name);
      await visit.press("button", "Back to the bikes");
      await visit.sees("heading", "Bikes");
      await eventually(async () => assert.equal(await hash(), "#view=rack"));
      await isWhereItWas();

      // The page's own way back went back as well: before the bikes came the list, and before that the child.
      await back();
      await visit.sees("heading", "Loan shed, autumn list");
      await back();
      await visit.sees("heading", "Your child");
      assert.equal((await visit.sees("textbox", "Inside leg")).value, "49.5");
      assert.equal(await hash(), "");
      assert.deepEqual(await visit.faults(), []);
    });
  });
}

describe("in Chromium", { timeout: wholeTest }, () => {
  let browser;
  before(async () => (browser = await launchBrowser()));
  after(() => browser.close());

  const title = (page, name) =>
    page.locator(".screen.current .screen-title", { hasText: name }).first().waitFor();
  const focused = (page) =>
    page.evaluate(() => {
      const host = [...document.querySelectorAll("*")].find((element) => element.shadowRoot);
      return host.shadowRoot.activeElement?.textContent ?? null;
    });

  async function openShed(page) {
    await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
    await openList(page, sample("loan-shed.json"));
    await page.getByRole("button", { name: "See the bikes" }).waitFor();
  }

  test("what is open on the list closes first, what was typed there is kept, and Forward opens nothing that is gone", async () => {
    const { page, faults, close } = await openPage(browser, screens.phone);
    await openShed(page);
    await page.getByRole("button", { name: "Add a bike" }).click();
    await page.getByRole("textbox", { name: "Name", exact: true }).fill("Hall 41");
    await page.goBack();
    await page.getByRole("button", { name: "See the bikes" }).waitFor();
    assert.equal(await page.evaluate(() => window.location.hash), "#view=list");
    await page.goForward();
    assert.equal(await page.getByRole("textbox", { name: "Name", exact: true }).inputValue(), "Hall 41");
    await page.getByRole("textbox", { name: /^Saddle at its lowest/ }).fill("48");
    await page.getByRole("textbox", { name: /^Saddle at its highest/ }).fill("62");
    await page.getByRole("button", { name: "Save this bike" }).click();
    await page.getByText("41 bikes").first().waitFor();
    await page.goForward().catch(() => undefined);
    await page.getByText("41 bikes").first().waitFor();
    await page.getByRole("button", { name: "Save list" }).click();
    await title(page, /Save/);
    await page.goBack();
    await page.getByRole("button", { name: "See the bikes" }).waitFor();
    await page.goBack();
    await title(page, "Your child");
    assert.deepEqual(faults, []);
    await close();
  });

  test("every screen has an address without a figure of the child in it, which opens it when it is loaded anew", async () => {
    const { page, close } = await openPage(browser, screens.phone);
    await openShed(page);
    const seen = [];
    const address = async () => {
      const hash = await page.evaluate(() => window.location.hash);
      seen.push(hash);
      return hash;
    };
    for (const [button, heading, expected] of [
      ["Bikes", "Bikes", "#view=rack"],
      ["Measure", "Measure a bike", "#view=tape"],
      ["Save", /./, "#view=keep"],
      ["List", /./, "#view=list"],
      ["Your child", "Your child", "#view=rider"],
    ]) {
      await goTo(page, button);
      await title(page, heading);
      assert.equal(await address(), expected);
    }
    await goTo(page, "Bikes");
    const name = await page.locator(".row-name").first().innerText();
    await page.locator(".row-name").first().click();
    await title(page, name);
    assert.match(await address(), /^#bike=\w+$/);
    await page.getByRole("button", { name: "Card for the fridge" }).click();
    await title(page, "Card");
    assert.match(await address(), /^#view=card&bike=\w+$/);
    for (const hash of seen) assert.doesNotMatch(hash, /49/);

    // Loaded anew, the card waits for figures; the page's own way back still leads where it came from.
    await page.reload();
    await page.locator(".screen.card.current .screen-title").waitFor();
    for (const hash of [
      "#view=tape",
      "#view=years",
      "#view=club",
      "#view=suits",
      "#view=keep",
      "#view=list",
    ]) {
      await page.goto("about:blank");
      await page.goto(`${pageAddress}${hash}`);
      await page.locator(`.screen.${hash.slice(6)}.current .screen-title`).waitFor();
    }
    await close();
  });

  test("settings behind the # stay as they were written, and a link to another screen is an entry like others", async () => {
    const { page, faults, close } = await openPage(browser, screens.phone, {
      address: `${pageAddress}#units=in&language=de`,
    });
    await page.evaluate(() => (window.location.hash = "units=in&language=en"));
    await page.getByRole("button", { name: "Measure" }).click();
    await title(page, "Measure a bike");
    assert.equal(await page.evaluate(() => window.location.hash), "#units=in&language=en&view=tape");
    await page.evaluate(() => (window.location.hash = "units=cm&language=en&view=keep"));
    await page.locator(".screen.keep.current").waitFor();
    assert.equal(await page.evaluate(() => history.length), 5);
    await page.goBack();
    await title(page, "Measure a bike");
    await page.goBack();
    await title(page, "Your child");
    await page.goBack();
    await page.locator('.frame[lang="de"]').waitFor();
    assert.deepEqual(
      faults.filter((fault) => !fault.startsWith("request:")),
      [],
    );
    await close();
  });

  test("with the keyboard: after Back the focus is on the bike's row, and on the heading of other screens", async () => {
    const { page, close } = await openPage(browser, screens.laptop);
    await openShed(page);
    await goTo(page, "Bikes");
    await title(page, "Bikes");
    const row = page.locator(".row-name").nth(2);
    await row.focus();
    const name = await row.innerText();
    await page.keyboard.press("Enter");
    await title(page, name);
    await page.goBack();
    await title(page, "Bikes");
    assert.equal(await focused(page), name);
    await page.goBack();
    await page.getByRole("button", { name: "See the bikes" }).waitFor();
    assert.equal(await focused(page), "List");
    await close();
  });

  describe("in a club's page", () => {
    const script = '<script src="/saddlerule/saddlerule-fit.js" async></script>';
    const element = (attributes, id = "fit") =>
      `<saddlerule-fit id="${id}" list="/bikes.json" view="rack" ${attributes}></saddlerule-fit>`;
    let site;
    before(async () => {
      site = await clubSite(
        {
          "/club.css": "body { margin: 0 }",
          "/bikes.json": readFileSync(sample("loan-shed.json")),
          "/before": clubPage("<p>Before</p>"),
          "/quiet": clubPage(element(""), { head: script }),
          "/back": clubPage(`<p id="news">News</p>${element("browser-back")}`, { head: script }),
          "/two": clubPage(element("browser-back", "one") + element("browser-back", "two"), { head: script }),
          "/frame": clubPage(
            '<iframe title="Bikes" src="/page.html#view=rider" width="390" height="800"></iframe>',
          ),
          "/page.html": readFileSync(pageFile),
        },
        { policy: null },
      );
    });
    after(() => site.close());

    async function open(test, path, viewport = { width: 1280, height: 3000 }) {
      const context = await browser.newContext({ viewport, locale: "en-GB" });
      test.after(() => context.close());
      const page = await context.newPage();
      await page.goto(`${site.address}/before`);
      await page.goto(`${site.address}${path}`);
      return page;
    }
    const firstBike = (page, id = "fit") => page.locator(`#${id} .row-name`).first();

    test("an element leaves the history alone", async (test) => {
      const page = await open(test, "/quiet");
      await firstBike(page).click();
      await page.locator(".screen.bike.current").waitFor();
      assert.deepEqual(await page.evaluate(() => [history.length, history.state, window.location.hash]), [
        3,
        null,
        "",
      ]);
      await page.goBack();
      await page.getByText("Before").waitFor();
    });

    test("with browser-back its screens are entries, the address and the page's own entries stay as they are", async (test) => {
      const page = await open(test, "/back");
      await firstBike(page).waitFor();
      await page.evaluate(() => history.replaceState({ club: "own" }, ""));
      await firstBike(page).click();
      await page.locator(".screen.bike.current").waitFor();
      assert.equal(await page.evaluate(() => window.location.hash), "");
      assert.equal(await page.evaluate(() => history.state.club), "own");
      await page.evaluate(() => (window.location.hash = "news"));
      await page
        .getByRole("button", { name: "Card for the fridge" })
        .or(page.locator(".to-tape"))
        .last()
        .click();
      await page.locator(".screen.tape.current").waitFor();
      await page.goBack();
      await page.locator(".screen.bike.current").waitFor();
      assert.equal(await page.evaluate(() => window.location.hash), "#news");
      await page.goBack();
      await page.goBack();
      await page.locator(".screen.rack.current").waitFor();
      await page.goBack();
      await page.getByText("Before").waitFor();
    });

    test("two elements go back one after the other, and taking the attribute away ends it", async (test) => {
      const page = await open(test, "/two");
      await firstBike(page, "one").click();
      await page.locator("#one .screen.bike.current").waitFor();
      await firstBike(page, "two").click();
      await page.locator("#two .screen.bike.current").waitFor();
      // The entry before this one is not what the first element was opened from.
      await page.locator("#one .back").click();
      await page.locator("#one .screen.rack.current").waitFor();
      assert.equal(await page.locator("#two .screen.bike.current").count(), 1);
      await page.goBack();
      await page.locator("#one .screen.bike.current").waitFor();
      await page.goBack();
      await page.locator("#two .screen.rack.current").waitFor();
      assert.equal(await page.locator("#one .screen.bike.current").count(), 1);
      await page.goBack();
      await page.locator("#one .screen.rack.current").waitFor();
      await page.evaluate(() => document.querySelector("#one").removeAttribute("browser-back"));
      const length = await page.evaluate(() => history.length);
      await firstBike(page, "one").click();
      await page.locator("#one .screen.bike.current").waitFor();
      assert.equal(await page.evaluate(() => history.length), length);
    });

    test("the element's own way back stays in sight on a long screen", async (test) => {
      for (const viewport of [screens.phone, screens.laptop]) {
        const page = await open(test, "/quiet", viewport);
        await page.locator(".frame").first().waitFor();
        await page
          .getByRole("textbox", { name: "Inside leg" })
          .or(page.locator(".row-name").first())
          .first()
          .waitFor();
        await firstBike(page).click();
        await page
          .locator(".screen.bike.current .facts, .screen.bike.current table, .screen.bike.current dl")
          .first()
          .waitFor();
        await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
        const box = await page.locator(".screen.bike .back").boundingBox();
        assert.ok(box.y >= 0 && box.y + box.height <= viewport.height, JSON.stringify(box));
      }
    });

    test("in a frame nothing of the history around is touched", async (test) => {
      const page = await open(test, "/frame");
      const frame = page.frameLocator("iframe");
      await frame.getByRole("button", { name: "Measure" }).click();
      await frame.getByRole("heading", { name: "Measure a bike" }).waitFor();
      await frame.getByRole("button", { name: "List" }).click();
      await frame.locator(".screen.list.current").waitFor();
      assert.equal(await page.evaluate(() => history.length), 3);
      await page.goBack();
      await page.getByText("Before").waitFor();
    });
  });
});
