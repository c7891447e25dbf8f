// Plans over years against integer programs solved by GLPK (Debian's glpk-utils), a solver that this project did not make, and
// what the request answers to odd questions.
//
// In which months a bike fits a child is asked of the engine, one child and one bike at a time; who gets which bike when, and what
// it costs, is the solver's own.

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test from "node:test";
import { openBuiltEngine } from "../support/built-engine.mjs";
import { worded } from "../support/in-english.mjs";

const today = "2026-11-28";
const monthsBeforeNewYear = 2; // November and December

/** A linear congruential generator modulo 2^32 (constants of Numerical Recipes): the same numbers everywhere. */
function repeatableRandom(seed) {
  let state = seed >>> 0;
  return (count) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * count);
  };
}

const monthOf = (text) => {
  const [year, month] = text.split("-").map(Number);
  return 12 * (year - 2026) + month - 11;
};
const textOf = (month) => {
  const months = 2026 * 12 + 10 + month;
  return `${Math.floor(months / 12)}-${String((months % 12) + 1).padStart(2, "0")}`;
};

function load(engine, bikes, more = {}) {
  const list = { format: "saddlerule-catalogue", version: 1, title: "Shed", units: "mm", bikes, ...more };
  const { error } = engine.ask({ do: "load" }, Buffer.from(JSON.stringify(list)));
  assert.equal(error, undefined);
}

/** A family with its shed. */
function family(seed) {
  const below = repeatableRandom(seed);
  const bikes = Array.from({ length: 2 + below(6) }, (_, i) => {
    const lowest = 400 + below(300);
    return {
      id: `B${i}`,
      kind: "pedal",
      saddle_lowest: lowest,
      saddle_highest: lowest + 90 + below(110),
      price: 20 + 5 * below(30),
    };
  });
  const riders = Array.from({ length: 1 + below(3) }, (_, i) => ({
    id: `R${i}`,
    rider: { stage: "riding", readings: [{ on: today, inseam_mm: 430 + below(220), shoes: true }] },
  }));
  const months = 12 + below(37);
  const some = (share) => bikes.map(({ id }) => id).filter(() => below(share) === 0);
  const owned = some(5);
  const keep = some(6);
  const always = owned.filter((id) => keep.includes(id)).length;
  const request = {
    do: "years_ahead",
    today,
    riders,
    horizon_months: months,
    currency: "EUR",
    owned,
    keep,
    ...(below(3) === 0 && { max_per_year: 20 * (1 + below(12)) }),
    ...(below(3) === 0 && { max_bikes: always + 1 + below(3) }),
    ...(below(4) === 0 && { buy_from: textOf(below(8)) }),
  };
  return { bikes, riders, months, request };
}

/** The months in which each bike fits each child: what the engine plans for the two alone, the bike being owned. */
function rides(engine, { bikes, riders, months }) {
  return riders.map((rider) =>
    bikes.map(({ id }) => {
      const alone = engine.ask({
        do: "years_ahead",
        today,
        riders: [rider],
        horizon_months: months,
        owned: [id],
        not: bikes.map((other) => other.id).filter((other) => other !== id),
      });
      const [stretch] = alone.riders[0].stretches;
      return stretch === undefined ? null : { first: monthOf(stretch.from), after: monthOf(stretch.to) };
    }),
  );
}

/** Runs a program in the solver's own file format (CPLEX LP); returns the best value of the sum of `terms`. */
function optimum(folder, direction, terms, rows, binaries) {
  if (terms.length === 0) return 0;
  const lines = [
    direction,
    ` all: ${terms.join(" + ")}`,
    "Subject To",
    ...rows.map((row, i) => ` c${i}: ${row}`),
    "Binary",
    ...binaries.map((name) => ` ${name}`),
    "End",
  ];
  writeFileSync(join(folder, "plan.lp"), lines.join("\n"));
  const run = spawnSync("glpsol", ["--lp", "plan.lp", "--cuts", "--write", "answer"], {
    cwd: folder,
    encoding: "utf8",
  });
  assert.equal(run.status, 0, run.stdout);
  const [, value] = /^s mip \d+ \d+ o (\S+)/m.exec(readFileSync(join(folder, "answer"), "utf8")) ?? [];
  assert.ok(value !== undefined, `solved to the optimum\n${run.stdout}`);
  return Math.round(Number(value));
}

/**
 * The fewest months without a bike, and the least money for as few. `x`: a child rides a bike in a month; `s`: and begins to;
 * `f`: the bike has been bought by then; `g`: and is gone again.
 */
function solved({ bikes, riders, months, request }, fits) {
  const owned = new Set(request.owned);
  const kept = new Set(request.keep);
  const buyFrom = request.buy_from === undefined ? 0 : monthOf(request.buy_from);
  const rows = [];
  const binaries = [];
  const name = (kind, ...at) => kind + at.join("_");
  const may = (r, b, m) => {
    const ride = fits[r][b];
    return ride !== null && m >= ride.first && m < ride.after && (owned.has(bikes[b].id) || m >= buyFrom);
  };
  const every = (count) => Array.from({ length: count }, (_, i) => i);
  let fixed = 0; // of the months without a bike
  const ridden = [];
  for (const r of every(riders.length)) {
    const firsts = fits[r].filter((ride) => ride !== null).map(({ first }) => first);
    fixed += months - (firsts.length === 0 ? 0 : Math.min(...firsts));
    for (const b of every(bikes.length)) {
      const starts = [];
      for (const m of every(months).filter((month) => may(r, b, month))) {
        binaries.push(name("x", r, b, m), name("s", r, b, m));
        ridden.push(name("x", r, b, m));
        starts.push(name("s", r, b, m));
        const before = may(r, b, m - 1) ? ` - ${name("x", r, b, m - 1)}` : "";
        rows.push(`${name("x", r, b, m)}${before} - ${name("s", r, b, m)} <= 0`);
        rows.push(`${name("x", r, b, m)} - ${name("f", b, m)} <= 0`);
        rows.push(`${name("x", r, b, m)} + ${name("g", b, m)} <= 1`);
      }
      if (starts.length > 1) rows.push(`${starts.join(" + ")} <= 1`);
    }
    for (const m of every(months)) {
      const on = every(bikes.length).filter((b) => may(r, b, m));
      if (on.length > 1) rows.push(`${on.map((b) => name("x", r, b, m)).join(" + ")} <= 1`);
    }
  }
  const money = [];
  const spent = new Map();
  const held = every(months).map(() => []);
  const used = every(bikes.length).filter((b) => fits.some((of) => of[b] !== null) || owned.has(bikes[b].id));
  for (const b of used) {
    const { id, price } = bikes[b];
    for (const m of every(months)) {
      binaries.push(name("f", b, m), name("g", b, m));
      const on = every(riders.length).filter((r) => may(r, b, m));
      const riding = on.map((r) => name("x", r, b, m));
      if (riding.length > 1) rows.push(`${riding.join(" + ")} <= 1`);
      if (owned.has(id)) rows.push(`${name("f", b, m)} = 1`);
      else {
        // Bought in the month of its first use, and not before.
        const before = m > 0 ? ` - ${name("f", b, m - 1)}` : "";
        rows.push([`${name("f", b, m)}${before}`, ...riding].join(" - ") + " <= 0");
        if (m > 0) rows.push(`${name("f", b, m - 1)} - ${name("f", b, m)} <= 0`);
        // What is paid in a year: that it has been bought by the end of it, and not before it.
        const year = Math.floor((m + 12 - monthsBeforeNewYear) / 12);
        const lastOfYear = m + 1 === months || (m + 1 + 12 - monthsBeforeNewYear) % 12 === 0;
        if (lastOfYear) {
          const before = m - ((m + 12 - monthsBeforeNewYear) % 12) - 1;
          spent.set(year, [
            ...(spent.get(year) ?? []),
            `+ ${price} ${name("f", b, m)}`,
            ...(before >= 0 ? [`- ${price} ${name("f", b, before)}`] : []),
          ]);
        }
      }
      if (kept.has(id)) rows.push(`${name("g", b, m)} = 0`);
      else {
        rows.push(`${name("g", b, m)} - ${name("f", b, m)} <= 0`);
        if (m > 0) rows.push(`${name("g", b, m - 1)} - ${name("g", b, m)} <= 0`);
      }
      held[m].push(`+ ${name("f", b, m)} - ${name("g", b, m)}`);
    }
    // In thousandths; half of the price comes back.
    if (!owned.has(id))
      money.push(`${kept.has(id) ? price * 1000 : price * 500} ${name("f", b, months - 1)}`);
  }
  if (request.max_per_year !== undefined)
    for (const terms of spent.values()) rows.push(`${terms.join(" ")} <= ${request.max_per_year}`);
  if (request.max_bikes !== undefined)
    for (const terms of held) if (terms.length > 0) rows.push(`${terms.join(" ")} <= ${request.max_bikes}`);

  const folder = mkdtempSync(join(tmpdir(), "saddlerule-"));
  try {
    const most = optimum(folder, "Maximize", ridden, rows, binaries);
    const enough = [...rows, `${ridden.join(" + ")} >= ${most}`];
    const net = most === 0 ? 0 : optimum(folder, "Minimize", money, enough, binaries);
    const back = bikes
      .filter(({ id }) => owned.has(id) && !kept.has(id))
      .reduce((sum, { price }) => sum + price * 500, 0);
    return { gap_months: fixed - most, net: net - back };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** That a plan keeps its own rules, and its figures are those of its stretches. */
function checkPlan(plan, { bikes, riders, months, request }, fits) {
  const taken = new Set();
  const first = new Map();
  let gaps = 0;
  plan.riders.forEach(({ id, stretches, gaps: without, not_yet: notYet }, r) => {
    assert.equal(id, riders[r].id);
    const ridden = new Set();
    let with_bike = 0;
    for (const { bike, from, to } of stretches) {
      assert.ok(!ridden.has(bike), "a bike that was left is not taken up again");
      ridden.add(bike);
      const ride = fits[r][bikes.findIndex((one) => one.id === bike)];
      assert.ok(ride !== null && monthOf(from) >= ride.first && monthOf(to) <= ride.after);
      for (let month = monthOf(from); month < monthOf(to); ++month) {
        assert.ok(!taken.has(`${bike} ${month}`), "two riders on a bike");
        taken.add(`${bike} ${month}`);
        first.set(bike, Math.min(first.get(bike) ?? month, month));
        ++with_bike;
      }
    }
    const missing = without.reduce((sum, { from, to }) => sum + monthOf(to) - monthOf(from), 0);
    gaps += missing;
    assert.equal(with_bike + missing + (notYet === null ? 0 : monthOf(notYet.to)), months);
  });
  assert.equal(gaps, plan.gap_months);
  const bought = [...first.keys()].filter((id) => !request.owned.includes(id)).sort();
  assert.deepEqual(plan.purchases.map(({ bike }) => bike).sort(), bought);
  for (const { bike, on } of plan.purchases) assert.equal(monthOf(on), first.get(bike));
  const paid = plan.purchases.reduce((sum, { price }) => sum + price, 0);
  const back = plan.sales.reduce((sum, sale) => sum + sale.back, 0);
  assert.ok(Math.abs(paid - back - plan.cost.net) < 1e-6);
}

test("plans of families have as few months without a bike, and cost as little, as GLPK's", async () => {
  const engine = await openBuiltEngine();
  let proven = 0;
  const seen = { handedOn: 0, gaps: 0, purchases: 0, limited: 0 };
  const families = Number(process.env.FAMILIES ?? 60);
  for (let seed = 1; seed <= families; ++seed) {
    const one = family(seed);
    load(engine, one.bikes, { currency: "EUR" });
    const fits = rides(engine, one);
    const plan = engine.ask(one.request);
    assert.equal(plan.error, undefined, JSON.stringify(plan.error));
    checkPlan(plan, one, fits);
    const best = solved(one, fits);
    const said = `family ${seed}`;
    const found = { gap_months: plan.gap_months, net: Math.round(plan.cost.net * 1000) };
    assert.deepEqual(found, best, said);
    assert.ok(plan.proof.least_gap_months <= best.gap_months, said);
    if (plan.proof.least_gap_months === best.gap_months)
      assert.ok(Math.round(plan.proof.least_net * 1000) <= best.net, said);
    proven += plan.proof.exact ? 1 : 0;
    const stretches = plan.riders.flatMap((rider) => rider.stretches);
    seen.handedOn += stretches.filter(({ how }) => how === "handed_on").length;
    seen.gaps += plan.gap_months > 0 ? 1 : 0;
    seen.purchases += plan.purchases.length;
    const without = engine.ask({ ...one.request, max_per_year: undefined, max_bikes: undefined });
    assert.ok(without.months_with_bike >= plan.months_with_bike, said);
    seen.limited += without.months_with_bike > plan.months_with_bike ? 1 : 0;
  }
  assert.ok(proven >= 0.95 * families, `${proven} of ${families} plans proven`);
  for (const [what, count] of Object.entries(seen)) assert.ok(count >= families / 20, `${what}: ${count}`);
});

const child = { id: "Mia", rider: { stage: "riding", readings: [{ on: today, inseam_mm: 520 }] } };
const shed = [
  { id: "A", kind: "pedal", saddle_lowest: 480, saddle_highest: 640, price: 80 },
  { id: "B", kind: "pedal", saddle_lowest: 560, saddle_highest: 720, price: 120 },
];
const question = { do: "years_ahead", today, riders: [child], horizon_months: 48 };

test("odd questions get a plan", async (t) => {
  const engine = await openBuiltEngine();
  load(engine, shed, { currency: "EUR" });
  const asked = (more) => {
    const plan = engine.ask({ ...question, ...more });
    assert.equal(plan.error, undefined, JSON.stringify(plan.error));
    return plan;
  };
  await t.test("a horizon of a month", () => {
    const plan = asked({ horizon_months: 1 });
    assert.equal(plan.months_with_bike + plan.gap_months, 1);
    assert.equal(plan.proof.exact, true);
  });
  await t.test("the longest horizon", () => {
    const plan = asked({ horizon_months: 120 });
    assert.equal(plan.riders[0].gaps.at(-1).to, "2036-11");
  });
  await t.test("a rider of whom only the age is known", () => {
    const born = { id: "Tom", rider: { stage: "riding", born: "2019-05" } };
    assert.equal(asked({ riders: [born] }).riders[0].id, "Tom");
  });
  await t.test("a bike owned twice is owned once", () => {
    assert.deepEqual(asked({ owned: ["A", "A"] }), asked({ owned: ["A"] }));
  });
  await t.test("no price anywhere: what is owned is ridden, and what to look for is said", () => {
    load(
      engine,
      shed.map((bike) => ({ ...bike, price: undefined })),
    );
    const plan = asked({ owned: ["A"] });
    assert.deepEqual(plan.purchases, []);
    assert.ok(plan.months_with_bike > 0);
    assert.ok(plan.riders[0].gaps[0].look_for.highest_at_least_mm > 0);
    // And with a price that the family types, the other can be bought.
    assert.ok(asked({ owned: ["A"], prices: { B: 60 } }).months_with_bike > plan.months_with_bike);
  });
  await t.test("currencies mixed: prices in another one do not count, and their bikes are named", () => {
    load(engine, shed, { currency: "EUR" });
    const pounds = asked({ currency: "GBP" });
    assert.deepEqual(pounds.other_currency, ["A", "B"]);
    assert.deepEqual(pounds.purchases, []);
    const typed = asked({ currency: "GBP", prices: { B: 70 } });
    assert.deepEqual(
      typed.purchases.map(({ bike }) => bike),
      ["B"],
    );
    assert.equal(typed.cost.currency, "GBP");
    // Within a list the reader says so, and such bikes have no price.
    const rows = ["# units: mm", "# currency: EUR", "id,kind,saddle_lowest,saddle_highest,price"];
    const table = [...rows, "A,pedal,480,640,80", "B,pedal,560,720,120 GBP"].join("\n");
    const { error, notes } = engine.ask({ do: "load" }, Buffer.from(table));
    assert.equal(error, undefined);
    assert.equal(notes[0].code, "list_cell_not_read");
    assert.deepEqual(
      asked({}).purchases.map(({ bike }) => bike),
      ["A"],
    );
  });
  await t.test(
    "bikes are named; marks of bikes of another list are passed over where that is asked for",
    () => {
      load(engine, shed, { currency: "EUR" });
      const marks = { owned: ["A", "Z"], not: ["Y"], prices: { X: 3 } };
      const plan = asked({ ...marks, skip_unknown: true });
      assert.deepEqual(plan, asked({ owned: ["A"] }));
      assert.deepEqual(plan.bikes, [
        { id: "A", name: "", price: 80 },
        { id: "B", name: "", price: 120 },
      ]);
    },
  );
  await t.test("no list", async () => {
    const bare = await openBuiltEngine();
    const plan = bare.ask(question);
    assert.equal(plan.months_with_bike, 0);
    assert.equal(plan.proof.exact, true);
  });
  await t.test("ten riders", () => {
    load(engine, family(5).bikes, { currency: "EUR" });
    const riders = Array.from({ length: 10 }, (_, i) => ({
      id: `R${i}`,
      rider: { stage: "riding", readings: [{ on: today, inseam_mm: 440 + 25 * i }] },
    }));
    const plan = asked({ riders, limit_ms: 1000 });
    assert.equal(plan.riders.length, 10);
    assert.ok(plan.months_with_bike > 0, "in the time that there is");
    assert.ok(plan.proof.least_gap_months <= plan.gap_months);
  });
  await t.test("20,000 bikes", () => {
    const below = repeatableRandom(3);
    const bikes = Array.from({ length: 20_000 }, (_, i) => {
      const lowest = 380 + below(400);
      return {
        id: `B${i}`,
        kind: "pedal",
        saddle_lowest: lowest,
        saddle_highest: lowest + 90 + below(110),
        price: 20 + below(150),
      };
    });
    load(engine, bikes, { currency: "EUR" });
    // One rider's best path needs no search, so that even no time at all is enough for it.
    for (const limit_ms of [0, 1000]) {
      const plan = asked({ limit_ms });
      assert.equal(plan.gap_months, 0);
      assert.ok(plan.proof.least_net <= plan.cost.net);
    }
  });
  await t.test("no time at all: a plan with an honest proof", () => {
    const one = family(7);
    load(engine, one.bikes, { currency: "EUR" });
    const full = engine.ask(one.request);
    const hasty = engine.ask({ ...one.request, limit_ms: 0 });
    checkPlan(hasty, one, rides(engine, one));
    assert.ok(hasty.gap_months >= full.gap_months);
    assert.ok(hasty.proof.least_gap_months <= full.gap_months);
    if (hasty.proof.least_gap_months === full.gap_months) assert.ok(hasty.proof.least_net <= full.cost.net);
  });
});

test("questions that cannot be answered get a sentence with its place", async () => {
  const engine = await openBuiltEngine();
  load(engine, shed, { currency: "EUR" });
  for (const [more, code, where] of [
    [{ riders: [] }, "request_value_out_of_range", "riders"],
    [
      { riders: Array.from({ length: 11 }, (_, i) => ({ ...child, id: `${i}` })) },
      "request_value_out_of_range",
      "riders",
    ],
    [{ riders: [child, child] }, "request_given_twice", "riders[1].id"],
    [{ riders: child }, "request_field_wrong_type", "riders"],
    [{ riders: [{ id: "Mia", rider: { stage: "riding" } }] }, "rider_without_measure", "riders[0].rider"],
    [{ horizon_months: 0 }, "request_value_out_of_range", "horizon_months"],
    [{ horizon_months: 121 }, "request_value_out_of_range", "horizon_months"],
    [{ keep: ["A"], not: ["A"] }, "request_bike_kept_and_out", "not[0]"],
    [{ owned: ["A", "Z"] }, "request_bike_unknown", "owned[1]"],
    [{ prices: { Z: 3 } }, "request_bike_unknown", "prices.Z"],
    [{ prices: { A: -3 } }, "request_value_out_of_range", "prices.A"],
    [{ currency: "shells" }, "request_value_unknown", "currency"],
    [{ owned: ["A", "B"], keep: ["A", "B"], max_bikes: 1 }, "request_value_out_of_range", "max_bikes"],
    [{ resale_share: 2 }, "request_value_out_of_range", "resale_share"],
    [{ buy_from: "soon" }, "request_date_malformed", "buy_from"],
    [{ horizon: 3 }, "request_field_unknown", "horizon"],
  ]) {
    const { error } = worded(engine.ask({ ...question, ...more }));
    assert.ok(error, `${JSON.stringify(more)} is refused`);
    assert.equal(error.code, code, JSON.stringify(error));
    assert.equal(error.where, where, JSON.stringify(error));
    assert.ok(error.problem.length > 10);
  }
});
