// Saddlerule in a frame of a page of another origin, in Chromium, Firefox and WebKit: the frame is as high as what is in it,
// the page inside tells nobody but the origin that it was given, and nonsense from other frames changes nothing.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import test, { after, before, describe } from "node:test";
import { browsers } from "../support/browsers/browsers.mjs";
import { clubSite, elementFolder } from "../support/club-site.mjs";
import { drawnIn, eventually as soon, wholeTest } from "../support/eventually.mjs";
import { pageFile, screens } from "../support/open-page.mjs";

/** Browsers of a busy machine take their time. */
const eventually = (check) => soon(check, { tries: 200 });

const hostilePage = `<!doctype html><title>Hostile</title><script>
const say = (data) => parent.postMessage(data, "*");
for (const height of [NaN, Infinity, "900", null, {}, [5000], undefined]) say({ saddlerule: "height", height });
for (const data of [null, 5, "height", [], { height: 900 }, { saddlerule: "other", height: 900 }]) say(data);
say({ saddlerule: "height", height: 700, style: "position: fixed", frame: 0 });
const wanted = new URLSearchParams(location.search).get("height");
if (wanted !== null) say({ saddlerule: "height", height: Number(wanted) });
say("done");
</script>`;

let host;
let served;
let hostile;
before(async () => {
  hostile = await clubSite({ "/": hostilePage }, { policy: null });
  served = await clubSite(
    {
      "/fit.html": readFileSync(pageFile),
      "/turned-away.html": (request, response) =>
        response.writeHead(302, { location: `${hostile.address}/` }).end(),
    },
    { policy: null },
  );
  // One below the other: beside a frame of 6,000 pixels the first one would be far down, and tell its height only when it is
  // scrolled to.
  const framed = (script, sources) =>
    `<!doctype html><title>Club</title><script src="/hears.js"></script><script src="${script}"></script>
     ${sources.map((source) => `<div><iframe data-saddlerule title="Saddlerule" width="390" height="400" src="${source}"></iframe></div>`).join("")}`;
  const frames = (...sources) => framed("/saddlerule/saddlerule-frame.js", sources);
  const page = (hash) => `${served.address}/fit.html#${hash}`;
  const policy = `default-src 'none'; script-src 'self'; frame-src http://127.0.0.1:*`;
  host = await clubSite(
    {
      "/hears.js": `window.heard = []; const sources = [];
        window.fromOthers = (frame) => sources.filter((source) => source !== frame).length;
        addEventListener("message", ({ data, origin, source }) => { window.heard.push({ data, origin }); sources.push(source); });`,
      // On a slow line the frame is there before the script beside it.
      "/late.js": (request, response) =>
        setTimeout(() => {
          const script = readFileSync(join(elementFolder, "saddlerule-frame.js"));
          response.writeHead(200, { "content-type": "text/javascript" }).end(script);
        }, 1500),
      "/fit": (request, response) =>
        answer(response, framed('/late.js" async="', [page(`language=en&host=${host.address}`)])),
      "/not-told": (request, response) =>
        answer(response, frames(page(`host=${hostile.address}`), page("host=*"), page("view=rack"))),
      "/hostile": (request, response) =>
        answer(
          response,
          frames(
            page(`language=en&host=${host.address}`),
            `${hostile.address}/?height=1e9`,
            `${hostile.address}/?height=-5`,
            `${served.address}/turned-away.html`,
          ),
        ),
    },
    { policy },
  );
  function answer(response, body) {
    response.writeHead(200, { "content-type": "text/html", "content-security-policy": policy }).end(body);
  }
});
after(() => [host, served, hostile].forEach((site) => site.close()));

for (const { name, launch } of browsers) {
  describe(name, { timeout: wholeTest }, () => {
    let browser;
    before(async () => (browser = await launch()));
    after(() => browser.close());

    async function open(test, path) {
      const page = await browser.open(screens.laptop);
      test.after(() => page.close());
      await page.goTo(host.address + path);
      return page;
    }
    const heights = (page) =>
      page.run(() => [...document.querySelectorAll("iframe")].map((frame) => frame.style.height));

    /** Once the height of the first frame is settled. */
    async function settled(page, isRight) {
      let last = "";
      await eventually(async () => {
        const before = last;
        [last] = await heights(page);
        assert.ok(isRight(parseFloat(last)) && last === before, `${before}, then ${last}`);
        await drawnIn(page);
        assert.equal((await heights(page))[0], last);
      });
      return parseFloat(last);
    }

    test(`${name}: the frame takes the height of what is in it, and follows it up and down`, async (test) => {
      const page = await open(test, "/fit");
      const rider = await settled(page, (height) => height > 900 && height < 6000);
      const heard = await page.run(() => window.heard);
      assert.ok(heard.every(({ origin }) => origin === served.address));
      assert.equal(heard.at(-1).data.height, rider);
      const show = (view) =>
        page.run((view) => {
          const frame = document.querySelector("iframe");
          frame.src = frame.src.replace(/(&view=\w+)?$/, `&view=${view}`);
        }, view);
      await show("list");
      await settled(page, (height) => height < rider - 200);
      await show("rider");
      // A scroll bar that was there for a moment may have broken a line elsewhere.
      await settled(page, (height) => Math.abs(height - rider) < 20);
    });

    test(`${name}: the page inside tells nobody but the origin that it was given`, async (test) => {
      const page = await open(test, "/not-told");
      // What a frame that came after them has told, they would have told before.
      await page.run((address) => {
        const told = document.createElement("iframe");
        told.src = address;
        told.width = 390;
        document.body.prepend(told);
      }, `${served.address}/fit.html#language=en&host=${host.address}`);
      await eventually(async () => assert.ok((await page.run(() => window.heard)).length > 0));
      const heard = await page.run(() => {
        const [told] = document.querySelectorAll("iframe");
        return window.fromOthers(told.contentWindow);
      });
      assert.equal(heard, 0);
      assert.deepEqual((await heights(page)).slice(1), ["", "", ""]);
    });

    test(`${name}: nonsense from a frame changes no other, and its own height within bounds alone`, async (test) => {
      const page = await open(test, "/hostile");
      await eventually(async () => {
        const done = (await page.run(() => window.heard)).filter(({ data }) => data === "done");
        assert.equal(done.length, 3);
      });
      await settled(page, (height) => height > 900);
      const [own, huge, small, turnedAway] = await heights(page);
      assert.ok(parseFloat(own) < 6000);
      assert.equal(huge, "6000px");
      assert.equal(small, "320px");
      // What is in it is not of the origin that the page wrote.
      assert.equal(turnedAway, "");
      // A message that no frame sent.
      await page.run(() => {
        window.postMessage({ saddlerule: "height", height: 5000 }, "*");
        window.postMessage("after it", "*");
      });
      await eventually(async () =>
        assert.equal((await page.run(() => window.heard)).at(-1).data, "after it"),
      );
      assert.equal((await heights(page))[0], own);
    });
  });
}
