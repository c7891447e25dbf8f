// Whose children the legs are guessed from: taken from the browser's languages, sent, kept, and handed on to the next rider.

import assert from "node:assert/strict";
import test from "node:test";
import { pageModule } from "../support/page-modules.mjs";

const { populationFor } = await pageModule("page/region.ts");
const { riderRequest } = await pageModule("state/request-building.ts");
const { firstState } = await pageModule("state/page-state.ts");
const { riderAdded } = await pageModule("state/family-changes.ts");
const { riderSaid } = await pageModule("state/rider-changes.ts");
const { familyIn } = await pageModule("keeping/family-form.ts");
const { fileText, readFileText } = await pageModule("keeping/family-file.ts");

const today = "2026-11-25";

test("the first language that names a region says whose children are meant", () => {
  assert.equal(populationFor(["en-US", "nl-NL"]), "us");
  assert.equal(populationFor(["en-GB"]), "gb");
  assert.equal(populationFor(["nl", "nl-NL"]), "nl");
  assert.equal(populationFor(["nl-BE", "nl-NL"]), "any");
  assert.equal(populationFor(["de-DE"]), "any");
  assert.equal(populationFor(["en"]), "any");
  assert.equal(populationFor([]), "any");
  assert.equal(populationFor(["no_such_tag!", "en-GB"]), "gb");
});

test("a population is sent where one is known, and a new rider begins with it", () => {
  const state = firstState(today, "cm", "en", "gb");
  assert.equal(riderRequest(state.rider).population, "gb");
  const moved = riderSaid({ population: "nl" })(state);
  assert.equal(riderRequest(riderAdded()(moved).rider).population, "nl");
  assert.equal(riderRequest(riderSaid({ population: "any" })(state).rider).population, undefined);
});

test("a family kept before pages asked for it reads back, from anywhere", () => {
  const kept = JSON.parse(fileText(familyIn(firstState(today, "cm", "en", "gb")), []));
  assert.equal(readFileText(JSON.stringify(kept)).family.riders[0].rider.population, "gb");
  delete kept.riders[0].rider.population;
  assert.equal(readFileText(JSON.stringify(kept)).family.riders[0].rider.population, "any");
  kept.riders[0].rider.population = "atlantis";
  assert.equal(readFileText(JSON.stringify(kept)).code, "damaged");
});
