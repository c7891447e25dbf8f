// Club mornings against assignments that this project did not make: munkres-js (the Hungarian method, from npm) for one round, a
// table of every subset of bikes for small ones, and GLPK (Debian's glpk-utils) for several rounds.
//
// All of them are given the chances that `assess` answers, in its millionths.

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test from "node:test";
import { createRequire } from "node:module";
import { openBuiltEngine } from "../support/built-engine.mjs";

const munkres = createRequire(import.meta.url)("munkres-js");
const today = "2026-11-28";
const stages = ["gliding", "side_wheels", "starting", "riding", "riding"];

/** A linear congruential generator modulo 2^32 (constants of Numerical Recipes): the same numbers everywhere. */
function repeatableRandom(seed) {
  let state = seed >>> 0;
  return (count) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * count);
  };
}

/** A hall full of children and bikes, with what `assess` says of every pair. */
function hall(engine, seed, riderCount, bikeCount) {
  const below = repeatableRandom(seed);
  const bikes = Array.from({ length: bikeCount }, (_, i) => {
    const lowest = 380 + below(330);
    return {
      id: `B${i}`,
      kind: below(8) === 0 ? "balance" : "pedal",
      saddle_lowest: lowest,
      saddle_highest: lowest + 60 + below(140),
      mass_kg: 5 + below(70) / 10,
      ...(below(12) === 0 && { brakes: [] }),
    };
  });
  const list = { format: "saddlerule-catalogue", version: 1, title: "Hall", units: "mm", bikes };
  engine.ask({ do: "load" }, Buffer.from(JSON.stringify(list)));
  const riders = Array.from({ length: riderCount }, (_, i) => ({
    id: `R${i}`,
    rider: {
      stage: stages[below(5)],
      ...(below(2) === 0 && { mass_kg: 14 + below(20) }),
      ...(below(6) === 0
        ? { stature_mm: 950 + below(400) }
        : { readings: [{ on: today, inseam_mm: 400 + below(320), shoes: below(3) > 0 }] }),
    },
  }));
  const pairs = riders.map(({ rider }) => {
    const { bikes: judged, rider: about } = engine.ask({ do: "assess", today, rider, detail: "brief" });
    return new Map(
      judged
        .filter(
          (one) =>
            one.suits_stage && one.stops === 0 && one.saddle_mm !== null && one.fits_probability >= 0.5,
        )
        .map((one) => [
          one.id,
          {
            chance: Math.round(one.fits_probability * 1e6),
            misfit: Math.round(Math.abs(one.saddle_mm - about.window_mm.target) * 10),
          },
        ]),
    );
  });
  return { bikes, riders, pairs, below };
}

/** Some of the riders, and the bikes that are not there. */
function morning({ bikes, riders, below }, riderCount, bikeCount) {
  const drawn = (items, count) => {
    const left = [...items];
    return Array.from({ length: Math.min(count, left.length) }, () => left.splice(below(left.length), 1)[0]);
  };
  const here = new Set(drawn(bikes, bikeCount).map(({ id }) => id));
  return {
    chosen: drawn(riders, riderCount),
    present: bikes.map(({ id }) => id).filter((id) => here.has(id)),
    absent: bikes.map(({ id }) => id).filter((id) => !here.has(id)),
  };
}

/** How many are seated and the sum of their chances, held against the hall; no bike more often than there are rounds. */
function sumOf(answer, place, { pairs, riders }, rounds = 1) {
  const seats = new Set();
  let chances = 0;
  let misfit = 0;
  for (const pair of answer.pairs) {
    const known = pairs[riders.findIndex(({ id }) => id === pair.rider)].get(pair.bike);
    assert.ok(known, `${pair.rider} on ${pair.bike}`);
    assert.ok(place.present.includes(pair.bike));
    assert.ok(pair.round >= 1 && pair.round <= rounds);
    seats.add(`${pair.bike} ${pair.round}`);
    chances += known.chance;
    misfit += known.misfit;
  }
  assert.equal(seats.size, answer.pairs.length);
  assert.equal(new Set(answer.pairs.map(({ rider }) => rider)).size, answer.pairs.length);
  assert.equal(answer.pairs.length + answer.left.length, place.chosen.length);
  return { seated: answer.pairs.length, chances, misfit };
}

const rowOf = (room, rider) => room.pairs[room.riders.indexOf(rider)];

test("mornings of one round seat as many, with the same sum of chances, as munkres-js", async () => {
  const engine = await openBuiltEngine();
  const seat = 1e9; // more than all chances of a morning together
  for (let seed = 1; seed <= 20; ++seed) {
    const room = hall(engine, seed, 40, 40);
    for (let round = 0; round < 100; ++round) {
      const place = morning(room, 1 + room.below(14), 1 + room.below(14));
      const { chosen, present, absent } = place;
      const answer = engine.ask({ do: "club_day", today, riders: chosen, absent });
      // The library leaves what does not matter to it in place: a square of costs, zero for whoever goes without.
      const size = Math.max(chosen.length, present.length);
      const costs = Array.from({ length: size }, (_, r) =>
        Array.from({ length: size }, (__, b) => {
          const known =
            r < chosen.length && b < present.length ? rowOf(room, chosen[r]).get(present[b]) : undefined;
          return known === undefined ? 0 : -(seat + known.chance);
        }),
      );
      const best = munkres(costs.map((row) => [...row])).reduce((sum, [r, b]) => sum - costs[r][b], 0);
      const { seated, chances } = sumOf(answer, place, room);
      assert.equal(seated * seat + chances, best, `seed ${seed}, morning ${round}`);
    }
  }
});

test("small mornings are the best of all, misfit included", async () => {
  const engine = await openBuiltEngine();
  for (let seed = 101; seed <= 110; ++seed) {
    const room = hall(engine, seed, 30, 30);
    for (let round = 0; round < 60; ++round) {
      const place = morning(room, 1 + room.below(8), 1 + room.below(8));
      const { chosen, present, absent } = place;
      const answer = engine.ask({ do: "club_day", today, riders: chosen, absent });
      // The best for every set of bikes that are taken, one rider after another.
      let best = new Map([[0, 0]]);
      for (const rider of chosen) {
        const next = new Map(best);
        for (const [taken, sum] of best) {
          present.forEach((bike, bit) => {
            const known = rowOf(room, rider).get(bike);
            if (known === undefined || (taken & (1 << bit)) !== 0) return;
            const at = taken | (1 << bit);
            const more = sum + 1e13 + known.chance * 1e5 - known.misfit;
            if (more > (next.get(at) ?? -1)) next.set(at, more);
          });
        }
        best = next;
      }
      const { seated, chances, misfit } = sumOf(answer, place, room);
      assert.equal(seated * 1e13 + chances * 1e5 - misfit, Math.max(...best.values()));
    }
  }
});

/** The most that riders can have by the solver, in its own file format (CPLEX LP); bikes take as many as there are rounds. */
function solved(edges, rounds) {
  const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
  try {
    const sum = (terms) => terms.join(" + ");
    const by = (key) => Map.groupBy?.(edges, key) ?? groupBy(edges, key);
    const lines = [
      "Maximize",
      ` all: ${sum(edges.map(({ worth, name }) => `${worth} ${name}`))}`,
      "Subject To",
      ...[...by(({ rider }) => rider)].map(
        ([rider, its]) => ` r${rider}: ${sum(its.map(({ name }) => name))} <= 1`,
      ),
      ...[...by(({ bike }) => bike)].map(
        ([bike, its]) => ` b${bike}: ${sum(its.map(({ name }) => name))} <= ${rounds}`,
      ),
      "Binary",
      ...edges.map(({ name }) => ` ${name}`),
      "End",
    ];
    writeFileSync(join(folder, "morning.lp"), lines.join("\n"));
    const run = spawnSync("glpsol", ["--lp", "morning.lp", "--write", "answer"], {
      cwd: folder,
      encoding: "utf8",
    });
    assert.equal(run.status, 0, run.stdout);
    const answer = readFileSync(join(folder, "answer"), "utf8");
    assert.match(answer, /^s mip \d+ \d+ o /m, "solved to the optimum");
    return answer
      .split("\n")
      .filter((line) => line.startsWith("j "))
      .map((line) => Number(line.split(" ")[2]));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function groupBy(items, key) {
  const groups = new Map();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return groups;
}

test("mornings of several rounds seat as many, with the same sum of chances, as GLPK", async () => {
  const engine = await openBuiltEngine();
  const seat = 1e8; // more than the chances of 40 riders together
  for (let seed = 201; seed <= 206; ++seed) {
    const room = hall(engine, seed, 40, 30);
    for (let round = 0; round < 6; ++round) {
      const rounds = 2 + room.below(3);
      const place = morning(room, 10 + room.below(30), 2 + room.below(8));
      const { chosen, present, absent } = place;
      const answer = engine.ask({ do: "club_day", today, riders: chosen, absent, rounds });
      const edges = chosen.flatMap((rider, r) =>
        present.flatMap((bike, b) => {
          const known = rowOf(room, rider).get(bike);
          return known === undefined
            ? []
            : [{ rider: r, bike: b, name: `x${r}_${b}`, worth: seat + known.chance }];
        }),
      );
      const { seated, chances } = sumOf(answer, place, room, rounds);
      if (edges.length === 0) {
        assert.equal(seated, 0);
        continue;
      }
      const best = solved(edges, rounds).reduce(
        (sum, taken, i) => sum + Math.round(taken) * edges[i].worth,
        0,
      );
      assert.equal(seated * seat + chances, best, `seed ${seed}, morning ${round}`);
    }
  }
});

test("what is to get would seat everybody who is left and measured", async () => {
  const engine = await openBuiltEngine();
  for (let seed = 301; seed <= 310; ++seed) {
    const room = hall(engine, seed, 25, 8);
    const answer = engine.ask({ do: "club_day", today, riders: room.riders });
    assert.ok(answer.to_get.length > 0);
    const got = answer.to_get.flatMap((range, i) =>
      Array.from({ length: range.bikes }, (_, j) => ({
        id: `G${i}-${j}`,
        kind: range.kind,
        saddle_lowest: range.lowest_at_most_mm,
        saddle_highest: range.highest_at_least_mm,
      })),
    );
    const list = {
      format: "saddlerule-catalogue",
      version: 1,
      title: "Hall",
      units: "mm",
      bikes: [...room.bikes, ...got],
    };
    engine.ask({ do: "load" }, Buffer.from(JSON.stringify(list)));
    assert.deepEqual(engine.ask({ do: "club_day", today, riders: room.riders }).left, []);
  }
});

test("every edge of every sample list is the verdict's own", async () => {
  const engine = await openBuiltEngine();
  for (const name of ["loan-shed.json", "swap-morning.json"]) {
    engine.ask({ do: "load" }, readFileSync(new URL(`../../catalogue-samples/${name}`, import.meta.url)));
    const { bikes } = engine.ask({ do: "suits" });
    let edges = 0;
    for (const stage of ["gliding", "side_wheels", "starting", "riding"]) {
      const verdicts = new Map();
      const verdict = (id, inseam_mm) => {
        if (!verdicts.has(inseam_mm)) {
          const rider = { stage, readings: [{ on: today, inseam_mm }] };
          const { bikes: judged } = engine.ask({ do: "assess", today, rider, detail: "brief" });
          verdicts.set(inseam_mm, new Map(judged.map((one) => [one.id, one.verdict])));
        }
        return verdicts.get(inseam_mm).get(id);
      };
      for (const { id, stages: ranges } of bikes) {
        const [from, to] = ranges[stage]?.inseam_mm ?? [null, null];
        for (const [edge, beyond] of [
          [from, -1],
          [to, 1],
        ]) {
          if (edge === null) continue;
          ++edges;
          assert.equal(verdict(id, edge), "fits_now", `${id} ${stage} ${edge}`);
          assert.notEqual(
            verdict(id, Math.round(edge * 10 + beyond) / 10),
            "fits_now",
            `${id} ${stage} ${edge}`,
          );
        }
      }
    }
    assert.ok(edges > 20);
  }
});
