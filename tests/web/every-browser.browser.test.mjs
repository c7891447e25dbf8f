// The main job in Chromium, Firefox and WebKit, from one set of texts: from a file and from a server of this machine, with
// nothing beyond this machine to be reached.

import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { once } from "node:events";
import { basename, dirname, join } from "node:path";
import test, { after, before, describe } from "node:test";
import { wholeTest } from "../support/eventually.mjs";
import { root, sample } from "../support/built-engine.mjs";
import { browsers } from "../support/browsers/browsers.mjs";
import { Visit } from "../support/browsers/visit.mjs";
import { pageAddress, pageFile, screens } from "../support/open-page.mjs";
import { screenFaults } from "../support/screen-measures.mjs";

/** A server as a club might run it for an afternoon; it does not outlive the test. */
async function serve(test) {
  const program = join(root, "web/tools/serve.mjs");
  const server = spawn(process.execPath, [program, "--port", "0", "--folder", dirname(pageFile)], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  test.after(() => server.kill());
  const [said] = await once(server.stdout, "data");
  const address = new URL(basename(pageFile), /http:\S+/.exec(said)[0]).href;
  return {
    address,
    async close() {
      server.kill();
      await once(server, "exit");
    },
  };
}

async function typesReading(visit, figure, unit) {
  await visit.press("radio", unit);
  await visit.types("Inside leg", figure);
  await visit.sees("heading", "Saddle height to look for");
}

/** Letters, targets, and what does not fit: each browser draws with measures of its own. */
async function fits(visit, screen) {
  assert.deepEqual(await visit.run(screenFaults), [], screen);
}

for (const { name, launch } of browsers) {
  describe(name, { concurrency: 1, timeout: wholeTest }, () => {
    let browser;
    before(async () => (browser = await launch()));
    after(() => browser.close());

    test(`${name}, from a file: from a reading to a ranked rack, one bike and a taped one`, async (test) => {
      const visit = await Visit.to(pageAddress, { test, browser, size: screens.phone });
      await typesReading(visit, "19 1/2", "inches");
      await visit.reads("Best: 19½ in");
      await visit.reads("Start with 16 inch wheels");
      await fits(visit, "rider");

      await visit.goTo("List");
      await visit.opensFile(sample("loan-shed.json"));
      await visit.sees("heading", "Loan shed, autumn list");
      await visit.press("button", "See the bikes");
      await visit.sees("heading", "Bikes");
      await visit.reads(/\d+ fits?\b/);
      const [first] = await visit.all("article");
      assert.match(first.words, /^Saddle height fits.* Saddle at 19½ in/);
      const best = await visit.sees("button", /^Loan \d/);
      assert.ok(first.words.includes(best.name));
      await visit.press("button", best.name);
      await visit.sees("heading", best.name);
      await visit.sees("img", /^Side view of the bike, to scale/);
      await fits(visit, "one bike");
      await visit.reads("Both feet are flat on the ground.");

      await visit.goTo("Measure");
      await visit.types(/^Saddle at its lowest/, "21 in");
      await visit.types(/^Saddle at its highest/, "26 1/2 in");
      await visit.reads("Still too big");
      await fits(visit, "tape one");
      await visit.types(/^Saddle at its lowest/, "19 in");
      await visit.reads("Saddle at 19½ in");
      await visit.press("button", "Add it to the bikes");
      await visit.goTo("Bikes");
      await visit.reads("measured by you");
      await fits(visit, "rack");

      assert.deepEqual(await visit.faults(), []);
    });

    test(`${name}, from a server that is gone once the page is open: every screen answers`, async (test) => {
      const server = await serve(test);
      const visit = await Visit.to(server.address, { test, browser, size: screens.laptop });
      await server.close();
      await typesReading(visit, "49.5", "centimetres");
      await visit.reads("47 to 50.5 cm");
      await visit.press("button", "Swap morning, in inches");
      await visit.reads(/\d+ fits?\b/);
      await visit.press("radio", /^Rides well/);
      await visit.reads("54.6 to 59.7 cm");
      assert.deepEqual(await visit.faults(), []);
    });

    test(`${name}: a table, bikes side by side, a card, a list mended, and all of it kept`, async (test) => {
      // From a file, nothing is saved.
      const { address } = await serve(test);
      const visit = await Visit.to(address, { test, browser, size: screens.phone });
      await typesReading(visit, "49.5", "centimetres");
      await visit.goTo("List");
      await visit.opensFile(join(root, "web/pictures/rider-phone.png"));
      await visit.sees("alert");
      await visit.reads("“rider-phone.png” could not be opened.");
      await visit.opensFile(sample("loan-shed.csv"));
      await visit.sees("heading", /^Loan shed/);

      await visit.press("button", "Add a bike");
      await visit.types("Name", "Hall 41");
      await visit.types(/^Saddle at its lowest/, "48");
      await visit.types(/^Saddle at its highest/, "62");
      await visit.press("button", "Save this bike");
      await visit.reads("41 bikes");
      await fits(visit, "list");

      await visit.press("button", "See the bikes");
      await visit.sees("heading", "Bikes");
      await visit.reads(/\d+ fits?\b/);
      await visit.press("checkbox", /^Side by side/, 0);
      await visit.press("checkbox", /^Side by side/, 1);
      await visit.press("button", "Side by side");
      await visit.sees("columnheader", null, 1);
      await fits(visit, "side by side");
      const [first] = await visit.all("columnheader");
      await visit.press("button", /^(Loan|Hall) \d/);
      await visit.press("button", "Card for the fridge");
      const card = await visit.sees("article", "Saddle card");
      assert.match(card.words, /\d cm/);
      await fits(visit, "card");
      assert.ok(first.words.length > 0);

      await visit.goTo("Save");
      await visit.press("checkbox", "Save on this device");
      await visit.reads("Saved as you type.");
      await fits(visit, "keep");
      await visit.opens(address);
      await visit.goTo("Your child");
      await visit.reads("47 to 50.5 cm");
      assert.equal((await visit.sees("textbox", "Inside leg")).value, "49.5");
      await visit.goTo("List");
      await visit.reads("41 bikes");
      await visit.goTo("Save");
      await visit.press("button", "Delete everything");
      await visit.press("button", "Yes, delete everything");
      await visit.reads("Everything is deleted.");
      await visit.opens(address);
      assert.equal((await visit.sees("textbox", "Inside leg")).value, "");
      assert.deepEqual(await visit.faults(), []);
    });
  });
}
