// Derives the two factors of core/fit/growth/drift_constants.h that make the 80 % bands of forecasts hold 80 % of boys and of girls:
// from the shares that the bands of the drift model without them held of children followed over years.
//   node tests/support/derive-spread-factors.mjs
// Errors are taken as normal. Their spread follows from the share that was held; a factor widens or narrows what grows, drift and
// maturing, and leaves the error of the reading alone.

const held = { boy: 0.87, girl: 0.765 };
const horizons = [0.5, 1, 1.5, 2, 3];
const startAges = [8, 9, 10, 11, 12, 13, 14];
const readingSd = 8;
const priorSd = 1.1;

// Dutch medians at 8, 9, ... 18 years and a typical spread: Fredriks and others, Arch Dis Child 2005;90:807-812.
const medians = {
  boy: [624.05, 657.2, 688.25, 719.47, 753.32, 791.8, 828.32],
  girl: [620.11, 654.09, 686.58, 719.69, 752.47, 778.96, 794.64],
};
const spreadS = { boy: 0.059, girl: 0.057 };
const drift = [
  [8, 0.16, 0.19],
  [10, 0.13, 0.19],
  [12, 0.19, 0.15],
  [14, 0.16, 0.08],
  [16, 0.27, 0.08],
  [18, 0.05, 0.05],
];
const rates = [0, 0.03, 0.11, 0.19, 0.15, -0.03, -0.25, -0.28, -0.16, -0.05, 0];

function maturing(sex, age) {
  const boysAge = age + (sex === "girl" ? 1.7 : 0);
  let area = 0;
  for (let i = 0; i < 10; i++) {
    const part = Math.min(Math.max(boysAge - 8 - i, 0), 1);
    area += part * (rates[i] + 0.5 * part * (rates[i + 1] - rates[i]));
  }
  return area;
}

function drifted(sex, from, to) {
  return drift.reduce((sum, [start, boys, girls], i) => {
    const end = drift[i + 1]?.[0] ?? 21;
    return sum + Math.max(0, Math.min(to, end) - Math.max(from, start)) * (sex === "boy" ? boys : girls) ** 2;
  }, 0);
}

/** Variance of the score a while after one reading. */
function variance(sex, age, years, factor) {
  const reading = (readingSd / (medians[sex][age - 8] * spreadS[sex])) ** 2;
  const u = priorSd ** 2;
  const tau = factor ** 2;
  const bend = maturing(sex, age);
  const foreseen = u + bend ** 2 * tau + reading;
  const later = maturing(sex, age + years);
  const uAfter = u - u ** 2 / foreseen;
  const tauAfter = tau - (bend * tau) ** 2 / foreseen;
  const together = (-u * bend * tau) / foreseen;
  const grown = factor ** 2 * drifted(sex, age, age + years);
  return uAfter + grown + 2 * later * together + later ** 2 * tauAfter;
}

/** Chance that a normal figure is within so many standard deviations of its mean, by Simpson's rule. */
function within(sds) {
  const steps = 200;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const x = (sds * i) / steps;
    sum += (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2) * Math.exp(-0.5 * x * x);
  }
  return ((sum * sds) / steps / 3) * Math.sqrt(2 / Math.PI);
}

/** By halving. */
function solved(rises, target, low, high) {
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (rises(middle) < target) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const band = solved(within, 0.8, 0, 4);

/** Share of children inside the band, at each horizon, with a factor. */
function shares(sex, factor) {
  const trueSpread = band / solved(within, held[sex], 0, 4);
  return horizons.map((years) => {
    const all = startAges.map((age) => {
      const actual = trueSpread * Math.sqrt(variance(sex, age, years, 1));
      return within((band * Math.sqrt(variance(sex, age, years, factor))) / actual);
    });
    return all.reduce((sum, share) => sum + share, 0) / all.length;
  });
}

const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;

for (const [sex, chosen] of [
  ["boy", 0.78],
  ["girl", 1.12],
]) {
  const exact = solved((factor) => mean(shares(sex, factor)), 0.8, 0.3, 2);
  const each = shares(sex, chosen).map((share) => (100 * share).toFixed(0));
  console.log(
    `${sex}: 80 % by factor ${exact.toFixed(2)}; with ${chosen} ${(100 * mean(shares(sex, chosen))).toFixed(1)} %,` +
      ` at ${horizons.map((years) => 12 * years).join(", ")} months ${each.join(", ")} %`,
  );
}
